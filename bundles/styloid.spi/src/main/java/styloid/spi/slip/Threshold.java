package styloid.spi.slip;

/**
 * How much better the value meant must fit before a question is asked, as a natural logarithm. Own
 * choice: see the page {@code slips} of the rules for how it was measured.
 */
final class Threshold {
  /** What more digits after the point than usual add to a suspicion of unit or point. */
  static final double FINER = 3;

  private Threshold() {}

  static double of(Slip slip) {
    return switch (slip) {
      case UNIT, POINT -> 2.3;
      case SWAP -> 2.4;
      case SIDE -> 2.7;
    };
  }
}
