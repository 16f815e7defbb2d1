package styloid.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.Inflater;
import java.util.zip.InflaterOutputStream;
import styloid.model.Absence;
import styloid.spi.Caseload;

/**
 * Writes a caseload: a summary, a row an evaluation, a row a measure. Measures go on in a further
 * sheet where one is full. The evaluations wait deflated in memory, some 60 bytes each, since the
 * parts of a file can only be written one after the other.
 */
final class CaseloadBook implements Caseload.Sink {
  /** Most rows of a sheet, its heads included (ECMA-376 leaves it open; readers take 2^20). */
  static final int MOST_ROWS = 1_048_576;

  private static final LocalDate EPOCH = LocalDate.of(1899, 12, 30);

  private final Caseload caseload;
  private final Say say;
  private final StreamedPackage file;
  private final int mostRows;
  private final CaseloadTally tally = new CaseloadTally();
  private final RowText row = new RowText();
  private final ByteArrayOutputStream deflated = new ByteArrayOutputStream(1 << 16);
  private final OutputStream evaluations =
      new DeflaterOutputStream(deflated, new Deflater(Deflater.BEST_SPEED));
  private final ArrayList<Integer> measureSheets = new ArrayList<>();
  private final ArrayList<Integer> measureRows = new ArrayList<>();
  private int measureRow;

  private CaseloadBook(Caseload caseload, Say say, StreamedPackage file, int mostRows) {
    this.caseload = caseload;
    this.say = say;
    this.file = file;
    this.mostRows = mostRows;
  }

  static void write(Caseload caseload, OutputStream out) throws IOException {
    write(caseload, out, MOST_ROWS);
  }

  /** {@code mostRows} rows a sheet, so that a test can fill one. */
  static void write(Caseload caseload, OutputStream out, int mostRows) throws IOException {
    Say say = new Say(caseload.texts(), List.of());
    try (StreamedPackage file = new StreamedPackage(out)) {
      CaseloadBook book = new CaseloadBook(caseload, say, file, mostRows);
      book.beginMeasures();
      caseload.visits().to(book);
      book.endMeasures();
      int evaluationSheet = book.evaluationSheet();
      int summary = new CaseloadSummary(caseload, book.tally, say, file).write(book.parts());
      ArrayList<Integer> order = new ArrayList<>(List.of(summary, evaluationSheet));
      order.addAll(book.measureSheets);
      file.finish(order, "");
    }
  }

  private CaseloadSummary.Parts parts() {
    ArrayList<CaseloadSummary.Part> measures = new ArrayList<>();
    for (int i = 0; i < measureRows.size(); i++) {
      measures.add(new CaseloadSummary.Part(measuresName(i + 1), measureRows.get(i)));
    }
    String name = say.own("caseload.evaluations");
    return new CaseloadSummary.Parts(
        new CaseloadSummary.Part(name, Math.max(2, tally.evaluations + 1)), measures);
  }

  private String measuresName(int number) {
    return number == 1 ? say.own("caseload.measures") : say.own("caseload.measures-more", number);
  }

  @Override
  public void visit(Caseload.Visit visit) throws IOException {
    if (tally.evaluations + 2 > mostRows) {
      throw new IOException(say.own("caseload.too-many", mostRows - 1));
    }
    tally.add(visit);
    evaluations.write(evaluation(visit).toString().getBytes(StandardCharsets.UTF_8));
    for (Caseload.Measure measure : visit.measures()) {
      if (measureRow == mostRows) {
        endMeasures();
        beginMeasures();
      }
      file.write(measure(visit, measure));
    }
  }

  private StringBuilder evaluation(Caseload.Visit visit) {
    int number = tally.evaluations + 1;
    row.begin(number).text(visit.patient(), StreamStyles.TEXT);
    day(visit);
    row.text(visit.therapist(), StreamStyles.TEXT)
        .text(say.texts().word(visit.state()), StreamStyles.TEXT)
        .number(visit.number(), StreamStyles.NUMBER);
    age(visit.age());
    row.text(visit.sex(), StreamStyles.TEXT)
        .text(visit.dominance(), StreamStyles.TEXT)
        .text(visit.involved(), StreamStyles.TEXT)
        .text(CaseloadTally.group(visit), StreamStyles.TEXT)
        .number(visit.values(), StreamStyles.NUMBER);
    int absent = 0;
    for (Absence.Reason reason : Absence.Reason.values()) {
      int count = visit.absences().getOrDefault(reason, 0);
      absent += count;
      row.number(count, StreamStyles.NUMBER);
    }
    int all = visit.values() + absent;
    if (all == 0) {
      row.gap();
    } else {
      String share = "K" + number + "/SUM(K" + number + ":Q" + number + ")";
      row.formula(share, (double) visit.values() / all, StreamStyles.LIVE_SHARE);
    }
    return row.end();
  }

  private void day(Caseload.Visit visit) {
    Optional<LocalDate> day = visit.day();
    if (day.isPresent()) {
      row.number(ChronoUnit.DAYS.between(EPOCH, day.get()), StreamStyles.DAY);
    } else {
      row.number(visit.year(), StreamStyles.NUMBER);
    }
  }

  /** A number stays one; "90+" is a word. */
  private void age(String age) {
    if (age.matches("\\d{1,3}")) {
      row.number(Integer.parseInt(age), StreamStyles.NUMBER);
    } else {
      row.text(age, StreamStyles.TEXT);
    }
  }

  private StringBuilder measure(Caseload.Visit visit, Caseload.Measure measure) {
    row.begin(++measureRow).text(visit.patient(), StreamStyles.TEXT);
    day(visit);
    row.text(measure.test(), StreamStyles.TEXT)
        .text(measure.item(), StreamStyles.TEXT)
        .text(measure.side(), StreamStyles.TEXT)
        .text(measure.digit(), StreamStyles.TEXT)
        .number(measure.trials(), StreamStyles.NUMBER)
        .number(measure.number(), StreamStyles.NUMBER)
        .text(measure.number().isPresent() ? measure.unit().sign() : "", StreamStyles.TEXT)
        .text(SafeText.fit(measure.answer(), left -> say.own("cut", left)), StreamStyles.TEXT)
        .number(measure.change(), StreamStyles.NUMBER)
        .text(CaseloadTally.group(visit), StreamStyles.TEXT);
    return row.end();
  }

  private void beginMeasures() throws IOException {
    List<Integer> widths = List.of(16, 11, 22, 44, 8, 12, 7, 12, 7, 24, 12, 40);
    String name = measuresName(measureSheets.size() + 1);
    measureSheets.add(file.beginSheet(name, CaseloadSummary.head(widths, 1)));
    measureRow = 1;
    file.write(
        heads(
            "patient",
            "day",
            "test",
            "item",
            "side",
            "digit",
            "trials",
            "number",
            "unit",
            "answer",
            "change",
            "diagnosis"));
  }

  private void endMeasures() throws IOException {
    measureRows.add(Math.max(2, measureRow));
    file.endSheet(CaseloadSummary.tail("A1:L" + measureRow, true));
  }

  private int evaluationSheet() throws IOException {
    evaluations.close();
    List<Integer> widths = List.of(16, 11, 20, 9, 7, 7, 8, 13, 10, 40, 9, 9, 9, 9, 9, 11, 11, 13);
    int number = file.beginSheet(say.own("caseload.evaluations"), CaseloadSummary.head(widths, 1));
    RowText heads = row.begin(1);
    for (String head :
        List.of(
            "patient",
            "day",
            "therapist",
            "state",
            "visit",
            "age",
            "sex",
            "dominant",
            "involved",
            "diagnosis",
            "values")) {
      heads.text(head(head), StreamStyles.HEAD);
    }
    for (Absence.Reason reason : Absence.Reason.values()) {
      heads.text(say.own("caseload.absent", say.texts().word(reason)), StreamStyles.HEAD);
    }
    heads.text(head("complete"), StreamStyles.HEAD);
    file.write(row.end());
    try (InflaterOutputStream inflating = new InflaterOutputStream(open(), new Inflater())) {
      deflated.writeTo(inflating);
      inflating.finish();
    }
    file.endSheet(CaseloadSummary.tail("A1:R" + Math.max(1, tally.evaluations + 1), true));
    return number;
  }

  /** The file, left open when what writes into it is closed. */
  private OutputStream open() {
    OutputStream out = file.stream();
    return new OutputStream() {
      @Override
      public void write(int b) throws IOException {
        out.write(b);
      }

      @Override
      public void write(byte[] bytes, int from, int length) throws IOException {
        out.write(bytes, from, length);
      }
    };
  }

  private StringBuilder heads(String... keys) {
    row.begin(1);
    for (String key : keys) {
      row.text(head(key), StreamStyles.HEAD);
    }
    return row.end();
  }

  private String head(String key) {
    boolean day = key.equals("day") || key.equals("patient");
    String own = day && !caseload.identified() ? key + "-coded" : key;
    return say.own("caseload.head." + own);
  }
}
