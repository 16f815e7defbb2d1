package styloid.spi;

import java.util.Objects;
import styloid.model.Codes;

/**
 * A point or arrow drawn on the posed limb.
 *
 * @param along where on the segment: 0 its proximal end, 1 its distal end
 * @param aspect the face of the limb the mark lies on; an arrow of resistance pushes from here
 */
public record Mark(Kind kind, Segment segment, double along, Aspect aspect) {
  /** What the mark means. */
  public enum Kind {
    SUPPORT,
    RESIST,
    PALPATE,
    AXIS,
    STATIONARY_ARM,
    MOVING_ARM;

    public String code() {
      return Codes.of(this);
    }
  }

  /** Parts of the limb, proximal to distal. */
  public enum Segment {
    TRUNK,
    SHOULDER_BLADE,
    UPPER_ARM,
    FOREARM,
    HAND,
    PROXIMAL_PHALANX,
    MIDDLE_PHALANX,
    DISTAL_PHALANX,
    THUMB_METACARPAL,
    THUMB_PROXIMAL_PHALANX,
    THUMB_DISTAL_PHALANX;

    public String code() {
      return Codes.of(this);
    }
  }

  /** Faces of the limb in the anatomical position. */
  public enum Aspect {
    VOLAR,
    DORSAL,
    RADIAL,
    ULNAR,
    END;

    public String code() {
      return Codes.of(this);
    }
  }

  public Mark {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(segment, "segment");
    Objects.requireNonNull(aspect, "aspect");
    if (!(along >= 0 && along <= 1)) {
      throw new IllegalArgumentException("along must be 0 to 1: " + along);
    }
  }
}
