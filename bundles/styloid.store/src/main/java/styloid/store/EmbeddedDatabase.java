package styloid.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;

/** The database in one SQLite file, {@code styloid.db}. */
final class EmbeddedDatabase extends Database {
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

  private final SqliteDialect dialect = new SqliteDialect();
  private final Path file;
  private final Migrations migrations;
  private final FileFaults faults;
  private final DataFolder folder;

  EmbeddedDatabase(Path folder, Migrations migrations) {
    this.file = folder.toAbsolutePath().resolve("styloid.db");
    this.migrations = migrations;
    this.faults = new FileFaults(file);
    this.folder = new DataFolder(file.getParent(), faults);
  }

  @Override
  Dialect dialect() {
    return dialect;
  }

  @Override
  Faults faults() {
    return faults;
  }

  @Override
  Connection connect() throws StoreException {
    folder.take(file);
    Connection connection = null;
    boolean open = false;
    try {
      refuseForeign(FileHead.of(file));
      boolean doubtful = leftInHaste() || Files.size(file) <= QUICKLY_CHECKED;
      connection = source().getConnection();
      prepare(connection, doubtful);
      open = true;
      return connection;
    } catch (SQLException e) {
      throw faults.of(e);
    } catch (IOException e) {
      throw faults.of(e);
    } finally {
      if (!open) {
        giveUp(connection);
      }
    }
  }

  @Override
  void disconnected() {
    folder.release();
  }

  /** A file stays where it is. */
  @Override
  boolean isLost(SQLException e) {
    return false;
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

  private void prepare(Connection connection, boolean doubtful)
      throws SQLException, StoreException {
    try (Statement statement = connection.createStatement()) {
      for (String setting : SETTINGS) {
        statement.execute(setting);
      }
      refuseNewer(dialect.version(connection));
      if (doubtful) {
        check(statement);
      }
      if (dialect.version(connection) < migrations.latest()) {
        migrations.migrate(connection, dialect);
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
}
