package styloid.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.model.Value;

/** All trials of one item at one side and digit. */
record Trials(TestId test, Item item, Side side, Digit digit) {

  ItemKey first() {
    return keys().get(0);
  }

  List<ItemKey> keys() {
    return item.keys(test, side).stream().filter(key -> key.digit() == digit).toList();
  }

  boolean recorded(Snapshot snapshot) {
    return keys().stream().anyMatch(key -> snapshot.entry(key).isPresent());
  }

  /** Unit of the first number recorded. */
  Optional<Unit> unit(Snapshot snapshot) {
    return keys().stream()
        .flatMap(k -> snapshot.quantity(k).stream())
        .findFirst()
        .map(Quantity::unit);
  }

  /** Digits after the point of the first number; one more for a mean. */
  int decimals(Snapshot snapshot) {
    int typed =
        keys().stream()
            .flatMap(k -> snapshot.quantity(k).stream())
            .mapToInt(q -> Math.max(0, q.amount().scale()))
            .max()
            .orElse(0);
    return item.trials() == 1 ? typed : Math.max(1, typed);
  }

  /** The number, or the mean of all trials; empty unless every trial has one. */
  Optional<Double> mean(Snapshot snapshot, Unit unit) {
    double sum = 0;
    for (ItemKey key : keys()) {
      Optional<Quantity> value = snapshot.quantity(key);
      if (value.isEmpty()) {
        return Optional.empty();
      }
      sum += value.get().doubleIn(unit);
    }
    return Optional.of(sum / item.trials());
  }

  /** The same as a formula; empty when a trial was recorded in another unit. */
  Optional<String> formula(Snapshot snapshot, Unit unit) {
    ArrayList<String> names = new ArrayList<>();
    for (ItemKey key : keys()) {
      if (snapshot.quantity(key).filter(q -> q.unit() == unit).isEmpty()) {
        return Optional.empty();
      }
      names.add(key.cellName());
    }
    String list = String.join(",", names);
    return Optional.of(names.size() == 1 ? list : "AVERAGE(" + list + ")");
  }

  /** What stands there instead of a number. */
  Optional<Value> word(Snapshot snapshot) {
    return keys().stream()
        .flatMap(key -> snapshot.value(key).stream())
        .filter(value -> !(value instanceof Quantity))
        .findFirst();
  }
}
