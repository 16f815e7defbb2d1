package styloid.model.agreement;

/**
 * A coefficient with its two-sided interval.
 *
 * @param value at most 1; below zero when raters agree less than by chance
 * @param low lower end of the interval
 * @param high upper end of the interval
 * @param confidence share of such intervals that hold the true value, above 0 and below 1
 */
public record Estimate(double value, double low, double high, double confidence) {
  public Estimate {
    if (!Double.isFinite(value) || !(low <= high)) {
      throw new ArithmeticException("no estimate: " + value + " from " + low + " to " + high);
    }
    checkConfidence(confidence);
  }

  static void checkConfidence(double confidence) {
    if (!(confidence > 0 && confidence < 1)) {
      throw new IllegalArgumentException("a confidence is above 0 and below 1: " + confidence);
    }
  }
}
