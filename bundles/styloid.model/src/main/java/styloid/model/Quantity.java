package styloid.model;

import java.math.BigDecimal;
import java.util.Objects;

/**
 * A number with its unit, digits as typed: {@code 38.50} stays {@code 38.50}. Two quantities are
 * equal only when digits and unit are.
 */
public record Quantity(BigDecimal amount, Unit unit) implements Value {
  public Quantity {
    Objects.requireNonNull(amount, "amount");
    Objects.requireNonNull(unit, "unit");
  }

  public static Quantity of(String digits, Unit unit) {
    return new Quantity(new BigDecimal(digits), unit);
  }

  /**
   * A computed number.
   *
   * @throws ArithmeticException when {@code amount} is not finite
   */
  public static Quantity of(double amount, Unit unit) {
    if (!Double.isFinite(amount)) {
      throw new ArithmeticException("not a finite number: " + amount);
    }
    return new Quantity(BigDecimal.valueOf(amount), unit);
  }

  /** The same quantity in another unit of its dimension. */
  public Quantity in(Unit target) {
    return new Quantity(unit.convert(amount, target), target);
  }

  public double doubleIn(Unit target) {
    return unit.convert(amount, target).doubleValue();
  }
}
