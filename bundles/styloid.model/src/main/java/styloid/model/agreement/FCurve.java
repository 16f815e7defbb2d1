package styloid.model.agreement;

/**
 * The F distribution, by the continued fraction of the regularized incomplete beta function
 * (Abramowitz M, Stegun IA. 1964. Handbook of Mathematical Functions, 26.5.8 and 26.6.2), evaluated
 * after Lentz. Relative error below 1e-10 for 1 to 1e4 degrees of freedom, tested against a
 * statistics library.
 *
 * @param upper degrees of freedom of the numerator, above 0
 * @param lower degrees of freedom of the denominator, above 0
 */
record FCurve(double upper, double lower) {
  private static final int MOST_TERMS = 10_000;
  private static final double TINY = 1e-300;
  private static final double ENOUGH = 1e-15;

  FCurve {
    if (!(upper > 0 && lower > 0)) {
      throw new ArithmeticException("degrees of freedom must be above zero");
    }
  }

  /** The distribution of the inverse. */
  FCurve turned() {
    return new FCurve(lower, upper);
  }

  /** Probability of a value at or below {@code x}: 0 to 1. */
  double cumulative(double x) {
    if (x <= 0) {
      return 0;
    }
    double share = upper * x / (upper * x + lower);
    double rest = lower / (upper * x + lower);
    return beta(share, rest, upper / 2, lower / 2);
  }

  /** The value that a share {@code p} (above 0, below 1) of the distribution does not exceed. */
  double quantile(double p) {
    double low = 0;
    double high = 1;
    while (cumulative(high) < p) {
      low = high;
      high *= 2;
    }
    // halving ends where two doubles are neighbours
    for (double middle = (low + high) / 2;
        middle > low && middle < high;
        middle = (low + high) / 2) {
      if (cumulative(middle) < p) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }

  /** Regularized incomplete beta function at x, where {@code rest} is 1 - x without its loss. */
  private static double beta(double x, double rest, double a, double b) {
    double front =
        Math.exp(
            logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(rest));
    return x < (a + 1) / (a + b + 2)
        ? front * fraction(x, a, b) / a
        : 1 - front * fraction(rest, b, a) / b;
  }

  private static double fraction(double x, double a, double b) {
    double c = 1;
    double d = 1 / away(1 - (a + b) * x / (a + 1));
    double value = d;
    for (int m = 1; m <= MOST_TERMS; m++) {
      double even = m * (b - m) * x / ((a + 2 * m - 1) * (a + 2 * m));
      d = 1 / away(1 + even * d);
      c = away(1 + even / c);
      value *= d * c;
      double odd = -(a + m) * (a + b + m) * x / ((a + 2 * m) * (a + 2 * m + 1));
      d = 1 / away(1 + odd * d);
      c = away(1 + odd / c);
      value *= d * c;
      if (Math.abs(d * c - 1) < ENOUGH) {
        return value;
      }
    }
    throw new ArithmeticException("no end to the fraction at " + x + ", " + a + ", " + b);
  }

  private static double away(double fromZero) {
    return Math.abs(fromZero) < TINY ? TINY : fromZero;
  }

  /** Natural logarithm of the gamma function above zero, by Stirling's series from 15 on. */
  static double logGamma(double x) {
    double shift = 0;
    double at = x;
    while (at < 15) {
      shift += Math.log(at);
      at++;
    }
    double inverse = 1 / at;
    double square = inverse * inverse;
    double series =
        inverse
            * (1.0 / 12
                - square
                    * (1.0 / 360 - square * (1.0 / 1260 - square * (1.0 / 1680 - square / 1188))));
    return (at - 0.5) * Math.log(at) - at + Math.log(2 * Math.PI) / 2 + series - shift;
  }
}
