package styloid.spi;

import java.util.List;
import java.util.Objects;
import styloid.model.Codes;

/**
 * What a drawing of the limb shows.
 *
 * @param view from where it is seen
 */
public record Picture(Pose pose, List<Mark> marks, View view) {
  /** From where the limb is seen. The first ones go by the body, the last by the hand. */
  public enum View {
    /** The drawer's choice by the region of the body. */
    FITTING,
    FRONT,
    BEHIND,
    /** From the side of the limb tested. */
    SIDE,
    /** Between front and side. */
    FRONT_SIDE,
    /** Between behind and side. */
    BEHIND_SIDE,
    /** From over the head. */
    HEAD,
    PALM,
    BACK_OF_HAND,
    THUMB_SIDE,
    LITTLE_FINGER_SIDE,
    /** From the fingertips along the forearm. */
    FINGERTIPS;

    public String code() {
      return Codes.of(this);
    }
  }

  public Picture {
    Objects.requireNonNull(pose, "pose");
    marks = List.copyOf(marks);
    Objects.requireNonNull(view, "view");
  }

  /** Nothing to be drawn. */
  public static Picture none() {
    return new Picture(Pose.neutral(), List.of(), View.FITTING);
  }
}
