package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.session.Batch;
import styloid.session.Selection;
import styloid.session.SessionService;
import styloid.session.Sessions;
import styloid.spi.Paper;
import styloid.spi.Progress;
import styloid.store.CaseloadRow;

/** A folder of workbooks from the invented clinic. */
class BatchTest {
  private static SessionService session;
  private static List<PatientRecord> records;

  @TempDir Path folder;

  @BeforeAll
  static void open() throws IOException {
    session = Sessions.with(DemoClinic.MODULES, List.of(new WorkbookExporter()));
    records = DemoClinic.records().subList(1, 4);
  }

  @AfterAll
  static void close() {
    Sessions.close(session);
  }

  private static Selection from(String day) {
    return new Selection("", Optional.of(LocalDate.parse(day)), Optional.empty(), "", false);
  }

  private Batch.Outcome write(Selection selection, Progress progress) throws Exception {
    return new Batch(
            Sessions.over(session, Sessions.shelf(records)), selection, Locale.ENGLISH, Paper.A4)
        .files(folder, progress);
  }

  private List<String> files() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  private List<String> manifest() throws IOException {
    return Files.readAllLines(folder.resolve("manifest.txt"));
  }

  @Test
  void writesOneFileAnEvaluationWithItsHashAndWithoutNames() throws Exception {
    Batch.Outcome outcome = write(from("2026-02-01"), Progress.none());
    assertEquals(List.of(), outcome.failed());
    List<String> files =
        List.of(
            "DEMO-002_2026-03-09.xlsx",
            "DEMO-003_2026-02-11.xlsx",
            "DEMO-004_2026-03-02.xlsx",
            "manifest.txt");
    assertEquals(files, files());
    assertEquals(3, outcome.written());
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    for (String line : manifest()) {
      String[] parts = line.split("  ");
      byte[] bytes = Files.readAllBytes(folder.resolve(parts[2]));
      assertEquals(HexFormat.of().formatHex(digest.digest(bytes)), parts[0]);
    }
    assertEquals(3, manifest().size());
  }

  @Test
  void goesOnWhereItWasCutOff() throws Exception {
    Progress cancelledAfterOne =
        new Progress() {
          private boolean stop;

          @Override
          public void step(int done, int of) {
            stop = done >= 1;
          }

          @Override
          public boolean cancelled() {
            return stop;
          }
        };
    Batch.Outcome first = write(from("2026-02-01"), cancelledAfterOne);
    assertTrue(first.cancelled());
    assertEquals(1, first.written());
    byte[] before = Files.readAllBytes(folder.resolve("DEMO-002_2026-03-09.xlsx"));
    Batch.Outcome second = write(from("2026-02-01"), Progress.none());
    assertFalse(second.cancelled());
    assertEquals(1, second.kept());
    assertEquals(2, second.written());
    assertArrayEquals(before, Files.readAllBytes(folder.resolve("DEMO-002_2026-03-09.xlsx")));
  }

  @Test
  void aFileThatWasChangedIsWrittenAnew() throws Exception {
    write(from("2026-03-09"), Progress.none());
    Path file = folder.resolve("DEMO-002_2026-03-09.xlsx");
    Files.writeString(file, "spoilt");
    Batch.Outcome again = write(from("2026-03-09"), Progress.none());
    assertEquals(1, again.written());
    assertEquals(0, again.kept());
    assertTrue(Files.size(file) > 10_000);
  }

  @Test
  void oneBadRecordIsToldAndTheOthersAreWritten() throws Exception {
    PatientId bad = records.get(1).patient().id();
    Sessions.Shelf good = Sessions.shelf(records);
    Sessions.Shelf shelf =
        new Sessions.Shelf() {
          @Override
          public List<CaseloadRow> rows() {
            return good.rows();
          }

          @Override
          public Optional<PatientRecord> record(PatientId id) {
            if (id.equals(bad)) {
              throw new IllegalStateException("unreadable");
            }
            return good.record(id);
          }
        };
    Batch.Outcome outcome =
        new Batch(Sessions.over(session, shelf), from("2026-02-01"), Locale.ENGLISH, Paper.A4)
            .files(folder, Progress.none());
    assertEquals(List.of("DEMO-003: unreadable"), outcome.failed());
    assertEquals(2, outcome.written());
  }

  @Test
  void selectionIsByDayTherapistAndState() throws Exception {
    Selection drafts =
        new Selection("", Optional.empty(), Optional.empty(), "o. sample, pt (invented)", false);
    assertEquals(2, write(drafts, Progress.none()).written());
    Selection signed = new Selection("", Optional.empty(), Optional.empty(), "", true);
    assertEquals(0, write(signed, Progress.none()).written());
  }
}
