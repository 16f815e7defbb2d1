package styloid.model;

/** Which digit a value belongs to, from radial to ulnar; {@link #NONE} where no digit is meant. */
public enum Digit {
  THUMB,
  INDEX,
  MIDDLE,
  RING,
  LITTLE,
  NONE;

  private final String code = Codes.of(this);

  /** Stable word of files and keys, such as {@code index}. */
  public String code() {
    return code;
  }
}
