package styloid.spi;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;

/**
 * Words of one scope in one or more languages, by key. English ({@code en}) is always there and is
 * what another language falls back to.
 */
public record Labels(Map<String, Map<String, String>> byLanguage) {
  /** Languages the suite may speak besides English; a new one is named here. */
  public static final List<String> OTHER_LANGUAGES = List.of("de");

  public Labels {
    TreeMap<String, Map<String, String>> copy = new TreeMap<>();
    byLanguage.forEach((language, words) -> copy.put(language, Map.copyOf(words)));
    byLanguage = Collections.unmodifiableMap(copy);
    if (!byLanguage.containsKey("en")) {
      throw new IllegalArgumentException("labels need English (en)");
    }
  }

  /**
   * Reads {@code messages.properties} (English) and, for each language the suite speaks besides,
   * {@code messages_<language>.properties} where it lies, in UTF-8 beside a class.
   *
   * @throws IllegalArgumentException when the English ones are missing: a fault of the build
   */
  public static Labels beside(Class<?> owner) {
    TreeMap<String, Map<String, String>> all = new TreeMap<>();
    all.put("en", read(owner, "messages.properties"));
    for (String language : OTHER_LANGUAGES) {
      String file = "messages_" + language + ".properties";
      if (owner.getResource(file) != null) {
        all.put(language, read(owner, file));
      }
    }
    return new Labels(all);
  }

  private static Map<String, String> read(Class<?> owner, String file) {
    Properties read = new Properties();
    try (InputStream in = owner.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException(file + " is missing beside " + owner.getName());
      }
      read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    TreeMap<String, String> words = new TreeMap<>();
    read.forEach((key, text) -> words.put((String) key, (String) text));
    return words;
  }

  /** The words of a key in a language, else in English. */
  public Optional<String> find(String language, String key) {
    String found = byLanguage.getOrDefault(language, Map.of()).get(key);
    return Optional.ofNullable(found != null ? found : byLanguage.get("en").get(key));
  }

  public Set<String> languages() {
    return byLanguage.keySet();
  }
}
