package styloid.exchange.json;

/** A piece of a file fit to stand in a message: short, on one line, without control characters. */
public final class Excerpt {
  private static final int LONGEST = 60;
  private static final int LONGEST_MESSAGE = 300;

  private Excerpt() {}

  /** A piece of a text. */
  public static String of(String text) {
    return cut(text, LONGEST);
  }

  /** A message that may hold a piece of a text. */
  public static String ofMessage(String message) {
    return cut(message, LONGEST_MESSAGE);
  }

  private static String cut(String text, int longest) {
    StringBuilder shown = new StringBuilder();
    int at = 0;
    for (int count = 0; at < text.length() && count < longest; count++) {
      int point = text.codePointAt(at);
      shown.appendCodePoint(fit(point) ? point : '\uFFFD');
      at += Character.charCount(point);
    }
    return at == text.length() ? shown.toString() : shown + "…";
  }

  private static boolean fit(int point) {
    int type = Character.getType(point);
    return type != Character.CONTROL
        && type != Character.FORMAT
        && type != Character.SURROGATE
        && type != Character.LINE_SEPARATOR
        && type != Character.PARAGRAPH_SEPARATOR;
  }
}
