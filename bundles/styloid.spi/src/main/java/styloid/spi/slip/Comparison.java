package styloid.spi.slip;

import styloid.model.Quantity;

/**
 * A value a new one is held against.
 *
 * @param place where it stands, see {@link Scale#place}
 * @param spread how far sound values lie from it, on the same scale
 * @param about the value as shown
 * @param count how many values it stands for
 */
record Comparison(Kind kind, double place, double spread, Quantity about, int count) {
  /** Degrees of freedom: tails heavy enough that one odd comparison does not decide alone. */
  private static final double FREEDOM = 4;

  /** Where it comes from. */
  enum Kind {
    /** The other trials of the set. */
    TRIALS,
    /** The same place at the newest earlier visit that has one. */
    LAST,
    /** Another item of the group that takes the very same range, such as the passive reading. */
    SIBLING,
    /** The other digits of the same limb, now. */
    DIGITS,
    /** The other limb, now. */
    OTHER_NOW,
    /** The other limb at the newest earlier visit that has one. */
    OTHER_LAST
  }

  /** How well a value fits, as a natural logarithm of Student's density less its constant. */
  double fit(double at) {
    double far = (at - place) / spread;
    return -(FREEDOM + 1) / 2 * Math.log1p(far * far / FREEDOM) - Math.log(spread);
  }
}
