package styloid.workbook;

import java.util.Locale;
import java.util.function.IntFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Text of any origin made fit for a cell. A cell holds at most {@value #LONGEST} characters; XML
 * cannot carry most control characters, for which the file format has its own spelling, {@code
 * _x0007_}.
 */
final class SafeText {
  static final int LONGEST = 32_767;
  private static final Pattern SPELLED = Pattern.compile("_x([0-9A-Fa-f]{4})_");
  private static final String STARTERS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20\u2212";

  private SafeText() {}

  /**
   * The text as it will stand in a cell: halves of characters, which no file can carry, become
   * U+FFFD; what is too long is cut and says so.
   *
   * @param notice makes the notice from the number of characters left out
   */
  static String fit(String text, IntFunction<String> notice) {
    StringBuilder whole = new StringBuilder(text.length());
    text.codePoints().forEach(c -> whole.appendCodePoint(carried(c) ? c : 0xFFFD));
    String fitting = whole.toString();
    return encode(fitting).length() <= LONGEST ? fitting : cut(fitting, notice);
  }

  private static boolean carried(int c) {
    return (c < 0xD800 || c > 0xDFFF) && (c & 0xFFFE) != 0xFFFE;
  }

  private static String cut(String text, IntFunction<String> notice) {
    int room = LONGEST - 7 * (notice.apply(text.length()).length() + 1);
    int kept = 0;
    int used = 0;
    while (kept < text.length()) {
      int next = text.codePointAt(kept);
      // Seven characters is the longest spelling; counting it for every underscore is safe.
      used += next < ' ' || next == '_' ? 7 : Character.charCount(next);
      if (used > room) {
        break;
      }
      kept += Character.charCount(next);
    }
    return text.substring(0, kept) + " " + notice.apply(text.length() - kept);
  }

  /** Whether a spreadsheet would take the text for a formula if it were typed in again. */
  static boolean startsLikeFormula(String text) {
    if (text.isEmpty()) {
      return false;
    }
    String bare = text.stripLeading();
    return STARTERS.indexOf(text.charAt(0)) >= 0
        || !bare.isEmpty() && STARTERS.indexOf(bare.charAt(0)) >= 0;
  }

  /** The spelling of the file format. */
  static String encode(String text) {
    StringBuilder out = new StringBuilder(text.length());
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' && c != '\t' && c != '\n') {
        spell(out, c);
      } else if (c == '_' && SPELLED.matcher(text).region(i, text.length()).lookingAt()) {
        spell(out, c);
      } else {
        out.append(c);
      }
    }
    return out.toString();
  }

  private static void spell(StringBuilder out, char c) {
    out.append(String.format(Locale.ROOT, "_x%04X_", (int) c));
  }

  /** Reads what {@link #encode} wrote. */
  static String decode(String text) {
    Matcher spelled = SPELLED.matcher(text);
    StringBuilder out = new StringBuilder(text.length());
    while (spelled.find()) {
      String character = String.valueOf((char) Integer.parseInt(spelled.group(1), 16));
      spelled.appendReplacement(out, Matcher.quoteReplacement(character));
    }
    return spelled.appendTail(out).toString();
  }

  /** One line of it for the edge of a printed page, where {@code &} would begin a command. */
  static String forPageEdge(String text, int longest) {
    String line = text.replaceAll("[\\p{Cntrl}\\s]+", " ").strip();
    int[] points = line.codePoints().limit(longest).toArray();
    String kept = new String(points, 0, points.length);
    String shown = kept.length() < line.length() ? kept + "\u2026" : kept;
    return shown.replace("&", "&&");
  }
}
