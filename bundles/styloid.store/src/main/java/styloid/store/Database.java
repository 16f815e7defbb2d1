package styloid.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.DateTimeException;
import java.util.List;
import java.util.concurrent.locks.ReentrantLock;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** The open database: one connection, used by one thread at a time. */
final class Database {
  private static final List<String> SETTINGS =
      List.of(
          "PRAGMA busy_timeout = 2000",
          "PRAGMA cache_size = -32000",
          // One program only; also spares the shared-memory file beside the database.
          "PRAGMA locking_mode = EXCLUSIVE",
          "PRAGMA journal_mode = WAL",
          // Every commit reaches the disk; on macOS past its cache too.
          "PRAGMA synchronous = FULL",
          "PRAGMA fullfsync = ON",
          "PRAGMA foreign_keys = ON",
          "PRAGMA recursive_triggers = ON",
          // No patient's data in temporary files or freed pages.
          "PRAGMA temp_store = MEMORY",
          "PRAGMA secure_delete = ON");

  /**
   * Bytes up to which every page is checked at each opening (about 5 ms of computing a megabyte); a
   * larger file only when it was not closed in order.
   */
  private static final long QUICKLY_CHECKED = 16_000_000;

  private final ReentrantLock lock = new ReentrantLock();
  private final Path file;
  private final Migrations migrations;
  private final Faults faults;
  private final DataFolder folder;
  private Connection connection;
  private Sql sql;

  Database(Path folder, Migrations migrations) {
    this.file = folder.toAbsolutePath().resolve("styloid.db");
    this.migrations = migrations;
    this.faults = new Faults(file);
    this.folder = new DataFolder(file.getParent(), faults);
  }

  /** Work on the database. */
  interface Work<T> {
    T on(Sql sql) throws SQLException, StoreException;
  }

  void open() throws StoreException {
    lock.lock();
    try {
      if (connection == null) {
        folder.take(file);
        connect();
      }
    } finally {
      lock.unlock();
    }
  }

  private void connect() throws StoreException {
    boolean open = false;
    try {
      refuseForeign(FileHead.of(file));
      boolean doubtful = leftInHaste() || Files.size(file) <= QUICKLY_CHECKED;
      connection = source().getConnection();
      prepare(doubtful);
      sql = new Sql(connection);
      open = true;
    } catch (SQLException e) {
      throw faults.of(e);
    } catch (IOException e) {
      throw faults.of(e);
    } finally {
      if (!open) {
        disconnect();
      }
    }
  }

  private void refuseForeign(FileHead head) throws StoreException {
    if (head.empty()) {
      return;
    }
    if (!head.sqlite()) {
      throw faults.damaged("does not begin as one of ours", null);
    }
    refuseNewer(head.version());
    if (head.version() > 0 && head.application() != FileHead.APPLICATION) {
      throw faults.damaged("belongs to another program", null);
    }
  }

  private void refuseNewer(int version) throws StoreException {
    if (version > migrations.latest()) {
      throw faults.newer(version, migrations.latest());
    }
  }

  /** The file as a URI, since the driver would read meaning into some characters of a path. */
  private SQLiteDataSource source() {
    SQLiteConfig config = new SQLiteConfig();
    // Else the driver asks for the last row's number after every insert.
    config.setGetGeneratedKeys(false);
    SQLiteDataSource source = new SQLiteDataSource(config);
    source.setUrl("jdbc:sqlite:" + file.toUri().toASCIIString());
    return source;
  }

  /** Whether the last program that had the file did not close it: its log is still there. */
  private boolean leftInHaste() {
    return Files.exists(file.resolveSibling(file.getFileName() + "-wal"));
  }

  private void prepare(boolean doubtful) throws SQLException, StoreException {
    try (Statement statement = connection.createStatement()) {
      for (String setting : SETTINGS) {
        statement.execute(setting);
      }
      refuseNewer(Migrations.version(connection));
      if (doubtful) {
        check(statement);
      }
      if (Migrations.version(connection) < migrations.latest()) {
        migrations.migrate(connection);
        // So that the version can be read from the file alone.
        statement.execute("PRAGMA wal_checkpoint(TRUNCATE)");
      }
    }
  }

  private void check(Statement statement) throws SQLException, StoreException {
    try (ResultSet result = statement.executeQuery("PRAGMA quick_check(1)")) {
      if (!"ok".equals(result.getString(1))) {
        throw faults.damaged("does not hold together", null);
      }
    }
  }

  /** Runs work that changes nothing. */
  <T> T read(Work<T> work) throws StoreException {
    lock.lock();
    try {
      return work.on(opened());
    } catch (SQLException e) {
      throw faults.of(e);
    } catch (IllegalArgumentException | DateTimeException e) {
      throw faults.damaged("holds a value that cannot be", e);
    } finally {
      lock.unlock();
    }
  }

  /** Runs work as one transaction: all of it is on disk when this returns, else nothing. */
  <T> T write(Work<T> work) throws StoreException {
    lock.lock();
    try {
      Sql open = opened();
      return Transaction.run(connection, () -> work.on(open));
    } catch (SQLException e) {
      throw faults.of(e);
    } catch (IllegalArgumentException | DateTimeException e) {
      throw faults.damaged("holds a value that cannot be", e);
    } finally {
      lock.unlock();
    }
  }

  private Sql opened() throws StoreException {
    if (sql == null) {
      throw faults.notOpen();
    }
    return sql;
  }

  void close() {
    lock.lock();
    try {
      disconnect();
    } finally {
      lock.unlock();
    }
  }

  private void disconnect() {
    try {
      if (sql != null) {
        sql.close();
      }
      if (connection != null) {
        connection.close();
      }
    } catch (SQLException e) {
      // What was stored is in the file or its log, which the next start reads.
      System.getLogger(Database.class.getName())
          .log(System.Logger.Level.WARNING, "the records could not be closed in order", e);
    }
    sql = null;
    connection = null;
    folder.release();
  }

  /** For tests that must do to the database what the store never does. */
  Connection connection() {
    return connection;
  }
}
