package styloid.grip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Unit;
import styloid.spi.ExactFactor;

/**
 * The readings of one item, or of several taken together. Converted exactly; a reading that is
 * missing or absent is never counted as zero and never left out of a figure.
 */
record Trials(List<ItemKey> keys, List<Optional<Quantity>> readings) {
  Trials {
    keys = List.copyOf(keys);
    readings = List.copyOf(readings);
  }

  /** The trials of one side. */
  static Trials of(Snapshot snapshot, ItemId item, Side side, int trials) {
    ArrayList<ItemKey> keys = new ArrayList<>();
    for (int trial = 1; trial <= trials; trial++) {
      keys.add(new ItemKey(Say.GRIP, item, side, Digit.NONE, trial));
    }
    return of(snapshot, keys);
  }

  static Trials of(Snapshot snapshot, Measure measure, Side side) {
    return of(snapshot, measure.item(), side, Measure.TRIALS);
  }

  static Trials of(Snapshot snapshot, List<ItemKey> keys) {
    return new Trials(keys, keys.stream().map(snapshot::quantity).toList());
  }

  /** These readings and those. */
  Trials and(Trials more) {
    ArrayList<ItemKey> allKeys = new ArrayList<>(keys);
    allKeys.addAll(more.keys);
    ArrayList<Optional<Quantity>> all = new ArrayList<>(readings);
    all.addAll(more.readings);
    return new Trials(allKeys, all);
  }

  /** Keys without a number. */
  List<ItemKey> missing() {
    ArrayList<ItemKey> missing = new ArrayList<>();
    for (int i = 0; i < keys.size(); i++) {
      if (readings.get(i).isEmpty()) {
        missing.add(keys.get(i));
      }
    }
    return missing;
  }

  boolean complete() {
    return readings.stream().allMatch(Optional::isPresent);
  }

  /** The readings that are there, as typed. */
  List<Quantity> typed() {
    return readings.stream().flatMap(Optional::stream).toList();
  }

  /** The unit all readings were typed in; empty when they differ. */
  Optional<Unit> sharedUnit() {
    List<Unit> units = typed().stream().map(Quantity::unit).distinct().toList();
    return units.size() == 1 ? Optional.of(units.get(0)) : Optional.empty();
  }

  List<BigDecimal> in(Unit unit) {
    return typed().stream().map(q -> q.in(unit).amount()).toList();
  }

  double[] numbers(Unit unit) {
    return typed().stream().mapToDouble(q -> q.doubleIn(unit)).toArray();
  }

  BigDecimal sum(Unit unit) {
    return in(unit).stream().reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  /**
   * The largest reading.
   *
   * @throws java.util.NoSuchElementException when there is none
   */
  BigDecimal largest(Unit unit) {
    return in(unit).stream().max(BigDecimal::compareTo).orElseThrow();
  }

  /** A spreadsheet function over the entries, each turned into {@code unit}. */
  String call(String function, Unit unit) {
    ArrayList<String> cells = new ArrayList<>();
    for (int i = 0; i < keys.size(); i++) {
      Unit typed = readings.get(i).orElseThrow().unit();
      cells.add(keys.get(i).cellName() + ExactFactor.between(typed, unit));
    }
    return cells.stream().collect(Collectors.joining(",", function + "(", ")"));
  }
}
