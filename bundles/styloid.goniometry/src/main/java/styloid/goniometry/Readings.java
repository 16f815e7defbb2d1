package styloid.goniometry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Unit;

/** What was recorded in one evaluation, in degrees. */
record Readings(PatientContext context, Settings settings) {
  static Readings of(PatientContext context) {
    return new Readings(context, Settings.of(context.evaluation().choices()));
  }

  /** The angle recorded; empty when nothing or an absence stands there. */
  Optional<BigDecimal> degrees(ItemKey key) {
    return context.snapshot().quantity(key).map(q -> degrees(q));
  }

  static BigDecimal degrees(Quantity quantity) {
    return Unit.DEGREE.convert(quantity.amount(), quantity.unit());
  }

  /** Whether anything stands there, an absence included. */
  boolean entered(ItemKey key) {
    return context.snapshot().entry(key).isPresent();
  }

  boolean anyEntered(List<ItemKey> keys) {
    return keys.stream().anyMatch(this::entered);
  }

  /** Those without a value. */
  List<ItemKey> missing(List<ItemKey> keys) {
    return keys.stream().filter(key -> context.snapshot().quantity(key).isEmpty()).toList();
  }

  /** Whether the limb may serve as the patient's own normal: nothing says it is under treatment. */
  boolean uninvolved(Side side) {
    return !context.patient().involved().contains(side);
  }
}
