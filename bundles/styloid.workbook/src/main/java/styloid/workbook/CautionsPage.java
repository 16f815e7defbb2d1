package styloid.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import styloid.model.Absence;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.ItemKey;
import styloid.model.Precaution;
import styloid.spi.Report;

/** Cautions and scope: what limited the examination, and what this workbook is not. */
final class CautionsPage {
  private static final List<Integer> WIDTHS = List.of(20, 30, 36, 14, 12, 24, 30);

  private CautionsPage() {}

  static Page of(Report report, String name, Banner banner, Say say) {
    PageBuilder page = new PageBuilder(name, banner);
    page.heading(say.own("scope.heading"));
    for (int line = 1; line <= 4; line++) {
      page.across(say.own("scope." + line), Look.CAUTION);
    }
    if (report.context().evaluation().state() == Evaluation.State.DRAFT) {
      page.across(say.own("scope.draft"), Look.CAUTION);
    }
    precautions(page, report, say);
    withheld(page, report, say);
    overridden(page, report, say);
    cautions(page, report, say);
    return page.build();
  }

  private static void precautions(PageBuilder page, Report report, Say say) {
    page.heading(say.own("precautions.heading"));
    if (report.inForce().isEmpty()) {
      page.across(say.own("precautions.none-recorded"), Look.TEXT);
      return;
    }
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (Precaution precaution : report.inForce()) {
      rows.add(
          List.of(
              Box.words(say.texts().word(precaution.kind()), Look.ROW_HEAD),
              Box.words(Banner.place(precaution, say), Look.ROW_HEAD),
              Box.words(say.orUnknown(precaution.note()), Look.TEXT),
              Box.words(say.dateOrUnknown(precaution.from()), Look.TEXT),
              Box.words(
                  precaution.until().map(say::date).orElseGet(() -> say.own("until-lifted")),
                  Look.TEXT),
              Box.words(say.orUnknown(precaution.setBy()), Look.TEXT)));
    }
    List<String> heads =
        List.of(
            say.own("head.precaution"),
            say.own("head.where"),
            say.own("head.note"),
            say.own("head.from"),
            say.own("head.until"),
            say.own("head.set-by"));
    page.narrowTable(heads, WIDTHS, rows);
  }

  private static void withheld(PageBuilder page, Report report, Say say) {
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (Entry entry : report.context().snapshot().entries()) {
      if (entry.value().orElse(null) instanceof Absence a
          && a.reason() == Absence.Reason.PRECAUTION) {
        ItemKey key = entry.key();
        rows.add(
            List.of(
                Box.words(say.test(key.test()), Look.ROW_HEAD),
                Box.words(say.texts().place(key.side(), key.digit()), Look.ROW_HEAD),
                Box.words(say.item(key), Look.TEXT),
                new Box.Figure(key.trial(), "0", Look.VALUE, Optional.empty()),
                Box.words(a.note().isBlank() ? say.own("nothing") : a.note(), Look.TEXT)));
      }
    }
    page.heading(say.own("withheld.heading"));
    if (rows.isEmpty()) {
      page.across(say.own("withheld.none"), Look.TEXT);
      return;
    }
    List<String> heads =
        List.of(
            say.own("head.test"),
            say.own("head.place"),
            say.own("head.item"),
            say.own("head.trial"),
            say.own("head.note"));
    page.narrowTable(heads, WIDTHS.subList(0, heads.size()), rows);
  }

  /** Only where there is any; the ledger holds those superseded since. */
  private static void overridden(PageBuilder page, Report report, Say say) {
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (Entry entry : report.context().snapshot().entries()) {
      ItemKey key = entry.key();
      if (entry.override().isPresent() && entry.value().isPresent()) {
        rows.add(
            List.of(
                Box.words(say.test(key.test()), Look.ROW_HEAD),
                Box.words(say.texts().place(key.side(), key.digit()), Look.ROW_HEAD),
                Box.words(
                    say.item(key) + ": " + say.texts().value(key, entry.value().get()), Look.TEXT),
                new Box.Figure(key.trial(), "0", Look.VALUE, Optional.empty()),
                Box.words(entry.by().value(), Look.TEXT),
                Box.words(entry.override().get().reason(), Look.TEXT),
                Box.words(Banner.overridden(entry.override().get(), say), Look.TEXT)));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    page.heading(say.own("overridden.heading"));
    List<String> heads =
        List.of(
            say.own("head.test"),
            say.own("head.place"),
            say.own("head.value"),
            say.own("head.trial"),
            say.own("head.who"),
            say.own("head.override"),
            say.own("head.overrode"));
    page.narrowTable(heads, WIDTHS.subList(0, heads.size()), rows);
  }

  private static void cautions(PageBuilder page, Report report, Say say) {
    page.heading(say.own("cautions.heading"));
    if (report.cautions().isEmpty()) {
      page.across(say.own("cautions.none"), Look.TEXT);
      return;
    }
    // One caution often belongs to many steps: it is written once, with all of them.
    LinkedHashMap<List<String>, List<Report.Caution>> once = new LinkedHashMap<>();
    for (Report.Caution caution : report.cautions()) {
      once.computeIfAbsent(List.of(caution.test(), caution.text()), k -> new ArrayList<>())
          .add(caution);
    }
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (List<Report.Caution> same : once.values()) {
      Report.Caution first = same.get(0);
      String steps =
          same.stream().map(c -> say.orAll(c.step())).distinct().collect(Collectors.joining("; "));
      rows.add(
          List.of(
              Box.words(first.test(), Look.ROW_HEAD),
              Box.words(steps, Look.ROW_HEAD),
              Box.words(first.text(), Look.TEXT),
              Box.words(say.texts().word(first.source().status()), Look.TEXT)));
    }
    List<String> heads =
        List.of(
            say.own("head.test"),
            say.own("head.step"),
            say.own("head.caution"),
            say.own("head.status"));
    page.narrowTable(heads, WIDTHS.subList(0, heads.size()), rows);
  }
}
