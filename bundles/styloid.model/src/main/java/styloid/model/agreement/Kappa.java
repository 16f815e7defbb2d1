package styloid.model.agreement;

import styloid.model.norm.NormalCurve;

/**
 * Cohen's kappa of two raters over classes in order, weighted or not: 1 - observed disagreement /
 * disagreement expected by chance. Cohen J. 1960. Educ Psychol Meas 20:37-46; Cohen J. 1968.
 * Psychol Bull 70:213-220. Standard error in large samples: Fleiss JL, Cohen J, Everitt BS. 1969.
 * Psychol Bull 72:323-327.
 *
 * <p>A class nobody used still stands between the others: leave it in the table.
 *
 * @param value at most 1
 * @param standardError of the value in large samples, from 0
 */
public record Kappa(double value, double standardError) {

  /**
   * Kappa of a square table of counts (or shares): row the first rater's class, column the
   * second's.
   *
   * @throws IllegalArgumentException when the table is not square, has fewer than two classes, or
   *     holds a number below zero
   * @throws ArithmeticException when it is empty or chance alone would give no disagreement
   */
  public static Kappa of(double[][] table, Weights weights) {
    int classes = table.length;
    double total = total(table);
    double[] rows = new double[classes];
    double[] columns = new double[classes];
    double observed = 0;
    double most = 0;
    for (int i = 0; i < classes; i++) {
      for (int j = 0; j < classes; j++) {
        rows[i] += table[i][j] / total;
        columns[j] += table[i][j] / total;
        observed += weights.of(i, j) * table[i][j] / total;
        most = Math.max(most, weights.of(i, j));
      }
    }
    double expected = 0;
    for (int i = 0; i < classes; i++) {
      for (int j = 0; j < classes; j++) {
        expected += weights.of(i, j) * rows[i] * columns[j];
      }
    }
    if (!(expected > 0)) {
      throw new ArithmeticException("both raters used one class only: chance explains it all");
    }
    double kappa = 1 - observed / expected;
    double error = error(table, weights, rows, columns, total, most, kappa, expected / most);
    return new Kappa(kappa, error);
  }

  private static double total(double[][] table) {
    double total = 0;
    for (double[] row : table) {
      if (row.length != table.length || table.length < 2) {
        throw new IllegalArgumentException("the table must be square, of two classes or more");
      }
      for (double count : row) {
        if (!(count >= 0 && Double.isFinite(count))) {
          throw new IllegalArgumentException("not a count: " + count);
        }
        total += count;
      }
    }
    if (total == 0) {
      throw new ArithmeticException("nothing was rated");
    }
    return total;
  }

  private static double error(
      double[][] table,
      Weights weights,
      double[] rows,
      double[] columns,
      double total,
      double most,
      double kappa,
      double expectedDisagreement) {
    int classes = table.length;
    double[] ofRow = new double[classes];
    double[] ofColumn = new double[classes];
    for (int i = 0; i < classes; i++) {
      for (int j = 0; j < classes; j++) {
        double agreement = 1 - weights.of(i, j) / most;
        ofRow[i] += columns[j] * agreement;
        ofColumn[j] += rows[i] * agreement;
      }
    }
    double sum = 0;
    for (int i = 0; i < classes; i++) {
      for (int j = 0; j < classes; j++) {
        double agreement = 1 - weights.of(i, j) / most;
        double part = agreement - (ofRow[i] + ofColumn[j]) * (1 - kappa);
        sum += table[i][j] / total * part * part;
      }
    }
    double chance = 1 - expectedDisagreement;
    double rest = kappa - chance * (1 - kappa);
    double variance = (sum - rest * rest) / (total * expectedDisagreement * expectedDisagreement);
    // rounding may leave a trifle below zero where agreement is whole
    return Math.sqrt(Math.max(0, variance));
  }

  /** The value with its interval in large samples, cut off at 1. */
  public Estimate interval(double confidence) {
    Estimate.checkConfidence(confidence);
    double far = NormalCurve.quantile(1 - (1 - confidence) / 2) * standardError;
    return new Estimate(value, value - far, Math.min(1, value + far), confidence);
  }
}
