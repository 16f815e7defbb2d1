package styloid.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.Entry;
import styloid.model.EvaluationId;
import styloid.model.InSpite;
import styloid.model.Quantity;
import styloid.model.Unit;

class MigrationsTest {
  private static final String FIRST =
      "PRAGMA application_id = 1398036812; CREATE TABLE a (x); INSERT INTO a VALUES (1);";
  private static final String SECOND =
      "CREATE TRIGGER t BEFORE DELETE ON a BEGIN SELECT RAISE (ABORT, 'no'); END;"
          + " INSERT INTO a VALUES (2); -- the end";
  private static final String BROKEN = "INSERT INTO a VALUES (3); CREATE TABLE a (x);";

  @TempDir Path folder;

  private Database opened(String... scripts) throws StoreException {
    Database database = new EmbeddedDatabase(folder, new Migrations(List.of(scripts)));
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
      assertEquals(2, new SqliteDialect().version(database.connection()));
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
    assertEquals(1, new SqliteDialect().version(database.connection()));
    database.close();
  }

  @Test
  void entriesOfTheFirstLayoutAreTakenOverAsOverridingNothing() throws Exception {
    Database old = opened(shippedFirst());
    EvaluationId id = EvaluationId.of("00000000-0000-0000-0000-000000000002");
    try (Statement statement = old.connection().createStatement()) {
      statement.executeUpdate(
          """
          INSERT INTO patient (id, record_number, name, involved, diagnosis, search)
          VALUES ('00000000-0000-0000-0000-000000000001', '1', 'Invented Person', '', '', '');
          INSERT INTO evaluation VALUES ('00000000-0000-0000-0000-000000000002',
            '00000000-0000-0000-0000-000000000001', '2026-03-02', 'A. Example', 'draft');
          INSERT INTO entry VALUES ('00000000-0000-0000-0000-000000000003',
            '00000000-0000-0000-0000-000000000002', 1, 'grip', 'power', 'right', 'none', 1,
            'quantity', '38.5', 'kgf', '2026-03-02T09:00:00Z', 'A. Example', 0);
          """);
    }
    old.close();
    try (SqlStore store = new SqlStore(folder)) {
      store.open();
      Entry kept = store.evaluation(id).orElseThrow().ledger().entries().get(0);
      assertEquals(Optional.of(Quantity.of("38.5", Unit.KILOGRAM_FORCE)), kept.value());
      assertEquals(Optional.empty(), kept.override());
      assertEquals(Map.of(), store.lastChoices());
    }
  }

  @Test
  void anOverrideOfTheSecondLayoutKeepsItsReasonAndSaysNotWhichPrecaution() throws Exception {
    Database old = opened(shippedFirst(), shipped("embedded/002-choices-and-overrides.sql"));
    try (Statement statement = old.connection().createStatement()) {
      statement.executeUpdate(
          """
          INSERT INTO patient (id, record_number, name, involved, diagnosis, search)
          VALUES ('00000000-0000-0000-0000-000000000001', '1', 'Invented Person', '', '', '');
          INSERT INTO evaluation VALUES ('00000000-0000-0000-0000-000000000002',
            '00000000-0000-0000-0000-000000000001', '2026-03-02', 'A. Example', 'draft');
          INSERT INTO entry VALUES ('00000000-0000-0000-0000-000000000003',
            '00000000-0000-0000-0000-000000000002', 1, 'grip', 'power', 'right', 'none', 1,
            'quantity', '38.5', 'kgf', '2026-03-02T09:00:00Z', 'A. Example', 0, 'released');
          """);
    }
    old.close();
    EvaluationId id = EvaluationId.of("00000000-0000-0000-0000-000000000002");
    try (SqlStore store = new SqlStore(folder)) {
      store.open();
      Entry kept = store.evaluation(id).orElseThrow().ledger().entries().get(0);
      assertEquals(Optional.of(new InSpite("released", List.of())), kept.override());
    }
  }

  private static String shippedFirst() throws IOException {
    return shipped("embedded/001-records.sql");
  }

  private static String shipped(String file) throws IOException {
    try (InputStream in = Migrations.class.getResourceAsStream(file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void theShippedStepsAreNumberedWithoutGap() {
    assertEquals(3, Migrations.embedded().latest());
  }
}
