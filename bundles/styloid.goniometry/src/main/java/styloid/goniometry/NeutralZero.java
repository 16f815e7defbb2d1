package styloid.goniometry;

import java.math.BigDecimal;

/**
 * The neutral-zero form of an arc: plane, then three numbers. Zero stands between the two ends when
 * the joint passes neutral, and at the side it does not reach when it stops short: {@code S
 * 10-0-140} goes 10 degrees past neutral, {@code S 0-20-140} lacks 20 degrees to it.
 *
 * @param first the end away (extension, abduction, outward rotation), past neutral positive
 * @param last the other end, past neutral positive; {@code first + last} is not negative
 */
record NeutralZero(String letter, BigDecimal first, BigDecimal last) {
  private static final String DASH = "\u2013";

  /** How the arc lies to neutral: {@code both}, {@code short-first} or {@code short-last}. */
  String passes() {
    return first.signum() < 0 ? "short-first" : last.signum() < 0 ? "short-last" : "both";
  }

  String written() {
    if (first.signum() < 0) {
      return three("0", plain(first.negate()), plain(last));
    } else if (last.signum() < 0) {
      return three(plain(first), plain(last.negate()), "0");
    }
    return three(plain(first), "0", plain(last));
  }

  private String three(String one, String two, String three) {
    return letter + " " + one + DASH + two + DASH + three;
  }

  private static String plain(BigDecimal degrees) {
    return degrees.signum() == 0 ? "0" : degrees.stripTrailingZeros().toPlainString();
  }
}
