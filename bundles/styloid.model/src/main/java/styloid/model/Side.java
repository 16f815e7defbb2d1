package styloid.model;

/** Which limb a value belongs to. There is no default: whoever builds a key must say the side. */
public enum Side {
  RIGHT,
  LEFT,
  /** Of the person as a whole, such as the instrument used. */
  UNSIDED;

  private final String code = Codes.of(this);

  /** The other limb; {@link #UNSIDED} is its own opposite. */
  public Side opposite() {
    return this == RIGHT ? LEFT : this == LEFT ? RIGHT : UNSIDED;
  }

  /** Stable word of files and keys: {@code right}, {@code left}, {@code unsided}. */
  public String code() {
    return code;
  }
}
