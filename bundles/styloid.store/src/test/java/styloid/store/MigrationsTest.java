package styloid.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MigrationsTest {
  private static final String FIRST =
      "PRAGMA application_id = 1398036812; CREATE TABLE a (x); INSERT INTO a VALUES (1);";
  private static final String SECOND =
      "CREATE TRIGGER t BEFORE DELETE ON a BEGIN SELECT RAISE (ABORT, 'no'); END;"
          + " INSERT INTO a VALUES (2); -- the end";
  private static final String BROKEN = "INSERT INTO a VALUES (3); CREATE TABLE a (x);";

  @TempDir Path folder;

  private Database opened(String... scripts) throws StoreException {
    Database database = new Database(folder, new Migrations(List.of(scripts)));
    database.open();
    return database;
  }

  private static int number(Connection connection, String sql) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet row = statement.executeQuery(sql)) {
      return row.getInt(1);
    }
  }

  @Test
  void aNewFileTakesEveryStepOnce() throws Exception {
    for (int i = 0; i < 2; i++) {
      Database database = opened(FIRST, SECOND);
      assertEquals(2, Migrations.version(database.connection()));
      assertEquals(3, number(database.connection(), "SELECT sum(x) FROM a"));
      database.close();
    }
  }

  @Test
  void anOlderFileTakesOnlyWhatIsNew() throws Exception {
    opened(FIRST).close();
    Database database = opened(FIRST, SECOND);
    assertEquals(3, number(database.connection(), "SELECT sum(x) FROM a"));
    database.close();
    assertEquals(2, FileHead.of(folder.resolve("styloid.db")).version());
  }

  @Test
  void aFailingStepLeavesNoTraceAndTheFileUsableByTheOldVersion() throws Exception {
    opened(FIRST).close();
    assertThrows(StoreException.class, () -> opened(FIRST, SECOND, BROKEN));
    assertEquals(2, FileHead.of(folder.resolve("styloid.db")).version());
    Database database = opened(FIRST, SECOND);
    assertEquals(3, number(database.connection(), "SELECT sum(x) FROM a"));
    database.close();
  }

  @Test
  void theVersionStandsInTheFileAsSoonAsItIsOpen() throws Exception {
    Database database = opened(FIRST, SECOND);
    assertEquals(
        new FileHead(false, true, 2, FileHead.APPLICATION),
        FileHead.of(folder.resolve("styloid.db")));
    database.close();
  }

  @Test
  void anEmptyFileLeftByAKilledFirstStartIsTakenAsNew() throws Exception {
    Files.createFile(folder.resolve("styloid.db"));
    Database database = opened(FIRST);
    assertEquals(1, Migrations.version(database.connection()));
    database.close();
  }

  @Test
  void theShippedStepsAreNumberedWithoutGap() {
    assertEquals(1, Migrations.shipped().latest());
  }
}
