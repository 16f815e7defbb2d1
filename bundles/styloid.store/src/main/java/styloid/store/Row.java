package styloid.store;

import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import styloid.model.Codes;

/** The row a statement has come to. */
final class Row {
  private final ResultSet result;
  private final Dialect dialect;

  Row(ResultSet result, Dialect dialect) {
    this.result = result;
    this.dialect = dialect;
  }

  /** Text of a column; null when it has none. */
  String text(String column) throws SQLException {
    return dialect.text(result.getObject(column));
  }

  int number(String column) throws SQLException {
    return result.getInt(column);
  }

  boolean truth(String column) throws SQLException {
    return result.getInt(column) != 0;
  }

  UUID uuid(String column) throws SQLException {
    return UUID.fromString(text(column));
  }

  Instant instant(String column) throws SQLException {
    return Instant.parse(text(column));
  }

  Optional<LocalDate> date(String column) throws SQLException {
    return Optional.ofNullable(text(column)).map(LocalDate::parse);
  }

  Optional<BigDecimal> decimal(String column) throws SQLException {
    return Optional.ofNullable(text(column)).map(BigDecimal::new);
  }

  <E extends Enum<E>> E code(Class<E> type, String column) throws SQLException {
    return Codes.parse(type, text(column));
  }

  <E extends Enum<E>> Optional<E> maybeCode(Class<E> type, String column) throws SQLException {
    return Optional.ofNullable(text(column)).map(code -> Codes.parse(type, code));
  }
}
