package styloid.model;

/** Part of the limb, in order from proximal to distal. */
public enum Region {
  SHOULDER,
  ELBOW,
  FOREARM,
  WRIST,
  FINGERS,
  THUMB,
  /** Whole-hand actions: fists, opposition, grip and pinch. */
  HAND,
  /** Reaches and whatever concerns the whole limb. */
  LIMB;

  /** Stable word of files and keys, such as {@code wrist}. */
  public String code() {
    return Codes.of(this);
  }

  /**
   * Whether a limit set on this region also holds for {@code other}. The hand covers fingers and
   * thumb, the limb covers all.
   */
  public boolean covers(Region other) {
    return this == other || this == LIMB || this == HAND && (other == FINGERS || other == THUMB);
  }
}
