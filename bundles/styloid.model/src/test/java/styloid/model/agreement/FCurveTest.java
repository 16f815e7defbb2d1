package styloid.model.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.apache.commons.statistics.distribution.FDistribution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FCurveTest {
  private static final double[] FREEDOM = {1, 2, 3.7, 5, 15, 39.7, 120, 1000, 10_000};

  @ParameterizedTest
  @ValueSource(doubles = {0.001, 0.05, 0.3, 0.9, 1, 1.1, 2.5, 4, 17, 300})
  void probabilityAgreesWithAStatisticsLibrary(double x) {
    for (double upper : FREEDOM) {
      for (double lower : FREEDOM) {
        double expected = FDistribution.of(upper, lower).cumulativeProbability(x);
        double found = new FCurve(upper, lower).cumulative(x);
        assertEquals(expected, found, 1e-10 * expected + 1e-13, upper + " and " + lower);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.005, 0.025, 0.05, 0.5, 0.9, 0.95, 0.975, 0.995})
  void quantilesAgreeWithAStatisticsLibrary(double p) {
    for (double upper : FREEDOM) {
      for (double lower : FREEDOM) {
        double expected = FDistribution.of(upper, lower).inverseCumulativeProbability(p);
        double found = new FCurve(upper, lower).quantile(p);
        assertEquals(1, found / expected, 1e-9, upper + " and " + lower);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {0, -1, Double.NaN})
  void freedomMustBeAboveZero(double none) {
    assertThrows(ArithmeticException.class, () -> new FCurve(none, 3));
    assertThrows(ArithmeticException.class, () -> new FCurve(3, none));
  }
}
