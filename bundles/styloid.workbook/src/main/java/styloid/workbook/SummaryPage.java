package styloid.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import styloid.model.Codes;
import styloid.model.Entry;
import styloid.model.Finding;
import styloid.model.Patient;
import styloid.model.Precaution;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Report;

/** The summary, on one printed page: who, under which limits, what stands out, what came of it. */
final class SummaryPage {
  private static final List<Integer> WIDTHS = List.of(34, 24, 24, 28, 16);
  private static final int MOST_UNUSUAL = 12;

  private SummaryPage() {}

  static Page of(Report report, String name, Banner banner, PartPages parts, Say say) {
    PageBuilder page = new PageBuilder(name, banner).onOnePage();
    person(page, report, say);
    precautions(page, report, say);
    faults(page, report, say);
    findings(page, report, say);
    unusual(page, report, say);
    Set<TestId> summed = parts.summaries(page, report);
    KeyResults.add(page, report, summed, say);
    page.heading(say.own("summary.narrative"));
    page.across(Narrative.of(report, say), Look.TEXT);
    page.heading(say.own("scope.heading"));
    page.across(say.own("scope.1"), Look.CAUTION);
    page.across(say.own("summary.scope-more"), Look.TEXT);
    return page.build();
  }

  /** What the banner does not say. */
  private static void person(PageBuilder page, Report report, Say say) {
    Patient patient = report.context().patient();
    String sex = patient.sex().map(say.texts()::word).orElseGet(() -> say.own("not-recorded"));
    page.heading(say.own("summary.person"));
    page.row(
        List.of(
            Box.words(say.own("label.patient"), Look.ROW_HEAD),
            Box.words(patient.name(), Look.TEXT),
            Box.words(say.own("label.record-number"), Look.ROW_HEAD),
            Box.words(patient.recordNumber(), Look.TEXT)));
    page.across(say.own("summary.diagnosis", say.orUnknown(patient.diagnosis())), Look.TEXT);
    page.across(
        say.own(
            "summary.facts",
            sex,
            say.dateOrUnknown(patient.onset()),
            say.dateOrUnknown(patient.surgery()),
            Banner.involved(patient, say)),
        Look.TEXT);
    page.across(say.own("summary.state", Banner.state(report, say)), Look.ROW_HEAD);
  }

  private static void precautions(PageBuilder page, Report report, Say say) {
    page.heading(say.own("precautions.heading"));
    if (report.inForce().isEmpty()) {
      page.across(say.own("precautions.none-recorded"), Look.TEXT);
    }
    for (Precaution precaution : report.inForce()) {
      page.across(Banner.limit(precaution, say), Look.CAUTION);
    }
  }

  private static void faults(PageBuilder page, Report report, Say say) {
    if (report.faults().isEmpty()) {
      return;
    }
    page.heading(say.own("summary.faults"));
    report.faults().forEach(fault -> page.across(fault, Look.CAUTION));
  }

  private static void findings(PageBuilder page, Report report, Say say) {
    page.heading(say.own("summary.findings"));
    if (report.findings().isEmpty()) {
      page.across(say.own("summary.no-findings"), Look.TEXT);
    }
    for (Finding finding : report.findings()) {
      String side =
          finding.side() == Side.UNSIDED ? "" : say.capital(say.side(finding.side())) + ": ";
      page.across(side + say.message(finding.text()), Look.TEXT);
    }
  }

  private static void unusual(PageBuilder page, Report report, Say say) {
    page.heading(say.own("summary.unusual"));
    List<Unusual.Row> found = Unusual.of(report);
    if (found.isEmpty()) {
      boolean none = report.context().snapshot().isEmpty();
      page.across(say.own(none ? "entries.empty" : "summary.nothing-unusual"), Look.TEXT);
      return;
    }
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (Unusual.Row row : found.subList(0, Math.min(found.size(), MOST_UNUSUAL))) {
      ArrayList<Box> boxes = new ArrayList<>();
      boxes.add(Box.words(item(row, say), Look.ROW_HEAD));
      boxes.add(value(row, Side.RIGHT, say));
      boxes.add(value(row, Side.LEFT, say));
      boxes.add(Box.words(why(row.why(), say), Look.TEXT));
      boxes.add(value(row, Side.UNSIDED, say));
      rows.add(boxes);
    }
    boolean unsided = found.stream().anyMatch(row -> row.entries().containsKey(Side.UNSIDED));
    sides(page, say.own("head.item"), say.own("head.why"), rows, unsided, say);
    if (found.size() > MOST_UNUSUAL) {
      page.across(say.own("summary.more-unusual", found.size() - MOST_UNUSUAL), Look.TEXT);
    }
  }

  /** A table of right, left, a remark, and what is not of a side when there is any of it. */
  static void sides(
      PageBuilder page,
      String first,
      String remark,
      List<List<Box>> rows,
      boolean unsided,
      Say say) {
    int columns = unsided ? 5 : 4;
    List<String> heads =
        List.of(
            first, say.own("head.right"), say.own("head.left"), remark, say.own("head.no-side"));
    page.table(
        heads.subList(0, columns),
        WIDTHS.subList(0, columns),
        rows.stream().map(row -> row.subList(0, columns)).toList());
  }

  private static String item(Unusual.Row row, Say say) {
    String item = say.itemOfDigit(say.item(row.key()), row.key().digit());
    String where = say.own("summary.item", say.capital(say.texts().word(row.region())), item);
    return row.key().trial() == 1 ? where : say.own("summary.trial", where, row.key().trial());
  }

  private static Box value(Unusual.Row row, Side side, Say say) {
    Entry entry = row.entries().get(side);
    Optional<String> text =
        Optional.ofNullable(entry)
            .flatMap(Entry::value)
            .map(value -> say.texts().value(entry.key(), value));
    return text.map(t -> Box.words(t, Look.VALUE))
        .orElseGet(() -> Box.words(say.own("nothing"), Look.VALUE));
  }

  private static String why(Set<Unusual.Why> why, Say say) {
    return why.stream().map(w -> say.own("why." + Codes.of(w))).collect(Collectors.joining(", "));
  }
}
