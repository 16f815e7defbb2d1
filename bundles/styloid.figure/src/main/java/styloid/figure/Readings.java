package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import styloid.model.Demand;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Sweep;

/** The angles already measured where entry is, to be drawn as arcs. */
final class Readings {
  private Readings() {}

  /** Both ends of the arc of this side and digit, active or passive as the item asked is. */
  static List<Reading> at(Group group, ItemKey key, PatientContext context) {
    ArrayList<Reading> readings = new ArrayList<>();
    Optional<Demand> asked = demand(group, key);
    for (Sweep sweep : group.guide().sweeps()) {
      ItemKey own = new ItemKey(key.test(), sweep.item(), key.side(), key.digit(), 1);
      if (demand(group, own).equals(asked)) {
        degrees(own, context)
            .ifPresent(
                degrees -> readings.add(new Reading(sweep, degrees, missing(sweep, own, context))));
      }
    }
    return readings;
  }

  private static Optional<Demand> demand(Group group, ItemKey key) {
    return group.items().stream()
        .filter(item -> item.id().equals(key.item()))
        .map(Item::demand)
        .findFirst();
  }

  private static Optional<Double> degrees(ItemKey key, PatientContext context) {
    return context
        .snapshot()
        .value(key)
        .filter(Quantity.class::isInstance)
        .map(Quantity.class::cast)
        .filter(quantity -> quantity.unit() == Unit.DEGREE)
        .map(quantity -> quantity.doubleIn(Unit.DEGREE));
  }

  private static OptionalDouble missing(Sweep sweep, ItemKey key, PatientContext context) {
    return sweep
        .shortOf()
        .map(id -> new ResultKey(key.test(), id, key.side(), key.digit()))
        .flatMap(result -> context.results().result(result))
        .flatMap(Result::quantity)
        .map(quantity -> OptionalDouble.of(quantity.doubleIn(Unit.DEGREE)))
        .orElse(OptionalDouble.empty());
  }
}
