package styloid.store;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Properties;

/**
 * The server a clinic keeps its records on, as {@code server.properties} in the data folder says:
 * {@code url} (a JDBC URL of PostgreSQL), {@code user} and, where the user's own password file is
 * not used, {@code password}.
 */
record Server(String url, Optional<String> user, Optional<String> password) {
  static final String FILE = "server.properties";
  private static final String SCHEME = "jdbc:postgresql:";

  /** Empty when the folder names none. */
  static Optional<Server> of(Path folder) throws StoreException {
    Path file = folder.toAbsolutePath().resolve(FILE);
    if (!Files.exists(file)) {
      return Optional.empty();
    }
    Properties said = new Properties();
    try (Reader reader = Files.newBufferedReader(file)) {
      said.load(reader);
    } catch (IOException | IllegalArgumentException e) {
      throw unclear(file, "it cannot be read", e);
    }
    String url = said.getProperty("url", "").strip();
    if (!url.startsWith(SCHEME)) {
      throw unclear(file, "its line \"url\" must begin with " + SCHEME + "//", null);
    }
    return Optional.of(new Server(url, given(said, "user"), given(said, "password")));
  }

  private static Optional<String> given(Properties said, String key) {
    return Optional.ofNullable(said.getProperty(key)).filter(value -> !value.isBlank());
  }

  private static StoreException unclear(Path file, String why, Exception e) {
    return new StoreException(
        StoreException.Cause.OTHER,
        "The file "
            + file
            + " should name the clinic's server, but "
            + why
            + ". Correct it, then"
            + " start again.",
        e);
  }

  /** The address without anything secret, for people. */
  String address() {
    int query = url.indexOf('?');
    return url.substring(SCHEME.length(), query < 0 ? url.length() : query);
  }
}
