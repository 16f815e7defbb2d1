package styloid.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.HexFormat;

/**
 * PostgreSQL: text is UTF-8 without the character zero. What it cannot carry goes in as a mark and
 * the digits of its UTF-16 bytes; text that begins with the mark itself does so too.
 */
final class PostgresDialect implements Dialect {
  /** A code point that is no character (The Unicode Standard, section 23.7). */
  private static final char MARK = '\uFFFF';

  @Override
  public int version(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("CREATE TABLE IF NOT EXISTS layout (version INTEGER NOT NULL)");
      try (ResultSet row = statement.executeQuery("SELECT max(version) FROM layout")) {
        row.next();
        return row.getInt(1);
      }
    }
  }

  @Override
  public String setVersion(int version) {
    return "INSERT INTO layout VALUES (" + version + ");";
  }

  @Override
  public String beginReading() {
    return "BEGIN ISOLATION LEVEL REPEATABLE READ READ ONLY";
  }

  @Override
  public String beginWriting() {
    return "BEGIN";
  }

  @Override
  public String storingOrder() {
    return "stored";
  }

  @Override
  public String forUpdate() {
    return " FOR UPDATE";
  }

  @Override
  public void setText(PreparedStatement statement, int at, String text) throws SQLException {
    boolean plain =
        text.indexOf('\0') < 0
            && (text.isEmpty() || text.charAt(0) != MARK)
            && Surrogates.arePaired(text);
    statement.setString(at, plain ? text : MARK + HexFormat.of().formatHex(Surrogates.bytes(text)));
  }

  @Override
  public String text(Object stored) {
    String text = (String) stored;
    return text == null || text.isEmpty() || text.charAt(0) != MARK
        ? text
        : Surrogates.text(HexFormat.of().parseHex(text.substring(1)));
  }
}
