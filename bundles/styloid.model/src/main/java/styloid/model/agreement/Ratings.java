package styloid.model.agreement;

import java.util.Arrays;

/**
 * Every target (patient, joint) measured once by every rater, in one unit; at least two of each. No
 * holes: a target that one rater left out must be left out by the caller.
 */
public final class Ratings {
  private final double[][] byTarget;

  /** Ratings by target, then rater. */
  public Ratings(double[][] byTarget) {
    if (byTarget.length < 2 || byTarget[0].length < 2) {
      throw new IllegalArgumentException("agreement needs two targets and two raters");
    }
    this.byTarget = new double[byTarget.length][];
    for (int i = 0; i < byTarget.length; i++) {
      if (byTarget[i].length != byTarget[0].length) {
        throw new IllegalArgumentException("target " + (i + 1) + " lacks a rating or has one more");
      }
      for (double rating : byTarget[i]) {
        if (!Double.isFinite(rating)) {
          throw new IllegalArgumentException("target " + (i + 1) + " has no number: " + rating);
        }
      }
      this.byTarget[i] = byTarget[i].clone();
    }
  }

  public int targets() {
    return byTarget.length;
  }

  public int raters() {
    return byTarget[0].length;
  }

  /** Sample standard deviation of all ratings. */
  public double sd() {
    double squares = 0;
    double mean = mean();
    for (double[] target : byTarget) {
      for (double rating : target) {
        squares += square(rating - mean);
      }
    }
    return Math.sqrt(squares / (targets() * raters() - 1));
  }

  private double mean() {
    return Arrays.stream(byTarget).mapToDouble(Ratings::mean).sum() / targets();
  }

  private static double mean(double[] numbers) {
    return Arrays.stream(numbers).sum() / numbers.length;
  }

  /**
   * The mean squares of the two-way table.
   *
   * @param between between targets
   * @param within within targets
   * @param raters between raters
   * @param error what is left
   */
  public record MeanSquares(double between, double within, double raters, double error) {}

  public MeanSquares meanSquares() {
    double mean = mean();
    double between = 0;
    double within = 0;
    for (double[] target : byTarget) {
      double own = mean(target);
      between += raters() * square(own - mean);
      for (double rating : target) {
        within += square(rating - own);
      }
    }
    double byRater = 0;
    double left = 0;
    for (int rater = 0; rater < raters(); rater++) {
      double own = ofRater(rater);
      byRater += targets() * square(own - mean);
      for (double[] target : byTarget) {
        left += square(target[rater] - mean(target) - own + mean);
      }
    }
    int n = targets() - 1;
    int k = raters() - 1;
    return new MeanSquares(
        between / n, within / (targets() * k), byRater / k, left / ((double) n * k));
  }

  private double ofRater(int rater) {
    return Arrays.stream(byTarget).mapToDouble(target -> target[rater]).sum() / targets();
  }

  private static double square(double number) {
    return number * number;
  }
}
