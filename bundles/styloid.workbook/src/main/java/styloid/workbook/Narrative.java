package styloid.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import styloid.model.Absence;
import styloid.model.Entry;
import styloid.model.Finding;
import styloid.model.Patient;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.spi.Report;
import styloid.spi.Sheet;

/** The evaluation in plain sentences, in one cell, ready to be pasted into a chart. */
final class Narrative {
  private static final int MOST_NOT_DONE = 6;

  /** Columns of right and left; what stands behind them is a remark. */
  private static final int SIDES = 2;

  private final Report report;
  private final Say say;
  private final ArrayList<String> sentences = new ArrayList<>();

  private Narrative(Report report, Say say) {
    this.report = report;
    this.say = say;
  }

  static String of(Report report, Say say) {
    Narrative narrative = new Narrative(report, say);
    narrative.visit();
    narrative.findings();
    narrative.tests();
    narrative.notDone();
    narrative.sentences.add(say.own("narrative.scope"));
    return String.join(" ", narrative.sentences);
  }

  private void add(String key, Object... args) {
    sentences.add(say.own(key, args));
  }

  private void visit() {
    Patient patient = report.context().patient();
    add(
        "narrative.visit",
        say.date(report.context().evaluation().date()),
        report.context().age().map(age -> say.own("narrative.age", age)).orElse(""),
        Banner.dominance(patient, say),
        report.context().evaluation().therapist().value());
    if (!patient.diagnosis().isBlank()) {
      add("summary.diagnosis", end(patient.diagnosis()));
    }
    add("narrative.involved", Banner.involved(patient, say));
    add("narrative.precautions", Banner.precautions(report, say));
    if (report.context().snapshot().isEmpty()) {
      add("entries.empty");
    }
  }

  private static String end(String text) {
    String bare = text.strip();
    return bare.endsWith(".") ? bare : bare + ".";
  }

  private void findings() {
    for (Finding finding : report.findings()) {
      String side =
          finding.side() == Side.UNSIDED ? "" : say.capital(say.side(finding.side())) + ": ";
      sentences.add(end(side + say.message(finding.text())));
    }
  }

  /** What each test put on the first page, row by row. */
  private void tests() {
    for (Report.Part part : report.parts()) {
      for (Sheet sheet : part.sheets()) {
        if (sheet.ofSummary()) {
          sheet.blocks().forEach(this::block);
        }
      }
    }
  }

  private void block(Sheet.Block block) {
    if (block instanceof Sheet.Table table) {
      String rows =
          table.rows().stream().map(row -> row(table, row)).collect(Collectors.joining("; "));
      add("narrative.test", say.message(table.heading()), rows);
    } else if (block instanceof Sheet.Paragraph paragraph) {
      sentences.add(say.message(paragraph.text()));
    }
  }

  private String row(Sheet.Table table, List<Sheet.Cell> row) {
    ArrayList<String> parts = new ArrayList<>();
    for (int i = 1; i < row.size(); i++) {
      String value = words(row.get(i));
      if (!value.isEmpty()) {
        String head = say.message(table.columns().get(i).head());
        boolean remark = i > SIDES;
        parts.add(remark ? value : say.own("narrative.value", head.toLowerCase(locale()), value));
      }
    }
    return say.own("narrative.row", words(row.get(0)), String.join(", ", parts));
  }

  private Locale locale() {
    return say.texts().locale();
  }

  private String words(Sheet.Cell cell) {
    return cell.match(
        words -> say.message(words.text()),
        figure -> say.texts().quantity(new Quantity(figure.amount(), figure.unit())),
        derived ->
            say.texts()
                .quantity(new Quantity(derived.amount(), derived.unit()), derived.decimals()),
        blank -> "");
  }

  /** Values absent for a reason other than not having been done. */
  private void notDone() {
    ArrayList<String> absent = new ArrayList<>();
    for (Entry entry : report.context().snapshot().entries()) {
      if (entry.key().trial() == 1
          && entry.value().orElse(null) instanceof Absence a
          && a.reason() != Absence.Reason.NOT_DONE) {
        String item = say.itemOfDigit(say.item(entry.key()), entry.key().digit());
        String value = say.texts().value(entry.key(), a);
        absent.add(say.own("narrative.absent", item, say.side(entry.key().side()), value));
      }
    }
    if (!absent.isEmpty()) {
      int more = absent.size() - MOST_NOT_DONE;
      String list = absent.stream().limit(MOST_NOT_DONE).collect(Collectors.joining("; "));
      add("narrative.not-done", more <= 0 ? list : say.own("method.more-uses", list, more));
    }
  }
}
