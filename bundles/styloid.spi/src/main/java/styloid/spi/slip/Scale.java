package styloid.spi.slip;

import styloid.model.ItemKind;
import styloid.model.Unit;

/**
 * How far apart two values of an item are. Angles differ by degrees; all else differs by its ratio,
 * with a small addition so that zero has a place too.
 */
record Scale(boolean angle, double addition) {
  /** Share of the likely maximum under which a ratio says little. */
  private static final double SMALL = 0.01;

  static Scale of(ItemKind.Number kind) {
    boolean angle = kind.unit().dimension() == Unit.Dimension.ANGLE;
    double largest =
        Math.max(Math.abs(kind.likelyMax().doubleValue()), Math.abs(kind.max().doubleValue()) / 2);
    return new Scale(angle, Math.max(SMALL * largest, 1e-9));
  }

  /** Whether a comparison with this amount says anything; nothing is a multiple of zero. */
  boolean tells(double amount) {
    return angle || amount > addition;
  }

  /** Place of an amount of the item's first unit: degrees, or a natural logarithm. */
  double place(double amount) {
    return angle ? amount : Math.log(Math.max(amount, 0) + addition);
  }
}
