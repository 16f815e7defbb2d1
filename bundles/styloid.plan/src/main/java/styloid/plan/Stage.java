package styloid.plan;

import styloid.model.Codes;

/** The parts of an evaluation in the order they are done (common practice, no source). */
public enum Stage {
  /** Looking over active motion. */
  SCREEN,
  /** Measuring, with no more load than the limb itself. */
  GONIOMETRY,
  /** Whatever loads the limb: resistance by hand, grip, pinch. */
  RESISTANCE;

  public String code() {
    return Codes.of(this);
  }
}
