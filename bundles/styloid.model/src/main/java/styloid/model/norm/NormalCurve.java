package styloid.model.norm;

/**
 * The standard normal distribution.
 *
 * <p>The cumulative probability follows the rational Chebyshev approximations of Cody WJ (1969),
 * Rational Chebyshev approximations for the error function, Math Comp 23(107):631-637, in the form
 * for the normal integral of Cody WJ (1993), Algorithm 715: SPECFUN, ACM Trans Math Softw
 * 19(1):22-32. Absolute error stays below 1e-15; relative error stays below 1e-13 down to z = -8
 * and below 1e-11 down to -37, because the exponent is split so that squaring loses no digits.
 */
public final class NormalCurve {
  private static final double MIDDLE = 0.67448975;
  private static final double SHOULDER = Math.sqrt(32);
  private static final double ONE_BY_ROOT_TWO_PI = 0.398942280401432677939946;

  private static final double[] A = {
    2.2352520354606839287,
    161.02823106855587881,
    1067.6894854603709582,
    18154.981253343561249,
    0.065682337918207449113
  };
  private static final double[] B = {
    47.20258190468824187, 976.09855173777669322, 10260.932208618978205, 45507.789335026729956
  };
  private static final double[] C = {
    0.39894151208813466764,
    8.8831497943883759412,
    93.506656132177855979,
    597.27027639480026226,
    2494.5375852903726711,
    6848.1904505362823326,
    11602.651437647350124,
    9842.7148383839780218,
    1.0765576773720192317e-8
  };
  private static final double[] D = {
    22.266688044328115691,
    235.38790178262499861,
    1519.377599407554805,
    6485.558298266760755,
    18615.571640885098091,
    34900.952721145977266,
    38912.003286093271411,
    19685.429676859990727
  };
  private static final double[] P = {
    0.21589853405795699,
    0.1274011611602473639,
    0.022235277870649807,
    0.001421619193227893466,
    2.9112874951168792e-5,
    0.02307344176494017303
  };
  private static final double[] Q = {
    1.28426009614491121,
    0.468238212480865118,
    0.0659881378689285515,
    0.00378239633202758244,
    7.29751555083966205e-5
  };

  private NormalCurve() {}

  /**
   * How many standard deviations {@code x} lies above (below: negative) the mean, all in one unit.
   *
   * @throws IllegalArgumentException when {@code sd} is not above zero
   */
  public static double z(double x, double mean, double sd) {
    if (!(sd > 0)) {
      throw new IllegalArgumentException("a standard deviation must be above zero: " + sd);
    }
    return (x - mean) / sd;
  }

  /** Share of the population at or below {@code z}, in percent: 0 to 100. */
  public static double percentile(double z) {
    return 100 * cumulative(z);
  }

  /** Probability of a standard normal value at or below {@code z}: 0 to 1. */
  public static double cumulative(double z) {
    if (Double.isNaN(z)) {
      throw new ArithmeticException("no probability of what is not a number");
    }
    double distance = Math.abs(z);
    if (distance <= MIDDLE) {
      return 0.5 + z * middle(z * z);
    }
    double tail = distance <= SHOULDER ? shoulder(distance) : far(distance);
    return z > 0 ? 1 - tail : tail;
  }

  /**
   * The value that a share {@code p} of the distribution does not exceed: where the cumulative
   * probability first reaches {@code p}, to the last digit it tells apart.
   *
   * @throws IllegalArgumentException when {@code p} is not above 0 and below 1
   */
  public static double quantile(double p) {
    if (!(p > 0 && p < 1)) {
      throw new IllegalArgumentException("a share is above 0 and below 1: " + p);
    }
    double low = -40;
    double high = 40;
    for (double half = 0; half > low && half < high; half = (low + high) / 2) {
      if (cumulative(half) < p) {
        low = half;
      } else {
        high = half;
      }
    }
    return high;
  }

  private static double middle(double square) {
    double above = A[4] * square;
    double below = square;
    for (int i = 0; i < 3; i++) {
      above = (above + A[i]) * square;
      below = (below + B[i]) * square;
    }
    return (above + A[3]) / (below + B[3]);
  }

  private static double shoulder(double distance) {
    double above = C[8] * distance;
    double below = distance;
    for (int i = 0; i < 7; i++) {
      above = (above + C[i]) * distance;
      below = (below + D[i]) * distance;
    }
    return bell(distance) * (above + C[7]) / (below + D[7]);
  }

  private static double far(double distance) {
    if (distance > 40) {
      // The probability is smaller than the smallest number a double holds.
      return 0;
    }
    double inverse = 1 / (distance * distance);
    double above = P[5] * inverse;
    double below = inverse;
    for (int i = 0; i < 4; i++) {
      above = (above + P[i]) * inverse;
      below = (below + Q[i]) * inverse;
    }
    double correction = inverse * (above + P[4]) / (below + Q[4]);
    return bell(distance) * (ONE_BY_ROOT_TWO_PI - correction) / distance;
  }

  /** exp(-distance^2 / 2), with the square split at sixteenths, which squares exactly. */
  private static double bell(double distance) {
    double coarse = Math.floor(distance * 16) / 16;
    double rest = (distance - coarse) * (distance + coarse);
    return Math.exp(-coarse * coarse / 2) * Math.exp(-rest / 2);
  }
}
