package styloid.custom;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import styloid.exchange.json.Excerpt;
import styloid.exchange.json.NearMiss;

/** Reads a formula of bounded size; whatever is not of the list is refused with its place. */
final class FormulaReader {
  static final int LONGEST = 1000;
  static final int DEEPEST = 24;
  private static final String CELLS = "$!:[]#'{}@\\";
  private static final List<List<String>> STRENGTHS =
      List.of(
          List.of("<=", ">=", "<>", "=", "<", ">"),
          List.of("&"),
          List.of("+", "-"),
          List.of("*", "/"),
          List.of("^"));

  private final String text;
  private int at;
  private int depth;

  private FormulaReader(String text) {
    this.text = text;
  }

  static Term read(String formula) throws FormulaException {
    if (formula.length() > LONGEST) {
      throw new FormulaException(0, "a formula has at most " + LONGEST + " characters");
    }
    if (formula.isBlank()) {
      throw new FormulaException(0, "a formula is missing");
    }
    FormulaReader reader = new FormulaReader(formula);
    if (reader.peek() == '=') {
      reader.at++;
    }
    Term term = reader.joined(0);
    reader.blanks();
    if (reader.at < formula.length()) {
      throw reader.unexpected();
    }
    return term;
  }

  private Term joined(int strength) throws FormulaException {
    if (strength == STRENGTHS.size()) {
      return signed();
    }
    Term left = joined(strength + 1);
    int chained = 0;
    for (Optional<String> found = operator(strength);
        found.isPresent();
        found = operator(strength)) {
      int place = at;
      if (++chained > DEEPEST * 2) {
        throw new FormulaException(place, "too many operators in a row; use SUM or a result more");
      }
      at += found.get().length();
      left = new Term.Pair(place, found.get(), left, joined(strength + 1));
    }
    return left;
  }

  private Optional<String> operator(int strength) throws FormulaException {
    blanks();
    Optional<String> found =
        STRENGTHS.get(strength).stream().filter(o -> text.startsWith(o, at)).findFirst();
    if (found.isPresent() && found.get().equals("&")) {
      throw new FormulaException(at, "a result is a number; texts cannot be joined");
    }
    return found;
  }

  private Term signed() throws FormulaException {
    blanks();
    int place = at;
    if (peek() == '-' || peek() == '+') {
      String sign = String.valueOf(text.charAt(at++));
      deeper(place);
      Term of = signed();
      depth--;
      return new Term.Sign(place, sign, of);
    }
    Term term = atom();
    blanks();
    if (peek() == '%') {
      term = new Term.Sign(at, "%", term);
      at++;
    }
    return term;
  }

  private Term atom() throws FormulaException {
    int place = at;
    char c = peek();
    if (c == '(') {
      deeper(place);
      at++;
      Term inside = joined(0);
      close(place);
      return inside;
    } else if (c == '"') {
      return string();
    } else if (c >= '0' && c <= '9' || c == '.') {
      return number();
    } else if (isLetter(c) || c == '_') {
      return word();
    }
    throw unexpected();
  }

  private void deeper(int place) throws FormulaException {
    if (++depth > DEEPEST) {
      throw new FormulaException(place, "brackets are nested more than " + DEEPEST + " deep");
    }
  }

  private void close(int opened) throws FormulaException {
    blanks();
    if (peek() != ')') {
      throw at < text.length()
          ? unexpected()
          : new FormulaException(opened, "this bracket is not closed");
    }
    at++;
    depth--;
  }

  private Term string() throws FormulaException {
    int place = at;
    int end = text.indexOf('"', at + 1);
    if (end < 0) {
      throw new FormulaException(place, "this text is not closed");
    }
    at = end + 1;
    if (peek() == '"') {
      throw new FormulaException(at, "a double quote cannot stand inside a text");
    }
    return new Term.Str(place, text.substring(place + 1, end));
  }

  private Term number() throws FormulaException {
    int place = at;
    while (peek() >= '0' && peek() <= '9' || peek() == '.') {
      at++;
    }
    String digits = text.substring(place, at);
    if (isLetter(peek()) || digits.length() > 20 || !digits.matches("\\d+(\\.\\d+)?")) {
      throw new FormulaException(
          place, "write a number as digits with a point, such as 0.5 or 100, of at most 20 signs");
    }
    return new Term.Num(place, digits);
  }

  private Term word() throws FormulaException {
    int place = at;
    while (isLetter(peek()) || peek() >= '0' && peek() <= '9' || peek() == '_' || peek() == '.') {
      at++;
    }
    String word = text.substring(place, at);
    blanks();
    if (peek() == '(') {
      return call(place, word.toUpperCase(Locale.ROOT));
    }
    if (CELLS.indexOf(peek()) >= 0) {
      throw unexpected();
    }
    if (word.equalsIgnoreCase("TRUE") || word.equalsIgnoreCase("FALSE")) {
      return new Term.Truth(place, word.equalsIgnoreCase("TRUE"));
    }
    return new Term.Name(place, word);
  }

  private Term call(int place, String name) throws FormulaException {
    Functions.Function function =
        Functions.find(name)
            .orElseThrow(
                () ->
                    new FormulaException(
                        place,
                        "\""
                            + Excerpt.of(name)
                            + "\" is not a function known here; "
                            + NearMiss.hint(name, Functions.names())));
    deeper(place);
    int open = at++;
    ArrayList<Term> args = new ArrayList<>();
    blanks();
    while (peek() != ')') {
      args.add(joined(0));
      blanks();
      if (peek() == ',' || peek() == ';') {
        at++;
        blanks();
        if (peek() == ')') {
          throw new FormulaException(at, "an argument is missing before the bracket");
        }
      } else if (peek() != ')') {
        break;
      }
    }
    close(open);
    if (args.size() < function.least() || args.size() > function.most()) {
      String wanted =
          function.least() == function.most()
              ? String.valueOf(function.least())
              : function.least() + " to " + function.most();
      throw new FormulaException(
          place, name + " takes " + wanted + " arguments, not " + args.size());
    }
    return new Term.Call(place, name, args);
  }

  private FormulaException unexpected() {
    if (at >= text.length()) {
      return new FormulaException(at, "the formula ends too early");
    }
    char c = peek();
    if (CELLS.indexOf(c) >= 0) {
      return new FormulaException(
          at,
          "cells, sheets and other files cannot be referred to; use the names of items and"
              + " results");
    }
    String sign = Excerpt.of(text.substring(at, text.offsetByCodePoints(at, 1)));
    return new FormulaException(at, "\"" + sign + "\" does not fit here");
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }

  private void blanks() {
    while (peek() == ' ' || peek() == '\n' || peek() == '\t') {
      at++;
    }
  }

  private char peek() {
    return at < text.length() ? text.charAt(at) : '\0';
  }
}
