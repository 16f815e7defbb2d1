package styloid.model;

/** One of an item's listed answers, by its code. */
public record Choice(String code) implements Value {
  public Choice {
    if (code == null || !spelled(code)) {
      throw new IllegalArgumentException("not a choice code: " + code);
    }
  }

  /** Letters and digits, with {@code +} and {@code -} after them and points between them. */
  private static boolean spelled(String code) {
    for (int i = 0; i < code.length(); i++) {
      boolean mark = i > 0 && (code.charAt(i) == '+' || code.charAt(i) == '-');
      boolean point =
          i > 0
              && code.charAt(i) == '.'
              && i + 1 < code.length()
              && letterOrDigit(code.charAt(i + 1));
      if (!letterOrDigit(code.charAt(i)) && !mark && !point) {
        return false;
      }
    }
    return !code.isEmpty();
  }

  private static boolean letterOrDigit(char c) {
    return c >= 'a' && c <= 'z' || c >= '0' && c <= '9';
  }
}
