package styloid.model;

import java.util.Objects;

/**
 * How far two readings of one place may lie apart though nothing has changed, as a result states it
 * for an item of its test, side and digit. Published errors often run from a low to a high value;
 * where there is only one, both are the same. Sizes are above zero and in units of the item's
 * dimension.
 *
 * @param low the least error stated; a smaller change is no change
 * @param high the greatest; from it on a change is beyond error
 */
public record ErrorRange(ItemId item, Quantity low, Quantity high) {
  public ErrorRange {
    Objects.requireNonNull(item, "item");
    if (low.amount().signum() <= 0 || low.doubleIn(high.unit()) > high.amount().doubleValue()) {
      throw new IllegalArgumentException(item + ": errors must be 0 < low <= high");
    }
  }
}
