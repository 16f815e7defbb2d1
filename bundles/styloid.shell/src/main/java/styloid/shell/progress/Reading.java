package styloid.shell.progress;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import styloid.model.Absence;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.Unit;

/**
 * One measure of one side at one visit: the mean of all its trials, or why there is none. What is
 * missing is never zero.
 */
record Reading(OptionalDouble value, State state, Optional<Absence.Reason> reason) {

  /** How it stands. */
  enum State {
    MEASURED,
    /** Some trials are there, not all. */
    INCOMPLETE,
    /** An absence was recorded. */
    ABSENT,
    /** Nothing was recorded. */
    NOTHING
  }

  static Reading of(Snapshot snapshot, TestId test, Item item, Side side, Digit digit, Unit unit) {
    List<ItemKey> keys =
        item.keys(test, side).stream().filter(key -> key.digit() == digit).toList();
    List<Quantity> values = keys.stream().flatMap(k -> snapshot.quantity(k).stream()).toList();
    Optional<Absence.Reason> reason =
        keys.stream().flatMap(k -> snapshot.absence(k).stream()).map(Absence::reason).findFirst();
    if (values.size() == keys.size()) {
      return new Reading(
          values.stream().mapToDouble(q -> q.doubleIn(unit)).average(),
          State.MEASURED,
          Optional.empty());
    }
    State state =
        !values.isEmpty() ? State.INCOMPLETE : reason.isPresent() ? State.ABSENT : State.NOTHING;
    return new Reading(OptionalDouble.empty(), state, reason);
  }
}
