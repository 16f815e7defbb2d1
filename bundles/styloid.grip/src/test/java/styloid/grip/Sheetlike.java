package styloid.grip;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Works out the few spreadsheet formulas this module writes, by the arithmetic of a spreadsheet.
 */
final class Sheetlike {
  private final String text;
  private final Map<String, Double> cells;
  private int at;

  private Sheetlike(String text, Map<String, Double> cells) {
    this.text = text;
    this.cells = cells;
  }

  static double value(String formula, Map<String, Double> cells) {
    Sheetlike sheet = new Sheetlike(formula, cells);
    double value = sheet.sum();
    if (sheet.at != formula.length()) {
      throw new IllegalArgumentException("left over at " + sheet.at + " in " + formula);
    }
    return value;
  }

  private boolean take(char c) {
    boolean there = at < text.length() && text.charAt(at) == c;
    at += there ? 1 : 0;
    return there;
  }

  private double sum() {
    double value = product();
    while (take('-')) {
      value -= product();
    }
    return value;
  }

  private double product() {
    double value = term();
    while (true) {
      if (take('*')) {
        value *= term();
      } else if (take('/')) {
        value /= term();
      } else {
        return value;
      }
    }
  }

  private double term() {
    if (take('(')) {
      double value = sum();
      close();
      return value;
    }
    int from = at;
    while (at < text.length()
        && (Character.isLetterOrDigit(text.charAt(at)) || "_.".indexOf(text.charAt(at)) >= 0)) {
      at++;
    }
    String word = text.substring(from, at);
    if (take('(')) {
      ArrayList<Double> args = new ArrayList<>(List.of(sum()));
      while (take(',')) {
        args.add(sum());
      }
      close();
      return function(word, args.stream().mapToDouble(d -> d).toArray());
    }
    return Character.isDigit(word.charAt(0)) ? Double.parseDouble(word) : cells.get(word);
  }

  private void close() {
    if (!take(')')) {
      throw new IllegalArgumentException("no ) at " + at + " in " + text);
    }
  }

  private static double function(String name, double[] args) {
    double mean = 0;
    double max = args[0];
    for (double arg : args) {
      mean += arg / args.length;
      max = Math.max(max, arg);
    }
    double squares = 0;
    for (double arg : args) {
      squares += (arg - mean) * (arg - mean);
    }
    return switch (name) {
      case "AVERAGE" -> mean;
      case "MAX" -> max;
      case "STDEV" -> Math.sqrt(squares / (args.length - 1));
      case "NORMSDIST" -> NormalDistribution.of(0, 1).cumulativeProbability(args[0]);
      default -> throw new IllegalArgumentException("unknown function " + name);
    };
  }
}
