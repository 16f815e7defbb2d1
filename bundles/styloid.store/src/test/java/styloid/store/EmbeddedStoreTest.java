package styloid.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.model.DefinitionText;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.TestId;

/** The contract on SQLite, and what is special to a file on a disk. */
class EmbeddedStoreTest extends PatientStoreContract {

  @Override
  PatientStore newStore(Path folder) {
    return new SqlStore(folder);
  }

  private Path file() {
    return folder.resolve("styloid.db");
  }

  private Statement statement() throws SQLException, StoreException {
    return ((SqlStore) store).database().connection().createStatement();
  }

  @Test
  void aSecondOpeningInThisOrAnotherProgramIsInUse() throws Exception {
    Evaluation evaluation = begun();
    try (PatientStore second = newStore(folder)) {
      StoreException e = refused(StoreException.Cause.IN_USE, second::open);
      assertTrue(e.getMessage().contains(folder.toString()));
    }
    assertEquals("IN_USE", openedByChild());
    store.append(evaluation.id(), List.of(samples.entry("1")));
    store.close();
    assertEquals("OPEN", openedByChild());
  }

  private String openedByChild() throws IOException {
    Process child = ChildJvm.start(OpeningChild.class, folder.toString());
    try (InputStream out = child.getInputStream()) {
      return new String(out.readAllBytes(), StandardCharsets.UTF_8).strip();
    }
  }

  @Test
  void aFileOfANewerVersionIsRefusedUntouched() throws Exception {
    begun();
    store.close();
    byte[] bytes = Files.readAllBytes(file());
    ByteBuffer.wrap(bytes).putInt(60, 4);
    Files.write(file(), bytes);
    StoreException e = refused(StoreException.Cause.NEWER_VERSION, newStore(folder)::open);
    assertTrue(e.getMessage().contains("layout 4"));
    assertArrayEquals(bytes, Files.readAllBytes(file()));
    assertEquals(List.of("native", "styloid.db", "styloid.lock"), names());
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      ArrayList<String> names = new ArrayList<>(List.of("native"));
      files
          .map(f -> f.getFileName().toString())
          .filter(n -> !n.equals("native"))
          .forEach(names::add);
      return names.stream().sorted().toList();
    }
  }

  @Test
  void afterClosingAllIsInTheOneFile() throws Exception {
    begun();
    store.close();
    assertEquals(List.of("native", "styloid.db", "styloid.lock"), names());
  }

  @ParameterizedTest
  @ValueSource(strings = {"not a database, but long enough to be one ", "x"})
  void aFileThatIsNotADatabaseIsRefusedUntouched(String text) throws IOException {
    store.close();
    byte[] bytes = text.repeat(40).getBytes(StandardCharsets.UTF_8);
    Files.write(file(), bytes);
    refused(StoreException.Cause.DAMAGED, newStore(folder)::open);
    assertArrayEquals(bytes, Files.readAllBytes(file()));
  }

  @Test
  void aDatabaseOfAnotherProgramIsRefusedUntouched() throws Exception {
    try (Statement statement = statement()) {
      statement.execute("PRAGMA application_id = 7");
    }
    store.close();
    byte[] bytes = Files.readAllBytes(file());
    refused(StoreException.Cause.DAMAGED, newStore(folder)::open);
    assertArrayEquals(bytes, Files.readAllBytes(file()));
  }

  @Test
  void aFileWithBrokenPagesIsRefused() throws Exception {
    Evaluation evaluation = begun();
    ArrayList<Entry> entries = new ArrayList<>();
    for (int i = 0; i < 500; i++) {
      entries.add(samples.entry("1"));
    }
    store.append(evaluation.id(), entries);
    store.close();
    byte[] bytes = Files.readAllBytes(file());
    Arrays.fill(bytes, bytes.length / 2, bytes.length / 2 + 20_000, (byte) 0x5A);
    Files.write(file(), bytes);
    refused(StoreException.Cause.DAMAGED, newStore(folder)::open);
  }

  @Test
  void aFileCutShortIsRefused() throws Exception {
    begun();
    store.close();
    byte[] bytes = Files.readAllBytes(file());
    Files.write(file(), Arrays.copyOf(bytes, bytes.length / 2));
    refused(StoreException.Cause.DAMAGED, newStore(folder)::open);
  }

  @Test
  void aFolderThatCannotBeMadeIsReadOnly() throws IOException {
    Path inTheWay = Files.createFile(folder.resolve("file"));
    StoreException e =
        refused(StoreException.Cause.READ_ONLY, newStore(inTheWay.resolve("data"))::open);
    assertTrue(e.getMessage().contains(inTheWay.toString()));
  }

  /** Where the system lets this user write all the same, as it does root, opening must work. */
  @Test
  void aFolderWithoutWritePermissionIsReadOnlyWhereTheSystemKeepsToIt() throws Exception {
    Path closed = Files.createDirectory(folder.resolve("closed"));
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("r-xr-xr-x"));
    String expected = Files.isWritable(closed) ? "OPEN" : "READ_ONLY";
    String found;
    try (PatientStore other = newStore(closed)) {
      other.open();
      found = "OPEN";
    } catch (StoreException e) {
      found = e.why().name();
    }
    Files.setPosixFilePermissions(closed, PosixFilePermissions.fromString("rwxr-xr-x"));
    assertEquals(expected, found);
  }

  @Test
  void aWriteProtectedDatabaseIsReadOnlyAndWorksAgainAfterwards() throws Exception {
    Evaluation evaluation = begun();
    Entry entry = samples.entry("1");
    try (Statement statement = statement()) {
      statement.execute("PRAGMA query_only = ON");
      refused(StoreException.Cause.READ_ONLY, () -> store.append(evaluation.id(), List.of(entry)));
      statement.execute("PRAGMA query_only = OFF");
    }
    store.append(evaluation.id(), List.of(entry));
    assertEquals(List.of(entry), ledger(evaluation.id()));
  }

  @Test
  void aFullDiskStoresNothingOfTheBatchAndWorksAgainAfterwards() throws Exception {
    Evaluation evaluation = begun();
    Entry first = samples.entry("1");
    store.append(evaluation.id(), List.of(first));
    ArrayList<Entry> many = new ArrayList<>();
    for (int i = 0; i < 5000; i++) {
      many.add(samples.entry("2"));
    }
    try (Statement statement = statement()) {
      // The engine's own limit gives the same error as the disk.
      statement.execute("PRAGMA max_page_count = 60");
      StoreException e =
          refused(StoreException.Cause.DISK_FULL, () -> store.append(evaluation.id(), many));
      assertTrue(e.getMessage().contains("Free some space"));
      assertEquals(List.of(first), ledger(evaluation.id()));
      statement.execute("PRAGMA max_page_count = 1000000");
    }
    store.append(evaluation.id(), many);
    reopen();
    assertEquals(5001, ledger(evaluation.id()).size());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "UPDATE entry SET value = '2'",
        "DELETE FROM entry",
        "INSERT OR REPLACE INTO entry SELECT id, evaluation, seq, test, item, side, digit, trial,"
            + " kind, '2', detail, entered_at, entered_by, confirmed FROM entry",
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
    "journal_mode, wal",
    "synchronous, 2",
    "foreign_keys, 1",
    "recursive_triggers, 1",
    "locking_mode, exclusive",
    "temp_store, 2",
    "secure_delete, 1"
  })
  void theSettingsThatKeepDataSafeAreInForce(String pragma, String value) throws Exception {
    try (Statement statement = statement();
        ResultSet row = statement.executeQuery("PRAGMA " + pragma)) {
      assertEquals(value, row.getString(1));
    }
  }

  @Test
  void theFilesAreForTheOwnersEyesOnly() throws Exception {
    Path data = folder.resolve("made/here");
    try (PatientStore other = newStore(data)) {
      other.open();
      other.savePatient(samples.patient(), List.of());
      assertEquals("rwx------", permissions(data));
      for (String name : List.of("styloid.db", "styloid.db-wal", "styloid.lock")) {
        assertEquals("rw-------", permissions(data.resolve(name)), name);
      }
    }
  }

  private static String permissions(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  @ParameterizedTest
  @ValueSource(strings = {"with blank", "däta ?mode=memory&x#y", "100%41", "'quote", ":memory:"})
  void theFolderMayHaveAnyName(String name) throws Exception {
    Path data = folder.resolve(name);
    try (PatientStore other = newStore(data)) {
      other.open();
      other.savePatient(samples.patient(), List.of());
    }
    assertTrue(Files.size(data.resolve("styloid.db")) > 0);
    try (PatientStore again = newStore(data)) {
      again.open();
      assertEquals(1, again.caseload("", 10).size());
    }
  }

  @Test
  void aDroppedDraftLeavesNoTraceInTheFile() throws Exception {
    Evaluation evaluation = begun();
    store.draft(evaluation.id(), Samples.key("tip"), "SECRETWORD");
    assertEquals(
        Map.of(Samples.key("tip"), "SECRETWORD"),
        store.evaluation(evaluation.id()).orElseThrow().drafts());
    store.draft(evaluation.id(), Samples.key("tip"), "");
    store.close();
    String raw = Files.readString(file(), StandardCharsets.ISO_8859_1);
    assertFalse(raw.contains("SECRETWORD"));
  }
}
