package styloid.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;

/** SQLite: text is UTF-8 and may hold anything but half a character. */
final class SqliteDialect implements Dialect {

  @Override
  public int version(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery("PRAGMA user_version")) {
      return row.getInt(1);
    }
  }

  @Override
  public String setVersion(int version) {
    return "PRAGMA user_version = " + version + ";";
  }

  @Override
  public String beginReading() {
    return "BEGIN";
  }

  @Override
  public String beginWriting() {
    return "BEGIN IMMEDIATE";
  }

  @Override
  public String storingOrder() {
    return "rowid";
  }

  /** One writer at a time as it is. */
  @Override
  public String forUpdate() {
    return "";
  }

  /** Half a character, which UTF-8 cannot carry, makes the text go in as UTF-16 bytes. */
  @Override
  public void setText(PreparedStatement statement, int at, String text) throws SQLException {
    if (Surrogates.arePaired(text)) {
      statement.setString(at, text);
    } else {
      statement.setBytes(at, Surrogates.bytes(text));
    }
  }

  @Override
  public String text(Object stored) {
    return stored instanceof byte[] bytes ? Surrogates.text(bytes) : (String) stored;
  }
}
