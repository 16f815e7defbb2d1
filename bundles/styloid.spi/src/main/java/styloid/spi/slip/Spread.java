package styloid.spi.slip;

import java.util.Set;
import styloid.model.Patient;
import styloid.model.Region;
import styloid.model.Side;

/**
 * How far a sound value may lie from what it is held against: degrees for angles, a share of the
 * value (as a natural logarithm) for all else. Own choice, tried on made-up evaluations; see the
 * page {@code slips} of the rules.
 */
final class Spread {
  /** Angles of the shoulder are measured less surely (Hayes 2001 against Reissner 2019). */
  private static final double SHOULDER = 1.5;

  private final boolean angle;
  private final double degrees;
  private final Set<Side> involved;

  Spread(Scale scale, Patient patient, Region region) {
    this.angle = scale.angle();
    this.degrees = region == Region.SHOULDER ? SHOULDER : 1;
    this.involved = patient.involved();
  }

  private double of(double degreesApart, double share) {
    return angle ? degrees * degreesApart : share;
  }

  /** Between trials of one set. */
  double trials() {
    return of(5, 0.12);
  }

  /** Between this visit and the one before; an involved limb is expected to change. */
  double last(Side side) {
    return involved.contains(side) ? of(12, 0.3) : of(7, 0.16);
  }

  /** Between two items of a group that take the same range, on the same limb. */
  double sibling() {
    return of(12, 0.3);
  }

  /** Between digits of one limb; one of them may be the injured one. */
  double digits(Side side) {
    return involved.contains(side) ? of(25, 0.6) : of(12, 0.4);
  }

  /** Between the limbs; one that alone is involved may be far behind. */
  double limbs() {
    return involved.size() == 1 ? of(28, 0.7) : of(12, 0.27);
  }
}
