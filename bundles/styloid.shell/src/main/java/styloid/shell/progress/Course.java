package styloid.shell.progress;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import styloid.model.Digit;
import styloid.model.ErrorRange;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Unit;

/**
 * One measure over all visits.
 *
 * @param visits oldest first, the open evaluation last
 * @param unit of all its numbers: what was typed last
 * @param errors the error of measuring, for the sides a result states one for
 */
record Course(
    TestId test,
    Item item,
    Digit digit,
    Unit unit,
    List<Visit> visits,
    Map<Side, ErrorRange> errors) {

  /** A value at a visit. */
  record Point(Visit visit, double value) {}

  Course {
    visits = List.copyOf(visits);
    errors = Map.copyOf(errors);
  }

  /** The sides it has, right before left. */
  List<Side> sides() {
    return List.of(Side.values()).stream().filter(item.sides()::contains).toList();
  }

  ItemKey key(Side side) {
    return new ItemKey(test, item.id(), side, digit, 1);
  }

  boolean isOf(ItemKey key) {
    return key.test().equals(test) && key.item().equals(item.id()) && key.digit() == digit;
  }

  /** The values of a side in runs of visits that all have one: a visit without ends a run. */
  List<List<Point>> runs(Side side) {
    ArrayList<List<Point>> runs = new ArrayList<>();
    ArrayList<Point> run = new ArrayList<>();
    for (Visit visit : visits) {
      OptionalDouble value = visit.value(side);
      if (value.isPresent()) {
        run.add(new Point(visit, value.getAsDouble()));
      } else if (!run.isEmpty()) {
        runs.add(List.copyOf(run));
        run.clear();
      }
    }
    if (!run.isEmpty()) {
      runs.add(List.copyOf(run));
    }
    return runs;
  }

  /** All values of a side. */
  List<Point> points(Side side) {
    return runs(side).stream().flatMap(List::stream).toList();
  }

  /** Visits with a value of any side. */
  long measured() {
    return visits.stream()
        .filter(v -> sides().stream().anyMatch(s -> v.value(s).isPresent()))
        .count();
  }

  /** The value a change is judged from: that of the newest visit before the last one. */
  Optional<Point> reference(Side side) {
    List<Point> before =
        points(side).stream().filter(p -> p.visit() != visits.get(visits.size() - 1)).toList();
    return before.isEmpty() ? Optional.empty() : Optional.of(before.get(before.size() - 1));
  }

  /** The error of a side in the unit of the course, low and high. */
  Optional<double[]> error(Side side) {
    return Optional.ofNullable(errors.get(side))
        .map(e -> new double[] {e.low().doubleIn(unit), e.high().doubleIn(unit)});
  }

  /** Every number that must find room on a chart. */
  DoubleStream numbers() {
    return sides().stream()
        .flatMapToDouble(
            side ->
                DoubleStream.concat(
                    points(side).stream().mapToDouble(Point::value),
                    reference(side).stream()
                        .flatMapToDouble(
                            p ->
                                error(side)
                                    .map(e -> DoubleStream.of(p.value() - e[0], p.value() + e[0]))
                                    .orElse(DoubleStream.empty()))));
  }
}
