package styloid.launcher;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Properties;

/** The launcher's words; it cannot use those of the suite, which may not be there. */
final class Words {
  private final Properties words = new Properties();

  Words() {
    try (InputStream in = Words.class.getResourceAsStream("messages.properties")) {
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The words of a key, with {0}, {1} and so on filled in. */
  String text(String key, Object... args) {
    String pattern = words.getProperty(key, key);
    StringBuilder text = new StringBuilder();
    int from = 0;
    for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', from)) {
      int close = pattern.indexOf('}', open);
      text.append(pattern, from, open);
      text.append(args[Integer.parseInt(pattern.substring(open + 1, close))]);
      from = close + 1;
    }
    return text.append(pattern.substring(from)).toString();
  }
}
