package styloid.custom;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/** The declared tests that come with the suite; they go through the same door as a clinic's. */
final class Shipped {
  private Shipped() {}

  /** Names of the files, without ending, in order. */
  static List<String> names() {
    return text("index.txt").orElseThrow().lines().filter(line -> !line.isBlank()).toList();
  }

  /** Text of one of them, or of a table beside them. */
  static Optional<String> text(String file) {
    try (InputStream in = Shipped.class.getResourceAsStream("tests/" + file)) {
      return in == null
          ? Optional.empty()
          : Optional.of(new String(in.readAllBytes(), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
