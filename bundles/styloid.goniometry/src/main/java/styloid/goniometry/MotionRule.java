package styloid.goniometry;

import java.util.Set;
import styloid.model.Digit;

/** A calculation on one motion of a plane. */
abstract class MotionRule implements Rule {
  private final Plane plane;
  private final Motion motion;

  MotionRule(Plane plane, Motion motion) {
    this.plane = plane;
    this.motion = motion;
  }

  Motion motion() {
    return motion;
  }

  @Override
  public Set<Digit> digits() {
    return motion.digits();
  }

  @Override
  public String group() {
    return plane.id();
  }
}
