package styloid.workbook;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.PatientContext;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.Report;
import styloid.spi.TestDefinition;

/**
 * Change since earlier visits: each item recorded now and before, the visits from left to right.
 * Says how far a value moved, not whether that matters; that is for results and findings.
 */
final class ChangePage {
  private static final int MOST_VISITS = 5;

  private ChangePage() {}

  /** Whether there is an earlier visit to compare with. */
  static boolean applies(Report report) {
    return !report.context().past().isEmpty();
  }

  static Page of(Report report, String name, Banner banner, Say say) {
    PageBuilder page = new PageBuilder(name, banner).freezeFirstColumn();
    page.across(say.own("change.lead"), Look.LEGEND);
    List<PatientContext.Past> visits = visits(report);
    boolean any = false;
    for (TestDefinition test : report.definitions()) {
      List<List<Box>> rows = rows(report, test, visits, say);
      if (!rows.isEmpty()) {
        page.heading(say.test(test.id()));
        page.narrowTable(heads(report, visits, say), widths(visits.size()), rows);
        any = true;
      }
    }
    if (!any) {
      page.across(say.own("change.none"), Look.TEXT);
    }
    return page.build();
  }

  /** Oldest first; only the latest few. */
  private static List<PatientContext.Past> visits(Report report) {
    List<PatientContext.Past> past = report.context().past();
    ArrayList<PatientContext.Past> visits = new ArrayList<>();
    for (int i = Math.min(past.size(), MOST_VISITS) - 1; i >= 0; i--) {
      visits.add(past.get(i));
    }
    return visits;
  }

  private static List<String> heads(Report report, List<PatientContext.Past> visits, Say say) {
    ArrayList<String> heads = new ArrayList<>(List.of(say.own("head.item"), say.own("head.side")));
    visits.forEach(visit -> heads.add(say.date(visit.evaluation().date())));
    heads.add(say.own("head.now", say.date(report.context().evaluation().date())));
    heads.add(say.own("head.change", say.date(visits.get(visits.size() - 1).evaluation().date())));
    return heads;
  }

  private static List<Integer> widths(int visits) {
    ArrayList<Integer> widths = new ArrayList<>(List.of(44, 8));
    for (int i = 0; i < visits + 2; i++) {
      widths.add(12);
    }
    return widths;
  }

  private static List<List<Box>> rows(
      Report report, TestDefinition test, List<PatientContext.Past> visits, Say say) {
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (Item item : test.items()) {
      for (Digit digit : EnumSet.copyOf(item.digits())) {
        for (Side side : EnumSet.copyOf(item.sides())) {
          Trials trials = new Trials(test.id(), item, side, digit);
          boolean now = trials.recorded(report.context().snapshot());
          boolean same = sameWords(report.context().snapshot(), trials, visits);
          if (now
              && !same
              && visits.stream().anyMatch(visit -> trials.recorded(visit.snapshot()))) {
            rows.add(row(report.context().snapshot(), trials, visits, say));
          }
        }
      }
    }
    return rows;
  }

  /** Whether one answer stands at every visit that has any; such a row says nothing of change. */
  private static boolean sameWords(Snapshot now, Trials trials, List<PatientContext.Past> visits) {
    Optional<Value> word = trials.word(now);
    return word.isPresent()
        && trials.unit(now).isEmpty()
        && visits.stream()
            .filter(visit -> trials.recorded(visit.snapshot()))
            .allMatch(
                visit ->
                    trials.unit(visit.snapshot()).isEmpty()
                        && word.equals(trials.word(visit.snapshot())));
  }

  private static List<Box> row(
      Snapshot now, Trials trials, List<PatientContext.Past> visits, Say say) {
    Unit unit =
        trials
            .unit(now)
            .or(() -> visits.stream().flatMap(v -> trials.unit(v.snapshot()).stream()).findFirst())
            .orElse(Unit.NUMBER);
    String format = Formats.of(unit, trials.decimals(now));
    String item = say.itemOfDigit(say.item(trials.first()), trials.digit());
    int count = trials.item().trials();
    ArrayList<Box> row = new ArrayList<>();
    row.add(Box.words(count == 1 ? item : say.own("change.mean", item, count), Look.ROW_HEAD));
    row.add(Box.words(say.side(trials.side()), Look.ROW_HEAD));
    for (PatientContext.Past visit : visits) {
      row.add(before(visit.snapshot(), trials, unit, format, say));
    }
    row.add(current(now, trials, unit, format, say));
    Snapshot last = visits.get(visits.size() - 1).snapshot();
    row.add(change(now, last, trials, unit, format, say));
    return row;
  }

  private static Box before(Snapshot past, Trials trials, Unit unit, String format, Say say) {
    return trials
        .mean(past, unit)
        .<Box>map(mean -> new Box.Figure(mean, format, Look.VALUE, Optional.empty()))
        .orElseGet(() -> word(past, trials, say));
  }

  private static Box current(Snapshot now, Trials trials, Unit unit, String format, Say say) {
    Optional<Double> mean = trials.mean(now, unit);
    Optional<String> formula = trials.formula(now, unit);
    if (mean.isPresent() && formula.isPresent()) {
      return new Box.Live(formula.get(), mean.get(), format, Optional.empty());
    }
    return before(now, trials, unit, format, say);
  }

  private static Box change(
      Snapshot now, Snapshot last, Trials trials, Unit unit, String format, Say say) {
    Optional<Double> mean = trials.mean(now, unit);
    Optional<Double> before = trials.mean(last, unit);
    if (mean.isPresent() && before.isPresent()) {
      double change = mean.get() - before.get();
      String signed = "+" + format + ";-" + format + ";" + format;
      return trials
          .formula(now, unit)
          .<Box>map(
              f -> new Box.Live(f + "-(" + before.get() + ")", change, signed, Optional.empty()))
          .orElseGet(() -> new Box.Figure(change, signed, Look.CALCULATED, Optional.empty()));
    }
    Optional<Value> word = trials.word(now);
    if (word.orElse(null) instanceof Choice && trials.word(last).orElse(null) instanceof Choice) {
      boolean same = word.equals(trials.word(last));
      return Box.words(say.own(same ? "change.same" : "change.changed"), Look.CALCULATED);
    }
    return Box.words(say.own("change.cannot"), Look.CALCULATED);
  }

  private static Box word(Snapshot snapshot, Trials trials, Say say) {
    String text =
        trials
            .word(snapshot)
            .map(value -> say.texts().value(trials.first(), value))
            .orElseGet(() -> say.own(trials.recorded(snapshot) ? "change.incomplete" : "nothing"));
    return Box.words(text, Look.VALUE);
  }
}
