package styloid.store;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.postgresql.ds.PGSimpleDataSource;

/**
 * The database of a clinic's PostgreSQL server. A line that was cut is taken up again by the next
 * call, once the store has been opened.
 */
final class ServerDatabase extends Database {
  /** Any number of our own: programs that start together must not both change the layout. */
  private static final long LAYOUT_LOCK = 0x5354594CL;

  private static final int SECONDS_TO_CONNECT = 5;

  /** A server that says nothing for so long is taken as gone. */
  private static final int SECONDS_TO_ANSWER = 20;

  private static final List<String> SETTINGS =
      List.of(
          "SET TIME ZONE 'UTC'",
          // A commit returns once it is on the server's disk.
          "SET synchronous_commit = on",
          "SET lock_timeout = '10s'",
          "SET client_min_messages = warning");

  private final PostgresDialect dialect = new PostgresDialect();
  private final Server server;
  private final Migrations migrations;
  private final ServerFaults faults;
  private boolean wanted;

  ServerDatabase(Server server, Migrations migrations) {
    this.server = server;
    this.migrations = migrations;
    this.faults = new ServerFaults(server.address());
  }

  @Override
  Dialect dialect() {
    return dialect;
  }

  @Override
  Faults faults() {
    return faults;
  }

  private PGSimpleDataSource source() {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setUrl(server.url());
    server.user().ifPresent(source::setUser);
    server.password().ifPresent(source::setPassword);
    source.setConnectTimeout(SECONDS_TO_CONNECT);
    source.setSocketTimeout(SECONDS_TO_ANSWER);
    source.setApplicationName("Styloid");
    return source;
  }

  @Override
  Connection connect() throws StoreException {
    Connection connection = null;
    boolean open = false;
    try {
      connection = source().getConnection();
      prepare(connection);
      open = true;
      wanted = true;
      return connection;
    } catch (IllegalArgumentException e) {
      throw new StoreException(
          StoreException.Cause.OTHER,
          "The address "
              + server.address()
              + " of the clinic's server is not one. Correct "
              + Server.FILE
              + ", then start again.",
          e);
    } catch (SQLException e) {
      throw faults.of(e);
    } finally {
      if (!open) {
        giveUp(connection);
      }
    }
  }

  private void prepare(Connection connection) throws SQLException, StoreException {
    try (Statement statement = connection.createStatement()) {
      for (String setting : SETTINGS) {
        statement.execute(setting);
      }
      statement.execute("SELECT pg_advisory_lock(" + LAYOUT_LOCK + ")");
      int found = dialect.version(connection);
      if (found > migrations.latest()) {
        throw faults.newer(found, migrations.latest());
      }
      migrations.migrate(connection, dialect);
      statement.execute("SELECT pg_advisory_unlock(" + LAYOUT_LOCK + ")");
    }
  }

  @Override
  boolean isLost(SQLException e) {
    return ServerFaults.gone(e);
  }

  @Override
  void reconnect() throws StoreException {
    if (!wanted) {
      throw faults.notOpen();
    }
    open();
  }

  @Override
  void close() {
    super.close();
    wanted = false;
  }

  @Override
  void disconnected() {
    // Nothing is left on this machine.
  }
}
