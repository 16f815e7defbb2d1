package styloid.store;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import styloid.model.Codes;

/** Runs statements with arguments; each is prepared once. */
final class Sql {
  private final Connection connection;
  private final Dialect dialect;
  private final HashMap<String, PreparedStatement> prepared = new HashMap<>();

  Sql(Connection connection, Dialect dialect) {
    this.connection = connection;
    this.dialect = dialect;
  }

  Dialect dialect() {
    return dialect;
  }

  /** Makes something of a row; must not run statements itself. */
  interface Reader<T> {
    T read(Row row) throws SQLException;
  }

  /** Changes rows; gives how many. */
  int update(String sql, Object... args) throws SQLException {
    try {
      return bound(sql, args).executeUpdate();
    } catch (SQLException e) {
      throw forgotten(sql, e);
    }
  }

  <T> List<T> list(Reader<T> reader, String sql, Object... args) throws SQLException {
    ArrayList<T> list = new ArrayList<>();
    try (ResultSet result = bound(sql, args).executeQuery()) {
      Row row = new Row(result, dialect);
      while (result.next()) {
        list.add(reader.read(row));
      }
    } catch (SQLException e) {
      throw forgotten(sql, e);
    }
    return list;
  }

  /** A statement that failed is closed by the driver and must be prepared anew next time. */
  private SQLException forgotten(String sql, SQLException reason) {
    PreparedStatement failed = prepared.remove(sql);
    try {
      if (failed != null) {
        failed.close();
      }
    } catch (SQLException e) {
      reason.addSuppressed(e);
    }
    return reason;
  }

  <T> Optional<T> one(Reader<T> reader, String sql, Object... args) throws SQLException {
    return list(reader, sql, args).stream().findFirst();
  }

  private PreparedStatement bound(String sql, Object... args) throws SQLException {
    PreparedStatement statement = prepared.get(sql);
    if (statement == null) {
      statement = connection.prepareStatement(sql);
      prepared.put(sql, statement);
    }
    for (int i = 0; i < args.length; i++) {
      bind(statement, i + 1, args[i]);
    }
    return statement;
  }

  private void bind(PreparedStatement statement, int at, Object arg) throws SQLException {
    if (arg == null) {
      statement.setNull(at, Types.NULL);
    } else if (arg instanceof Optional<?> maybe) {
      bind(statement, at, maybe.orElse(null));
    } else if (arg instanceof Integer number) {
      statement.setInt(at, number);
    } else if (arg instanceof Boolean truth) {
      statement.setInt(at, truth ? 1 : 0);
    } else if (arg instanceof Enum<?> constant) {
      statement.setString(at, Codes.of(constant));
    } else {
      dialect.setText(statement, at, arg.toString());
    }
  }

  void close() throws SQLException {
    for (PreparedStatement statement : prepared.values()) {
      statement.close();
    }
    prepared.clear();
  }
}
