package styloid.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;

/**
 * The steps that bring a database to the layout known here. Its version is the number of steps
 * taken, kept in the database itself; each step and its number are one transaction.
 */
final class Migrations {
  private static final List<String> FILES =
      List.of("001-records.sql", "002-choices-and-overrides.sql", "003-overridden-precautions.sql");

  private final List<String> scripts;

  Migrations(List<String> scripts) {
    this.scripts = List.copyOf(scripts);
  }

  /** The steps shipped with this version. */
  static Migrations shipped() {
    ArrayList<String> scripts = new ArrayList<>();
    for (String file : FILES) {
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

  /** Version of a database. */
  static int version(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA user_version")) {
      return row.getInt(1);
    }
  }

  /** Takes the steps not taken yet. When one fails, those before it stay and it leaves no trace. */
  void migrate(Connection connection) throws SQLException, StoreException {
    for (int next = version(connection); next < latest(); next++) {
      String script = scripts.get(next) + "\nPRAGMA user_version = " + (next + 1) + ";";
      Transaction.run(connection, () -> execute(connection, script));
    }
  }

  private static int execute(Connection connection, String script) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      return statement.executeUpdate(script);
    }
  }
}
