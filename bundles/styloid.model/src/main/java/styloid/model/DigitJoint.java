package styloid.model;

/**
 * A joint along a digit, from proximal to distal. The thumb has CMC, MP and IP, a finger all but
 * IP.
 */
public enum DigitJoint {
  /** Carpometacarpal, at the base of the metacarpal. */
  CMC,
  /** Metacarpophalangeal. */
  MP,
  /** Proximal interphalangeal, of fingers. */
  PIP,
  /** Distal interphalangeal, of fingers. */
  DIP,
  /** Interphalangeal, of the thumb. */
  IP;

  /** Stable word of files and keys, such as {@code pip}. */
  public String code() {
    return Codes.of(this);
  }
}
