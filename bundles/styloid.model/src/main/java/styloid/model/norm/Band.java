package styloid.model.norm;

import java.util.Objects;
import java.util.Optional;

/**
 * A run of whole numbers, both ends included: completed years of age, or body height in whole
 * centimetres.
 *
 * @param max last number of the band; empty means no upper limit
 */
public record Band(int min, Optional<Integer> max) {
  /** Every number from zero on: the band of a row that does not ask. */
  public static final Band ALL = new Band(0, Optional.empty());

  public Band {
    Objects.requireNonNull(max, "max");
    if (min < 0 || max.isPresent() && max.get() < min) {
      throw new IllegalArgumentException("a band runs upward from zero or more");
    }
  }

  public boolean holds(int number) {
    return number >= min && max.map(m -> number <= m).orElse(true);
  }

  /** Whether the two share a number. */
  public boolean overlaps(Band other) {
    return max.map(m -> other.min <= m).orElse(true) && other.max.map(m -> min <= m).orElse(true);
  }

  /** Whether {@code next} begins right after this band ends. */
  public boolean meets(Band next) {
    return max.isPresent() && next.min == max.get() + 1;
  }

  /** {@code 20-24}, or {@code 75+} without an upper limit. */
  @Override
  public String toString() {
    return max.map(m -> min == m ? "" + min : min + "-" + m).orElse(min + "+");
  }
}
