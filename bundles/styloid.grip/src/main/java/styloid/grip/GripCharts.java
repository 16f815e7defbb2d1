package styloid.grip;

import static styloid.spi.SheetBuilder.column;
import static styloid.spi.SheetBuilder.common;
import static styloid.spi.SheetBuilder.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Absence;
import styloid.model.Entry;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Unit;
import styloid.model.norm.NormQuery;
import styloid.model.norm.NormRow;
import styloid.model.norm.NormTable;
import styloid.model.norm.Statistics;
import styloid.spi.ExactFactor;
import styloid.spi.Sheet;
import styloid.spi.Sheet.Trace;
import styloid.spi.SheetBuilder;

/** Pictures of grip: every trial beside the norm, pinch beside the norm, positions, visits. */
final class GripCharts {
  private static final int NAME = 26;
  private static final int WIDTH = 10;
  private static final List<Side> HANDS = List.of(Side.RIGHT, Side.LEFT);
  private static final List<Trace> BAND = List.of(Trace.LIMIT, Trace.MIDDLE, Trace.LIMIT);

  private final SheetBuilder sheet;
  private final PatientContext context;
  private final NormChoice choice;

  GripCharts(SheetBuilder sheet, NormChoice choice) {
    this.sheet = sheet;
    this.context = sheet.context();
    this.choice = choice;
  }

  void add() {
    trials();
    pinches();
    positions();
    visits();
  }

  private void trials() {
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    Unit unit = unit(Trials.of(context.snapshot(), Measure.POWER, Side.RIGHT));
    for (Side side : HANDS) {
      for (int trial = 1; trial <= Measure.TRIALS; trial++) {
        ItemKey key = GripSheets.key(Measure.POWER.item(), side, trial);
        ArrayList<Sheet.Cell> row = new ArrayList<>();
        row.add(words(common("head.side-trial." + side.code(), trial)));
        row.add(reading(context.snapshot(), key, unit));
        row.addAll(band(Measure.POWER, side, unit));
        rows.add(row);
      }
    }
    chart("chart.trials", List.of(Say.step("sheet.reading")), rows, unit, Trace.BARS);
  }

  private void pinches() {
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Measure measure : List.of(Measure.TIP, Measure.KEY, Measure.PALMAR)) {
      for (Side side : HANDS) {
        Trials trials = Trials.of(context.snapshot(), measure, side);
        if (trials.complete()) {
          ArrayList<Sheet.Cell> row = new ArrayList<>();
          row.add(words(Say.step("sheet.of-hand", GripSheets.name(measure), side)));
          row.add(mean(trials, TrialResults.UNIT, true));
          row.addAll(band(measure, side, TrialResults.UNIT));
          rows.add(row);
        }
      }
    }
    chart("chart.pinch", List.of(Say.step("sheet.mean")), rows, TrialResults.UNIT, Trace.BARS);
  }

  /** A picture with a band of the norm, where the norm has one. */
  private void chart(
      String heading, List<Message> what, List<List<Sheet.Cell>> rows, Unit unit, Trace trace) {
    boolean banded = rows.stream().anyMatch(row -> row.get(2) instanceof Sheet.Derived);
    ArrayList<Sheet.Column> columns = new ArrayList<>(List.of(column("head.item", NAME)));
    what.forEach(head -> columns.add(new Sheet.Column(head, WIDTH)));
    ArrayList<Trace> traces = new ArrayList<>(List.of(trace));
    if (banded) {
      for (String head : List.of("norm-low", "norm-mean", "norm-high")) {
        columns.add(new Sheet.Column(Say.step("sheet." + head), WIDTH));
      }
      traces.addAll(BAND);
    }
    List<List<Sheet.Cell>> cells =
        rows.stream().map(row -> row.subList(0, columns.size())).toList();
    sheet.chart(
        new Sheet.Chart(
            new Sheet.Table(Say.step(banded ? heading : heading + "-alone"), columns, cells),
            unit,
            traces));
  }

  private void positions() {
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    Unit unit = unit(Trials.of(context.snapshot(), positionKeys(Side.RIGHT)));
    for (int position = 1; position <= Curves.POSITIONS; position++) {
      ArrayList<Sheet.Cell> row = new ArrayList<>();
      row.add(words(Say.step("sheet.position", position)));
      for (Side side : HANDS) {
        ItemKey key = GripSheets.key(Curves.position(position), side, 1);
        row.add(reading(context.snapshot(), key, unit));
      }
      rows.add(row);
    }
    lines("chart.positions", "head.item", rows, unit);
  }

  private static List<ItemKey> positionKeys(Side side) {
    ArrayList<ItemKey> keys = new ArrayList<>();
    for (int position = 1; position <= Curves.POSITIONS; position++) {
      keys.add(GripSheets.key(Curves.position(position), side, 1));
    }
    return keys;
  }

  private void visits() {
    if (context.past().isEmpty()) {
      return;
    }
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (int i = context.past().size() - 1; i >= 0; i--) {
      PatientContext.Past visit = context.past().get(i);
      rows.add(visit(visit.evaluation().date().toString(), visit.snapshot(), false));
    }
    rows.add(visit(context.evaluation().date().toString(), context.snapshot(), true));
    lines("chart.visits", "head.visit", rows, TrialResults.UNIT);
  }

  private static List<Sheet.Cell> visit(String date, Snapshot snapshot, boolean live) {
    ArrayList<Sheet.Cell> row = new ArrayList<>(List.of(words(Message.verbatim(date))));
    for (Side side : HANDS) {
      Trials trials = Trials.of(snapshot, Measure.POWER, side);
      row.add(trials.complete() ? mean(trials, TrialResults.UNIT, live) : gap(snapshot, trials));
    }
    return row;
  }

  private void lines(String heading, String first, List<List<Sheet.Cell>> rows, Unit unit) {
    List<Sheet.Column> columns =
        List.of(
            column(first, NAME), column("head.side.right", WIDTH), column("head.side.left", WIDTH));
    sheet.chart(
        new Sheet.Chart(
            new Sheet.Table(Say.step(heading), columns, rows),
            unit,
            List.of(Trace.LINE, Trace.LINE)));
  }

  private static Unit unit(Trials trials) {
    return trials.sharedUnit().orElse(TrialResults.UNIT);
  }

  /** The reading in the unit of the picture, live over its entry. */
  private static Sheet.Cell reading(Snapshot snapshot, ItemKey key, Unit unit) {
    Optional<Quantity> typed = snapshot.quantity(key);
    if (typed.isEmpty()) {
      return gap(snapshot, Trials.of(snapshot, List.of(key)));
    }
    String formula = key.cellName() + ExactFactor.between(typed.get().unit(), unit);
    return number(typed.get().in(unit).amount(), unit, Optional.of(formula));
  }

  private static Sheet.Cell mean(Trials trials, Unit unit, boolean live) {
    double mean = Statistics.mean(trials.numbers(unit));
    Optional<String> formula =
        live ? Optional.of(trials.call("AVERAGE", unit)) : Optional.<String>empty();
    return number(BigDecimal.valueOf(mean), unit, formula);
  }

  private static Sheet.Cell number(BigDecimal amount, Unit unit, Optional<String> formula) {
    return new Sheet.Derived(amount, unit, 1, formula, Optional.empty());
  }

  /** The word of the first absence, for a place without a number. */
  private static Sheet.Cell gap(Snapshot snapshot, Trials trials) {
    return trials.missing().stream()
        .flatMap(key -> snapshot.entry(key).flatMap(Entry::value).stream())
        .filter(Absence.class::isInstance)
        .map(Absence.class::cast)
        .findFirst()
        .<Sheet.Cell>map(absence -> words(common("absent", absence.reason())))
        .orElseGet(Sheet.Blank::new);
  }

  /** One SD below the norm's mean, the mean, one SD above; blank where there is no norm. */
  private List<Sheet.Cell> band(Measure measure, Side side, Unit unit) {
    Optional<NormTable> table =
        choice
            .table(NormChoice.name(context.evaluation(), measure), measure)
            .filter(t -> !NormChoice.bestOfBoth(t) && !NormChoice.centilesOnly(t));
    Optional<NormRow> row =
        table.flatMap(
            t ->
                t.find(NormQuery.of(context, side, measure.tableKeys()))
                    .match(Optional::of, missing -> Optional.<NormRow>empty()));
    if (row.isEmpty() || row.get().mean().isEmpty() || row.get().sd().isEmpty()) {
      return List.of(new Sheet.Blank(), new Sheet.Blank(), new Sheet.Blank());
    }
    BigDecimal mean = row.get().mean().get();
    BigDecimal sd = row.get().sd().get();
    ArrayList<Sheet.Cell> cells = new ArrayList<>();
    for (BigDecimal at : List.of(mean.subtract(sd), mean, mean.add(sd))) {
      BigDecimal amount = table.orElseThrow().unit().convert(at, unit);
      cells.add(number(amount, unit, Optional.empty()));
    }
    return cells;
  }
}
