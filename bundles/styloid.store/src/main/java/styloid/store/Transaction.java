package styloid.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;

/** All of some work or nothing of it. */
final class Transaction {
  private Transaction() {}

  /** Work that may also fail for reasons of ours. */
  interface Work<T> {
    T run() throws SQLException, StoreException;
  }

  /**
   * Runs the work. The statements are plain SQL: the driver's own switching would begin another
   * transaction at once.
   */
  static <T> T run(Connection connection, String begin, Work<T> work)
      throws SQLException, StoreException {
    execute(connection, begin);
    try {
      T result = work.run();
      execute(connection, "COMMIT");
      return result;
    } catch (SQLException | StoreException | RuntimeException | Error e) {
      rollback(connection, e);
      throw e;
    }
  }

  private static void rollback(Connection connection, Throwable reason) {
    try {
      execute(connection, "ROLLBACK");
    } catch (SQLException e) {
      // The engine has rolled back by itself, as it does when the disk is full or the line is cut.
      reason.addSuppressed(e);
    }
  }

  private static void execute(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }
}
