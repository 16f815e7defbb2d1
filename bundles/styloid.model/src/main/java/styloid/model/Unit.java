package styloid.model;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * The units a value may carry. Each has its UCUM code, the sign shown to people, its dimension and
 * the exact factor to the first unit of that dimension. 1 lb = 0.45359237 kg (international pound,
 * exact) and 1 kgf = 9.80665 N (standard gravity, exact).
 */
public enum Unit {
  DEGREE("deg", "°", Dimension.ANGLE, "1"),
  NEWTON("N", "N", Dimension.FORCE, "1"),
  KILOGRAM_FORCE("kgf", "kg", Dimension.FORCE, "9.80665"),
  POUND_FORCE("[lbf_av]", "lb", Dimension.FORCE, "4.4482216152605"),
  GRAM_FORCE("gf", "g", Dimension.FORCE, "0.00980665"),
  MILLIMETRE("mm", "mm", Dimension.LENGTH, "1"),
  CENTIMETRE("cm", "cm", Dimension.LENGTH, "10"),
  MILLILITRE("mL", "mL", Dimension.VOLUME, "1"),
  SECOND("s", "s", Dimension.TIME, "1"),
  PERCENT("%", "%", Dimension.SHARE, "1"),
  /** A number of things or a step on a scale. */
  COUNT("{count}", "", Dimension.COUNT, "1"),
  /** A pure number, such as a z score. */
  NUMBER("1", "", Dimension.NUMBER, "1");

  /** What a unit measures; only units of one dimension convert. */
  public enum Dimension {
    ANGLE,
    FORCE,
    LENGTH,
    VOLUME,
    TIME,
    SHARE,
    COUNT,
    NUMBER
  }

  private final String ucum;
  private final String sign;
  private final Dimension dimension;
  private final BigDecimal factor;

  Unit(String ucum, String sign, Dimension dimension, String factor) {
    this.ucum = ucum;
    this.sign = sign;
    this.dimension = dimension;
    this.factor = new BigDecimal(factor);
  }

  /** Code of the Unified Code for Units of Measure; the spelling of files. */
  public String ucum() {
    return ucum;
  }

  /** Short sign for people; empty for counts and pure numbers. */
  public String sign() {
    return sign;
  }

  public Dimension dimension() {
    return dimension;
  }

  /** Exact multiple of the first unit of the dimension (N, mm and so on). */
  public BigDecimal factor() {
    return factor;
  }

  /**
   * Converts an amount of this unit.
   *
   * @return the amount in {@code target}, exact where the decimal ends, else to 34 digits
   * @throws IllegalArgumentException when the two measure different things
   */
  public BigDecimal convert(BigDecimal amount, Unit target) {
    if (dimension != target.dimension) {
      throw new IllegalArgumentException(this + " does not convert to " + target);
    }
    if (this == target) {
      return amount;
    }
    return amount.multiply(factor).divide(target.factor, MathContext.DECIMAL128);
  }

  /**
   * The unit with this UCUM code.
   *
   * @throws IllegalArgumentException when there is none
   */
  public static Unit ofUcum(String code) {
    for (Unit unit : values()) {
      if (unit.ucum.equals(code)) {
        return unit;
      }
    }
    throw new IllegalArgumentException("\"" + code + "\" is not a unit known here");
  }
}
