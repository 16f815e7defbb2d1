package styloid.spi;

import java.util.Objects;
import java.util.Set;
import styloid.model.Codes;
import styloid.model.Digit;

/**
 * A point or arrow drawn on the posed limb.
 *
 * @param along where on the segment: 0 its proximal end, 1 its distal end
 * @param aspect the face of the limb the mark lies on; an arrow of resistance pushes from here. Of
 *     a goniometer's arm: end for along the segment, another face for square to the segment, toward
 *     that face
 * @param digits fingers it is drawn on; empty for the finger asked about
 */
public record Mark(Kind kind, Segment segment, double along, Aspect aspect, Set<Digit> digits) {
  /** What the mark means. */
  public enum Kind {
    SUPPORT,
    RESIST,
    /**
     * Resistance that turns the segment about its length: pushes its thumb side from the aspect.
     */
    RESIST_TURN,
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
    digits = Set.copyOf(digits);
    if (kind == Kind.RESIST_TURN && aspect != Aspect.VOLAR && aspect != Aspect.DORSAL) {
      throw new IllegalArgumentException("a turn is pushed from volar or dorsal, not " + aspect);
    }
    if (!(along >= 0 && along <= 1)) {
      throw new IllegalArgumentException("along must be 0 to 1: " + along);
    }
  }

  /** On the finger asked about, or on no finger. */
  public Mark(Kind kind, Segment segment, double along, Aspect aspect) {
    this(kind, segment, along, aspect, Set.of());
  }

  /** Whether it is drawn when this digit is asked about; only another finger hides it. */
  public boolean shownFor(Digit asked) {
    return digits.isEmpty()
        || asked == Digit.NONE
        || asked == Digit.THUMB
        || digits.contains(asked);
  }
}
