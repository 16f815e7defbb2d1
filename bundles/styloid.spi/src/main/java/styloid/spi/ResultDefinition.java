package styloid.spi;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.model.Unit;

/**
 * A result a test gives; its words stand in the labels under {@code result.<id>}.
 *
 * @param unit unit of a number; empty when the result is a choice or text
 * @param decimals digits after the point shown to people; the value itself is not rounded
 * @param group id of the group it is shown beside; empty when it belongs to the test as a whole
 * @param notable codes of a choice that are out of the ordinary; empty where none is or the result
 *     is no choice
 */
public record ResultDefinition(
    ResultId id,
    Optional<Unit> unit,
    int decimals,
    Set<Side> sides,
    Set<Digit> digits,
    Optional<String> group,
    Set<String> notable) {
  /** A result no value of which is called out of the ordinary. */
  public ResultDefinition(
      ResultId id,
      Optional<Unit> unit,
      int decimals,
      Set<Side> sides,
      Set<Digit> digits,
      Optional<String> group) {
    this(id, unit, decimals, sides, digits, group, Set.of());
  }

  public ResultDefinition {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(unit, "unit");
    sides = Set.copyOf(sides);
    digits = Set.copyOf(digits);
    Objects.requireNonNull(group, "group");
    notable = Set.copyOf(notable);
    if (sides.isEmpty() || digits.isEmpty() || decimals < 0 || decimals > 6) {
      throw new IllegalArgumentException(id + ": sides, digits and 0 to 6 decimals are needed");
    }
  }

  /** The same, with the codes that are out of the ordinary. */
  public ResultDefinition notableAt(Set<String> codes) {
    return new ResultDefinition(id, unit, decimals, sides, digits, group, codes);
  }
}
