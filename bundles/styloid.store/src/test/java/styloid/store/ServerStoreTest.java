package styloid.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.model.DefinitionText;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.TestId;

/** The contract on a real PostgreSQL, and what is special to a server that several share. */
class ServerStoreTest extends PatientStoreContract {
  private String database;

  @Override
  PatientStore newStore(Path folder) {
    try {
      if (database == null) {
        database = PostgresServer.newDatabase();
      }
      return PostgresServer.store(PostgresServer.at(PostgresServer.port(), database));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (SQLException e) {
      throw new IllegalStateException(e);
    }
  }

  private Statement statement() throws SQLException, StoreException {
    return ((SqlStore) store).database().connection().createStatement();
  }

  @Test
  void twoProgramsAppendToOneEvaluationAndLoseNothing() throws Exception {
    Evaluation evaluation = begun();
    ExecutorService two = Executors.newFixedThreadPool(2);
    List<List<Entry>> typed = List.of(entries(60), entries(60));
    try (PatientStore other = newStore(folder)) {
      other.open();
      List<PatientStore> stores = List.of(store, other);
      ArrayList<Future<?>> running = new ArrayList<>();
      for (int i = 0; i < 2; i++) {
        PatientStore mine = stores.get(i);
        List<Entry> all = typed.get(i);
        running.add(
            two.submit(
                () -> {
                  for (Entry entry : all) {
                    mine.append(evaluation.id(), List.of(entry));
                  }
                  return null;
                }));
      }
      for (Future<?> one : running) {
        one.get();
      }
    } finally {
      two.shutdown();
    }
    List<Entry> ledger = ledger(evaluation.id());
    assertEquals(120, ledger.size());
    for (List<Entry> all : typed) {
      ArrayList<Entry> mine = new ArrayList<>(ledger);
      mine.retainAll(new HashSet<>(all));
      assertEquals(all, mine);
    }
  }

  private List<Entry> entries(int count) {
    ArrayList<Entry> entries = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      entries.add(samples.entry(String.valueOf(i)));
    }
    return entries;
  }

  /**
   * The line is cut before each message to the server in turn, and after it before the answer is
   * back: whatever was lost, appending once more leaves every entry there exactly once.
   */
  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void aLineCutAtAnyMessageLosesNothingAndDoublesNothing(boolean afterSending) throws Exception {
    Evaluation evaluation = begun();
    List<Entry> expected = new ArrayList<>();
    int cuts = 0;
    try (CuttableLine line = new CuttableLine(PostgresServer.port());
        PatientStore far = PostgresServer.store(PostgresServer.at(line.port(), database))) {
      boolean cut = true;
      for (int message = 0; cut; message++) {
        line.heal();
        far.open();
        far.caseload("", 1);
        List<Entry> batch = entries(3);
        line.cutAtMessage(message, afterSending);
        try {
          far.append(evaluation.id(), batch);
          cut = line.isCut();
        } catch (StoreException e) {
          assertEquals(StoreException.Cause.UNREACHABLE, e.why(), e.getMessage());
          cuts++;
        }
        line.heal();
        far.append(evaluation.id(), batch);
        expected.addAll(batch);
        assertEquals(expected, ledger(evaluation.id()), "cut at message " + message);
      }
    }
    assertTrue(cuts >= 5, cuts + " messages were cut");
  }

  @Test
  void aServerThatIsNotThereIsSaidToBeSo() throws Exception {
    int closed;
    try (CuttableLine line = new CuttableLine(PostgresServer.port())) {
      closed = line.port();
    }
    try (PatientStore none = PostgresServer.store(PostgresServer.at(closed, "clinic"))) {
      StoreException e = refused(StoreException.Cause.UNREACHABLE, none::open);
      assertTrue(e.getMessage().contains("localhost:" + closed));
      assertFalse(e.getMessage().contains("password=") || e.getMessage().contains("postgres/"));
    }
  }

  @Test
  void aWrongPasswordOrDatabaseIsRefusedInWords() throws Exception {
    Server server = PostgresServer.at(PostgresServer.port(), "no_such_database");
    try (PatientStore none = PostgresServer.store(server)) {
      refused(StoreException.Cause.OTHER, none::open);
    }
  }

  @Test
  void aNewerLayoutIsRefused() throws Exception {
    try (Statement statement = statement()) {
      statement.execute("INSERT INTO layout VALUES (99)");
    }
    store.close();
    StoreException e = refused(StoreException.Cause.NEWER_VERSION, newStore(folder)::open);
    assertTrue(e.getMessage().contains("layout 99"));
  }

  @Test
  void nothingIsDoneBeforeOpeningAndAfterClosing() {
    store.close();
    StoreException e = assertThrows(StoreException.class, () -> store.caseload("", 1));
    assertTrue(e.getMessage().contains("not open"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE entry SET value = '2'",
        "DELETE FROM entry",
        "TRUNCATE entry",
        "UPDATE definition SET text = ''",
        "DELETE FROM definition",
        "DELETE FROM evaluation"
      })
  void theDatabaseItselfRefusesToChangeWhatIsRecorded(String sql) throws Exception {
    Evaluation evaluation = begun();
    store.append(evaluation.id(), List.of(samples.entry("1")));
    store.addDefinition(evaluation.id(), new DefinitionText(new TestId("grip"), "1", "{}"));
    Optional<?> before = store.record(evaluation.patient());
    try (Statement statement = statement()) {
      assertThrows(SQLException.class, () -> statement.execute(sql));
    }
    assertEquals(before, store.record(evaluation.patient()));
  }

  @ParameterizedTest
  @CsvSource({
    "'user = a', 'must begin with'",
    "'url = jdbc:sqlite:x', 'must begin with'",
    "'url = \\u00zz', 'cannot be read'"
  })
  void anUnclearNameOfAServerIsRefusedBeforeAnythingIsOpened(String text, String why)
      throws IOException {
    Files.writeString(folder.resolve(Server.FILE), text);
    StoreException e = refused(StoreException.Cause.OTHER, new SqlStore(folder)::open);
    assertTrue(e.getMessage().contains(why), e.getMessage());
    assertTrue(e.getMessage().contains(Server.FILE));
  }

  @Test
  void aFolderThatNamesAServerIsNotUsedForRecords() throws Exception {
    Server server = PostgresServer.at(PostgresServer.port(), database);
    Files.writeString(
        folder.resolve(Server.FILE),
        "url = %s\nuser = postgres\npassword = postgres\n".formatted(server.url()));
    begun();
    try (SqlStore named = new SqlStore(folder)) {
      named.open();
      assertEquals(1, named.caseload("", 10).size());
    }
    assertFalse(Files.exists(folder.resolve("styloid.db")));
  }
}
