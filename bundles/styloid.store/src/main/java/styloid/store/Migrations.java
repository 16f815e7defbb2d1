package styloid.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * The steps that bring a database to the layout known here. Its version is the number of steps
 * taken, kept in the database itself; each step and its number are one transaction.
 */
final class Migrations {
  private static final List<String> EMBEDDED =
      List.of(
          "embedded/001-records.sql",
          "embedded/002-choices-and-overrides.sql",
          "embedded/003-overridden-precautions.sql");
  private static final List<String> SERVER =
      List.of("server/001-records.sql", "server/002-overridden-precautions.sql");

  private final List<String> scripts;

  Migrations(List<String> scripts) {
    this.scripts = List.copyOf(scripts);
  }

  /** The steps of an embedded file shipped with this version. */
  static Migrations embedded() {
    return shipped(EMBEDDED);
  }

  /** The steps of a clinic's server shipped with this version. */
  static Migrations server() {
    return shipped(SERVER);
  }

  private static Migrations shipped(List<String> files) {
    ArrayList<String> scripts = new ArrayList<>();
    for (String file : files) {
      try (InputStream in = Migrations.class.getResourceAsStream(file)) {
        scripts.add(new String(in.readAllBytes(), StandardCharsets.UTF_8));
      } catch (IOException e) {
        throw new IllegalStateException("the build is broken: " + file + " cannot be read", e);
      }
    }
    return new Migrations(scripts);
  }

  /** Version after all steps. */
  int latest() {
    return scripts.size();
  }

  /** Takes the steps not taken yet. When one fails, those before it stay and it leaves no trace. */
  void migrate(Connection connection, Dialect dialect) throws SQLException, StoreException {
    for (int next = dialect.version(connection); next < latest(); next++) {
      String script = scripts.get(next) + "\n" + dialect.setVersion(next + 1);
      Transaction.run(connection, dialect.beginWriting(), () -> execute(connection, script));
    }
  }

  private static int execute(Connection connection, String script) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      return statement.executeUpdate(script);
    }
  }
}
