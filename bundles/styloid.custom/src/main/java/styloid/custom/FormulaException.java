package styloid.custom;

/** What is wrong with a formula, and at which of its characters, counted from 0. */
final class FormulaException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int at;

  FormulaException(int at, String message) {
    super(message);
    this.at = at;
  }

  int at() {
    return at;
  }
}
