package styloid.model.norm;

/** The few statistics results are made of. Units are those of the numbers given. */
public final class Statistics {
  private Statistics() {}

  /**
   * Arithmetic mean.
   *
   * @throws IllegalArgumentException when there are no numbers
   */
  public static double mean(double... numbers) {
    if (numbers.length == 0) {
      throw new IllegalArgumentException("a mean needs a number");
    }
    double sum = 0;
    for (double number : numbers) {
      sum += number;
    }
    return sum / numbers.length;
  }

  /**
   * Sample standard deviation (divisor n - 1), from the squared distances to the mean.
   *
   * @throws IllegalArgumentException when there are fewer than two numbers
   */
  public static double sampleSd(double... numbers) {
    if (numbers.length < 2) {
      throw new IllegalArgumentException("a standard deviation needs two numbers");
    }
    double mean = mean(numbers);
    double squares = 0;
    for (double number : numbers) {
      squares += (number - mean) * (number - mean);
    }
    return Math.sqrt(squares / (numbers.length - 1));
  }

  /**
   * Coefficient of variation in percent: 100 x sample SD / mean.
   *
   * @throws ArithmeticException when the mean is zero or below, where it means nothing
   */
  public static double cv(double... numbers) {
    double mean = mean(numbers);
    if (!(mean > 0)) {
      throw new ArithmeticException("a coefficient of variation needs a mean above zero");
    }
    return 100 * sampleSd(numbers) / mean;
  }
}
