package styloid.model;

/** What doing an item asks of the limb, and so which precautions withhold it. */
public enum Demand {
  /** Looking, feeling or asking only. */
  NONE,
  ACTIVE_MOTION,
  PASSIVE_MOTION,
  RESISTANCE,
  GRIP_OR_PINCH;

  public String code() {
    return Codes.of(this);
  }
}
