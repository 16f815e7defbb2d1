package styloid.spi;

import java.util.Objects;
import styloid.model.Codes;

/** How the patient is placed for a step. Changing any part costs time at the table. */
public record Position(Body body, Support support, Rotation rotation) {
  /** The patient's body. */
  public enum Body {
    SITTING,
    SUPINE,
    PRONE,
    SIDE_LYING,
    STANDING;

    public String code() {
      return Codes.of(this);
    }
  }

  /** What carries the limb. */
  public enum Support {
    /** Arm by the side or held by the patient. */
    FREE,
    /** Upper arm by the side, elbow bent a right angle. */
    ELBOW_BENT,
    /** Forearm on the table, hand free over its edge. */
    FOREARM_ON_TABLE,
    /** Hand and forearm on the table. */
    HAND_ON_TABLE,
    /** Upper arm on the table, forearm free. */
    UPPER_ARM_ON_TABLE,
    /** Held by the therapist. */
    HELD;

    public String code() {
      return Codes.of(this);
    }
  }

  /** Forearm rotation. */
  public enum Rotation {
    PALM_UP,
    PALM_DOWN,
    MID,
    ANY;

    public String code() {
      return Codes.of(this);
    }
  }

  public Position {
    Objects.requireNonNull(body, "body");
    Objects.requireNonNull(support, "support");
    Objects.requireNonNull(rotation, "rotation");
  }
}
