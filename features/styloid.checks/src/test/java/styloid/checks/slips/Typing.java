package styloid.checks.slips;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Random;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Quantity;
import styloid.model.Unit;

/**
 * How one therapist measures and writes numbers down at one visit: error of measuring, unit,
 * rounding.
 *
 * @param force unit of the force gauges
 * @param forceStep what force is read to, in that unit
 * @param angleStep what angles are read to, in degrees
 */
record Typing(Unit force, BigDecimal forceStep, BigDecimal angleStep) {
  /** Share by which trials of one set vary; 5 to 10 % is usual (see the grip facts). */
  private static final double TRIAL = 0.06;

  /** Trials that go wrong for no reason the record knows, one in so many, and what they lose. */
  private static final int WEAK_ONE_IN = 40;

  private static final double WEAK_LOSS = 0.25;

  /**
   * Share by which a sound grip moves from visit to visit: Young 1989, 19 to 24 % from end to end.
   */
  private static final double VISIT = 0.06;

  /** Degrees; the customary error of 5 is about 1.3 times this. */
  private static final double ANGLE = 4;

  /** Degrees; the shoulder's published errors are larger (Hayes 2001). */
  private static final double SHOULDER = 7;

  static Typing of(Random random) {
    return switch (random.nextInt(4)) {
      case 0 -> new Typing(Unit.POUND_FORCE, BigDecimal.ONE, angle(random));
      case 1 -> new Typing(Unit.KILOGRAM_FORCE, BigDecimal.ONE, angle(random));
      case 2 -> new Typing(Unit.KILOGRAM_FORCE, new BigDecimal("0.5"), angle(random));
      default -> new Typing(Unit.KILOGRAM_FORCE, new BigDecimal("0.1"), angle(random));
    };
  }

  private static BigDecimal angle(Random random) {
    return switch (random.nextInt(10)) {
      case 0 -> new BigDecimal("0.1");
      case 1, 2, 3, 4 -> BigDecimal.ONE;
      case 5 -> BigDecimal.valueOf(2);
      default -> BigDecimal.valueOf(5);
    };
  }

  /**
   * Standard deviation between people without the error of measuring, which a published one holds
   * too; at least half of it.
   */
  static double between(double published, Item item) {
    double error = dimension(item) == Unit.Dimension.ANGLE ? error(item) : 0;
    return Math.sqrt(Math.max(published * published / 4, published * published - error * error));
  }

  private static double error(Item item) {
    return item.id().value().startsWith("shoulder") ? SHOULDER : ANGLE;
  }

  /** This visit's level of a place, from what is there. */
  static double today(double there, Item item, Random random) {
    boolean force = dimension(item) == Unit.Dimension.FORCE;
    return force ? there * Math.exp(VISIT * random.nextGaussian()) : there;
  }

  /** What the instrument shows, in the item's first unit. */
  static double shown(double today, Item item, Random random) {
    return switch (dimension(item)) {
      case FORCE -> {
        double weak = random.nextInt(WEAK_ONE_IN) == 0 ? 1 - WEAK_LOSS * random.nextDouble() : 1;
        yield today * weak * Math.exp(TRIAL * random.nextGaussian());
      }
      case ANGLE -> today + error(item) * random.nextGaussian();
      default -> Math.max(0, today * (1 + 0.05 * random.nextGaussian()));
    };
  }

  /** The number as it is typed. */
  Quantity typed(double shown, Item item) {
    ItemKind.Number kind = (ItemKind.Number) item.kind();
    Unit unit = unit(item);
    BigDecimal amount = kind.unit().convert(BigDecimal.valueOf(shown), unit);
    BigDecimal step =
        switch (dimension(item)) {
          case FORCE -> small(amount) ? new BigDecimal("0.5").min(forceStep) : forceStep;
          case ANGLE -> angleStep;
          default -> new BigDecimal("0.5");
        };
    BigDecimal steps = amount.divide(step, 0, RoundingMode.HALF_UP);
    BigDecimal rounded = steps.multiply(step).stripTrailingZeros();
    return new Quantity(rounded.scale() < 0 ? rounded.setScale(0) : rounded, unit);
  }

  /** Gauges for pinch are finer than those for grip. */
  private static boolean small(BigDecimal amount) {
    return amount.compareTo(new BigDecimal("12")) < 0;
  }

  Unit unit(Item item) {
    return dimension(item) == Unit.Dimension.FORCE ? force : ((ItemKind.Number) item.kind()).unit();
  }

  static Unit.Dimension dimension(Item item) {
    return ((ItemKind.Number) item.kind()).unit().dimension();
  }

  /** Whether two numbers are no farther apart than two sound readings of one place may be. */
  static boolean within(Quantity one, Quantity two, Item item) {
    ItemKind.Number kind = (ItemKind.Number) item.kind();
    double a = one.doubleIn(kind.unit());
    double b = two.doubleIn(kind.unit());
    if (dimension(item) == Unit.Dimension.ANGLE) {
      return Math.abs(a - b) <= 2 * Math.sqrt(2) * error(item);
    }
    return Math.abs(a - b) <= 2 * Math.sqrt(2) * TRIAL * Math.max(a, b);
  }
}
