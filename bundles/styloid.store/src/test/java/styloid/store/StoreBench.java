package styloid.store;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.sqlite.SQLiteDataSource;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationRecord;
import styloid.model.Ledger;
import styloid.model.Patient;
import styloid.model.PatientRecord;

/**
 * Run by hand: what the store costs beside the bare engine doing the same writes, and how a large
 * clinic opens and searches. Argument: an empty folder on the disk to be measured.
 */
final class StoreBench {
  private static final int ROUNDS = 400;
  private static final int PATIENTS = 10_000;

  private final PrintStream out = new PrintStream(new FileOutputStream(FileDescriptor.out), true);
  private final Samples samples = new Samples(3);
  private final Path folder;

  private StoreBench(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] args) throws Exception {
    StoreBench bench = new StoreBench(Path.of(args[0]));
    bench.append();
    bench.largeClinic();
  }

  /** Alternates the two, so that a busy disk hits both alike. */
  private void append() throws StoreException, SQLException, IOException {
    Patient patient = samples.patient();
    Evaluation evaluation = samples.evaluation(patient.id(), "2026-03-02");
    Path bareFolder = Files.createDirectories(folder.resolve("bare"));
    try (PatientStore store = new SqlStore(folder.resolve("store"));
        Connection bare = bare(bareFolder)) {
      store.open();
      store.savePatient(patient, List.of());
      store.begin(evaluation, List.of());
      long[] ours = new long[ROUNDS];
      long[] theirs = new long[ROUNDS];
      try (PreparedStatement insert =
          bare.prepareStatement("INSERT INTO entry VALUES (?,?,?,?,?,?,?,?,?,?,?,?,?,?)")) {
        for (int i = 0; i < ROUNDS; i++) {
          Entry entry = samples.entry("38.50");
          ours[i] = nanos(() -> store.append(evaluation.id(), List.of(entry)));
          int seq = i;
          theirs[i] = nanos(() -> insert(insert, evaluation, seq, entry));
        }
      }
      print("one durable entry, store", ours, "bare insert and commit", theirs);
    }
  }

  private static Connection bare(Path folder) throws SQLException {
    SQLiteDataSource source = new SQLiteDataSource();
    source.setUrl("jdbc:sqlite:" + folder.resolve("bare.db"));
    Connection connection = source.getConnection();
    try (Statement statement = connection.createStatement()) {
      statement.execute("PRAGMA locking_mode = EXCLUSIVE");
      statement.execute("PRAGMA journal_mode = WAL");
      statement.execute("PRAGMA synchronous = FULL");
      statement.execute(
          "CREATE TABLE entry (id PRIMARY KEY, evaluation, seq, test, item, side, digit, trial,"
              + " kind, value, detail, entered_at, entered_by, confirmed)");
    }
    return connection;
  }

  private static void insert(PreparedStatement insert, Evaluation evaluation, int seq, Entry entry)
      throws SQLException {
    Object[] row = {
      entry.id().toString(),
      evaluation.id().toString(),
      seq,
      "grip",
      "power",
      "right",
      "none",
      1,
      "quantity",
      "38.50",
      "kgf",
      entry.at().toString(),
      entry.by().value(),
      0
    };
    for (int i = 0; i < row.length; i++) {
      insert.setObject(i + 1, row[i]);
    }
    insert.executeUpdate();
  }

  private void largeClinic() throws Exception {
    Path clinic = folder.resolve("clinic");
    try (PatientStore store = new SqlStore(clinic)) {
      store.open();
      out.printf("import of %d patients: %d ms%n", PATIENTS, millis(() -> fill(store)));
    }
    long size = Files.size(clinic.resolve("styloid.db")) / 1_000_000;
    try (PatientStore store = new SqlStore(clinic)) {
      out.printf("open, %d MB: %d ms%n", size, millis(store::open));
      for (String search : List.of("", "p", "person 99", "1968-05", "nobody")) {
        long[] times = new long[20];
        for (int i = 0; i < times.length; i++) {
          times[i] = nanos(() -> store.caseload(search, 200));
        }
        out.printf("caseload \"%s\": median %.1f ms%n", search, median(times) / 1e6);
      }
    }
  }

  private void fill(PatientStore store) throws StoreException {
    ArrayList<PatientRecord> records = new ArrayList<>();
    for (int i = 0; i < PATIENTS; i++) {
      Patient patient = samples.patient("r" + i, "Person " + i * 7919L % PATIENTS, "1968-05-14");
      Evaluation evaluation = samples.evaluation(patient.id(), "2026-03-02");
      ArrayList<Entry> entries = new ArrayList<>();
      for (int j = 0; j < 40; j++) {
        entries.add(samples.entry("38.50"));
      }
      records.add(
          new PatientRecord(
              patient,
              List.of(),
              List.of(new EvaluationRecord(evaluation, Ledger.of(entries), List.of(), Map.of()))));
    }
    store.importRecords(records);
  }

  private interface Step {
    void run() throws StoreException, SQLException;
  }

  private static long nanos(Step step) throws StoreException, SQLException {
    long start = System.nanoTime();
    step.run();
    return System.nanoTime() - start;
  }

  private static long millis(Step step) throws StoreException, SQLException {
    return nanos(step) / 1_000_000;
  }

  private void print(String first, long[] ours, String second, long[] theirs) {
    double a = median(ours) / 1e6;
    double b = median(theirs) / 1e6;
    out.printf("%s: %.3f ms; %s: %.3f ms; ratio %.2f%n", first, a, second, b, a / b);
  }

  private static double median(long[] times) {
    long[] sorted = Arrays.copyOfRange(times, times.length / 4, times.length);
    Arrays.sort(sorted);
    return sorted[sorted.length / 2];
  }
}
