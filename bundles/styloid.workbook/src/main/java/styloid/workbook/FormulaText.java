package styloid.workbook;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads a formula over cell names and gives it in the spelling of the file format. Knows the
 * functions common spreadsheets share (a part of OpenFormula, ISO/IEC 26300-2); anything else, cell
 * addresses and references to other files included, is not taken over.
 */
final class FormulaText {
  private static final Set<String> FUNCTIONS =
      Set.of(
          ("ABS AND AVERAGE AVERAGEIF CEILING CONFIDENCE CORREL COUNT COUNTA COUNTIF EXP FLOOR IF"
                  + " IFERROR INT INTERCEPT ISNUMBER LN LOG LOG10 MAX MEDIAN MIN MOD NA NORMDIST"
                  + " NORMINV NORMSDIST NORMSINV NOT OR PI POWER PRODUCT ROUND ROUNDDOWN ROUNDUP"
                  + " SIGN SLOPE SQRT STANDARDIZE STDEV STDEVP SUM SUMIF SUMPRODUCT SUMSQ TRUNC VAR"
                  + " VARP")
              .split(" "));

  /** Younger functions, which the file format writes with a prefix. */
  private static final Set<String> PREFIXED =
      Set.of(
          "NORM.DIST NORM.INV NORM.S.DIST NORM.S.INV STDEV.S STDEV.P VAR.S VAR.P IFS SWITCH IFNA"
              .split(" "));

  private static final int LONGEST = 8192;

  /** A formula ready for the file, and the names it reads, in lower case. */
  record Ready(String text, Set<String> names) {}

  private static final class Refused extends Exception {
    private static final long serialVersionUID = 1L;

    Refused(String message) {
      super(message);
    }
  }

  private final String text;
  private final StringBuilder out = new StringBuilder();
  private final TreeSet<String> names = new TreeSet<>();
  private int at;
  private int depth;

  private FormulaText(String text) {
    this.text = text;
  }

  /** The formula without its leading equals sign; empty when it is not of the known kind. */
  static Optional<Ready> read(String formula) {
    FormulaText reader = new FormulaText(formula.startsWith("=") ? formula.substring(1) : formula);
    try {
      reader.comparison();
      reader.blanks();
      boolean whole = reader.at == reader.text.length() && reader.out.length() < LONGEST;
      return whole ? Optional.of(new Ready(reader.out.toString(), reader.names)) : Optional.empty();
    } catch (Refused e) {
      return Optional.empty();
    }
  }

  private void comparison() throws Refused {
    chain(Set.of("<=", ">=", "<>", "=", "<", ">"), 0);
  }

  /** Operands joined by the operators of one strength; weaker ones are the caller's. */
  private void chain(Set<String> operators, int strength) throws Refused {
    operand(strength);
    for (String found = operator(operators); !found.isEmpty(); found = operator(operators)) {
      at += found.length();
      out.append(found);
      operand(strength);
    }
  }

  private void operand(int strength) throws Refused {
    switch (strength) {
      case 0 -> chain(Set.of("&"), 1);
      case 1 -> chain(Set.of("+", "-"), 2);
      case 2 -> chain(Set.of("*", "/"), 3);
      case 3 -> chain(Set.of("^"), 4);
      default -> signed();
    }
  }

  private String operator(Set<String> operators) {
    blanks();
    for (int length = 2; length > 0; length--) {
      if (at + length <= text.length()) {
        String found = text.substring(at, at + length);
        if (operators.contains(found)) {
          return found;
        }
      }
    }
    return "";
  }

  private void signed() throws Refused {
    blanks();
    while (peek() == '-' || peek() == '+') {
      out.append(text.charAt(at++));
      blanks();
    }
    atom();
    blanks();
    while (peek() == '%') {
      out.append(text.charAt(at++));
      blanks();
    }
  }

  private void atom() throws Refused {
    char c = peek();
    if (c == '(') {
      bracket();
    } else if (c == '"') {
      string();
    } else if (c >= '0' && c <= '9' || c == '.') {
      number();
    } else if (c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z' || c == '_') {
      word();
    } else {
      throw new Refused("at " + at);
    }
  }

  private void bracket() throws Refused {
    if (++depth > 60) {
      throw new Refused("too deep");
    }
    take('(');
    comparison();
    take(')');
    depth--;
  }

  private void string() throws Refused {
    int from = at;
    do {
      int close = text.indexOf('"', at + 1);
      if (close < 0) {
        throw new Refused("open string");
      }
      at = close + 1;
    } while (peek() == '"');
    out.append(text, from, at);
  }

  private void number() throws Refused {
    int from = at;
    while (peek() >= '0' && peek() <= '9' || peek() == '.') {
      at++;
    }
    if ((peek() == 'e' || peek() == 'E') && at + 1 < text.length()) {
      at += text.charAt(at + 1) == '-' || text.charAt(at + 1) == '+' ? 2 : 1;
      while (peek() >= '0' && peek() <= '9') {
        at++;
      }
    }
    String digits = text.substring(from, at);
    if (!digits.matches("(\\d+(\\.\\d*)?|\\.\\d+)([eE][+-]?\\d+)?")) {
      throw new Refused("number " + digits);
    }
    out.append(digits);
  }

  private void word() throws Refused {
    int from = at;
    while (Character.isLetterOrDigit(peek()) || peek() == '_' || peek() == '.') {
      at++;
    }
    String word = text.substring(from, at);
    blanks();
    if (peek() == '(') {
      call(word.toUpperCase(Locale.ROOT));
    } else if (word.equalsIgnoreCase("TRUE") || word.equalsIgnoreCase("FALSE")) {
      out.append(word.toUpperCase(Locale.ROOT));
    } else {
      names.add(word.toLowerCase(Locale.ROOT));
      out.append(word);
    }
  }

  private void call(String function) throws Refused {
    boolean younger = PREFIXED.contains(function);
    if (!younger && !FUNCTIONS.contains(function)) {
      throw new Refused("function " + function);
    }
    if (++depth > 60) {
      throw new Refused("too deep");
    }
    out.append(younger ? "_xlfn." : "").append(function);
    take('(');
    blanks();
    while (peek() != ')') {
      comparison();
      blanks();
      if (peek() == ',' || peek() == ';') {
        at++;
        out.append(',');
      } else if (peek() != ')') {
        throw new Refused("at " + at);
      }
    }
    take(')');
    depth--;
  }

  private void take(char expected) throws Refused {
    blanks();
    if (peek() != expected) {
      throw new Refused("no " + expected + " at " + at);
    }
    out.append(text.charAt(at++));
  }

  private void blanks() {
    while (peek() == ' ') {
      at++;
    }
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }
}
