package styloid.model.norm;

/** How a row of a norm table names the hand. */
public enum NormHand {
  RIGHT("R"),
  LEFT("L"),
  DOMINANT("D"),
  NON_DOMINANT("N"),
  /** The row does not tell hands apart. */
  ANY("");

  private final String letter;

  NormHand(String letter) {
    this.letter = letter;
  }

  /** The letter of the {@code hand} column; empty for {@link #ANY}. */
  public String letter() {
    return letter;
  }

  boolean byDominance() {
    return this == DOMINANT || this == NON_DOMINANT;
  }
}
