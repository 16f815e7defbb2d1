package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.Absence;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationRecord;
import styloid.model.InSpite;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.Patient;
import styloid.model.PatientRecord;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Text;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.session.Batch;
import styloid.session.Pseudonym;
import styloid.session.Selection;
import styloid.session.SessionService;
import styloid.session.Sessions;
import styloid.spi.Caseload;
import styloid.spi.Paper;
import styloid.spi.Progress;
import styloid.spi.Texts;

class CaseloadBookTest {
  private static final byte[] KEY = "a key of the tests only".getBytes(StandardCharsets.UTF_8);
  private static SessionService session;

  @TempDir Path folder;

  @BeforeAll
  static void open() {
    session = Sessions.with(DemoClinic.MODULES, List.of(new WorkbookExporter()));
  }

  @AfterAll
  static void close() {
    Sessions.close(session);
  }

  private Path write(List<PatientRecord> records, Optional<Pseudonym> pseudonym) throws Exception {
    Path target = folder.resolve("caseload.xlsx");
    Batch.Outcome outcome =
        new Batch(
                Sessions.over(session, Sessions.shelf(records)),
                Selection.all(),
                Locale.ENGLISH,
                Paper.A4)
            .caseload(target, pseudonym, Progress.none());
    assertEquals(List.of(), outcome.failed());
    return target;
  }

  private static XSSFWorkbook open(Path file) throws IOException {
    return new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(file)));
  }

  @Test
  void holdsARowAnEvaluationAndCountsThemByFormulas() throws Exception {
    List<PatientRecord> records = DemoClinic.records();
    int evaluations = records.stream().mapToInt(r -> r.evaluations().size()).sum();
    try (XSSFWorkbook book = open(write(records, Optional.empty()))) {
      assertEquals("Summary", book.getSheetName(0));
      assertEquals(evaluations, book.getSheet("Evaluations").getLastRowNum());
      XSSFCell count = beside(book.getSheet("Summary"), "Evaluations");
      assertEquals(CellType.FORMULA, count.getCellType());
      assertEquals(evaluations, count.getNumericCellValue());
      assertEquals(
          records.size(), beside(book.getSheet("Summary"), "Patients").getNumericCellValue());
      assertEquals("DEMO-001", book.getSheet("Evaluations").getRow(1).getCell(0).toString());
      assertTrue(book.getSheet("Measures").getLastRowNum() > 1000);
    }
  }

  private static XSSFCell beside(XSSFSheet sheet, String words) {
    for (var row : sheet) {
      if (row.getCell(0) != null && row.getCell(0).toString().equals(words)) {
        return (XSSFCell) row.getCell(1);
      }
    }
    throw new AssertionError(words + " is not there");
  }

  /** LibreOffice comes to the same counts, shares and mean changes. */
  @Test
  void formulasRecalculatedGiveOurValues() throws Exception {
    Path file = write(DemoClinic.records(), Optional.empty());
    Path again = Office.in(folder).calculated(file);
    int compared = 0;
    try (XSSFWorkbook ours = open(file);
        XSSFWorkbook theirs = open(again)) {
      for (int s = 0; s < 2; s++) {
        for (var row : ours.getSheetAt(s)) {
          for (var cell : row) {
            if (cell.getCellType() == CellType.FORMULA) {
              var other =
                  theirs.getSheetAt(s).getRow(row.getRowNum()).getCell(cell.getColumnIndex());
              assertEquals(cell.getCachedFormulaResultType(), other.getCachedFormulaResultType());
              if (cell.getCachedFormulaResultType() == CellType.NUMERIC) {
                double value = cell.getNumericCellValue();
                assertEquals(
                    value, other.getNumericCellValue(), 1e-9 * Math.max(1, Math.abs(value)));
              } else {
                assertEquals(cell.getStringCellValue(), other.getStringCellValue());
              }
              compared++;
            }
          }
        }
      }
    }
    assertTrue(compared > 50, compared + " formulas");
  }

  @Test
  void sameCaseloadGivesTheSameBytes() throws Exception {
    byte[] first = Files.readAllBytes(write(DemoClinic.records(), Optional.empty()));
    assertArrayEquals(first, Files.readAllBytes(write(DemoClinic.records(), Optional.empty())));
  }

  /** A record with its owner's name planted wherever text can stand. */
  private static PatientRecord planted(PatientRecord record, String name, String born) {
    Patient p = record.patient();
    Patient patient =
        new Patient(
            p.id(),
            "REC " + name,
            name,
            Optional.of(LocalDate.parse(born)),
            p.sex(),
            p.dominance(),
            p.involved(),
            "seen for " + name,
            p.onset(),
            p.surgery(),
            p.heightCm());
    ArrayList<EvaluationRecord> visits = new ArrayList<>();
    for (EvaluationRecord visit : record.evaluations()) {
      Evaluation e = visit.evaluation();
      Evaluation head =
          new Evaluation(
              e.id(),
              e.patient(),
              e.date(),
              new TherapistId(name),
              e.state(),
              e.versions(),
              e.choices());
      ArrayList<Entry> entries = new ArrayList<>(visit.ledger().entries());
      Entry first = entries.get(0);
      entries.add(entry(first, "grip", "grip-instrument", Side.UNSIDED, new Text(name)));
      entries.add(
          entry(
              first,
              "grip",
              "position-1",
              Side.RIGHT,
              new Absence(Absence.Reason.PAIN, "said " + name)));
      visits.add(
          new EvaluationRecord(head, Ledger.of(entries), visit.definitions(), visit.drafts()));
    }
    return new PatientRecord(patient, record.precautions(), visits);
  }

  private static Entry entry(Entry like, String test, String item, Side side, Value value) {
    ItemKey key = new ItemKey(new TestId(test), new ItemId(item), side, Digit.NONE, 1);
    return new Entry(
        new EntryId(UUID.nameUUIDFromBytes((like.id() + item).getBytes(StandardCharsets.UTF_8))),
        key,
        Optional.of(value),
        like.at(),
        new TherapistId("Plantedname"),
        false,
        Optional.of(new InSpite("because of Plantedname", List.of())));
  }

  @Test
  void noPlantedNameStandsInAnyPartWhereIdentityIsKeptBack() throws Exception {
    List<PatientRecord> records =
        DemoClinic.records().stream().map(r -> planted(r, "Plantedname", "1931-04-05")).toList();
    String known = parts(write(records, Optional.empty()));
    assertTrue(known.contains("Plantedname"), "the search finds what is there");
    Path file = write(records, Optional.of(new Pseudonym(KEY)));
    String kept = parts(file);
    assertFalse(kept.toLowerCase(Locale.ROOT).contains("plantedname"));
    for (PatientRecord record : records) {
      for (EvaluationRecord visit : record.evaluations()) {
        assertFalse(kept.contains(visit.evaluation().date().toString()));
        assertFalse(kept.contains(visit.evaluation().id().toString()));
      }
      assertFalse(kept.contains(record.patient().id().toString()));
    }
    try (XSSFWorkbook book = open(file)) {
      XSSFSheet evaluations = book.getSheet("Evaluations");
      for (int r = 1; r <= evaluations.getLastRowNum(); r++) {
        assertEquals("90+", evaluations.getRow(r).getCell(5).getStringCellValue());
        double year = evaluations.getRow(r).getCell(1).getNumericCellValue();
        assertTrue(year == 2025 || year == 2026, "a year alone: " + year);
      }
    }
    assertTrue(kept.contains(new Pseudonym(KEY).of("REC Plantedname")));
  }

  private static String parts(Path file) throws IOException {
    StringBuilder all = new StringBuilder();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        all.append(entry.getName()).append(new String(zip.readAllBytes(), StandardCharsets.UTF_8));
      }
    }
    return all.toString();
  }

  @Test
  void codesDependOnTheKeyAndOnTheNumberAlone() {
    Pseudonym one = new Pseudonym(KEY);
    Pseudonym other = new Pseudonym("another key of the tests".getBytes(StandardCharsets.UTF_8));
    assertEquals(one.of("0042"), one.of(" 0042 "));
    assertFalse(one.of("0042").equals(one.of("42")));
    assertFalse(one.of("0042").equals(other.of("0042")));
    assertTrue(one.of("0042").matches("P-[0-9A-HJKMNP-TV-Z]{12}"), one.of("0042"));
  }

  /** RFC 4231, test case 2: HMAC-SHA-256 under a short key begins 5bdcc146bf60754e. */
  @Test
  void codeIsThePublishedHashInBase32() {
    byte[] key = new byte[64];
    System.arraycopy("Jefe".getBytes(StandardCharsets.UTF_8), 0, key, 0, 4);
    long bits = 0x5bdcc146bf60754eL;
    StringBuilder code = new StringBuilder("P-");
    for (int i = 0; i < 12; i++) {
      code.append("0123456789ABCDEFGHJKMNPQRSTVWXYZ".charAt((int) (bits >>> 59 - 5 * i & 31)));
    }
    assertEquals(code.toString(), new Pseudonym(key).of("what do ya want for nothing?"));
  }

  private static Caseload.Visit visit(int number, String text) {
    Caseload.Measure measure =
        new Caseload.Measure(
            "Test",
            text,
            "right",
            "",
            1,
            OptionalDouble.of(-number),
            Unit.NEWTON,
            "",
            OptionalDouble.of(1));
    return new Caseload.Visit(
        text,
        Optional.empty(),
        2026,
        "",
        Evaluation.State.DRAFT,
        1,
        "7",
        "",
        "",
        "",
        text,
        1,
        Map.of(),
        List.of(measure, measure));
  }

  @Test
  void fullSheetGoesOnInAnotherAndTheSummaryAddsThem() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    Caseload caseload =
        new Caseload(
            true,
            sink -> {
              for (int i = 1; i <= 9; i++) {
                sink.visit(visit(i, "same"));
              }
            },
            new Texts(Map.of(), Locale.ENGLISH));
    CaseloadBook.write(caseload, out, 10);
    Path file = folder.resolve("spill.xlsx");
    Files.write(file, out.toByteArray());
    try (XSSFWorkbook book = open(file)) {
      assertEquals(4, book.getNumberOfSheets());
      assertEquals(9, book.getSheet("Measures").getLastRowNum());
      assertEquals(9, book.getSheet("Measures 2").getLastRowNum());
    }
    try (XSSFWorkbook book = open(Office.in(folder).calculated(file))) {
      XSSFSheet summary = book.getSheet("Summary");
      assertEquals(1.0, summary.getRow(summary.getLastRowNum()).getCell(2).getNumericCellValue());
    }
  }

  @Test
  void textThatLooksLikeAFormulaStaysText() throws Exception {
    for (String evil : List.of("=1+1", "+cmd|' /C calc'!A0", "@SUM(1)", "-2", "\t=1", "a*b~c?")) {
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      CaseloadBook.write(
          new Caseload(
              true, sink -> sink.visit(visit(1, evil)), new Texts(Map.of(), Locale.ENGLISH)),
          out);
      try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(out.toByteArray()))) {
        XSSFCell cell = book.getSheet("Evaluations").getRow(1).getCell(0);
        assertEquals(CellType.STRING, cell.getCellType());
        assertEquals(evil, cell.getStringCellValue());
      }
    }
  }
}
