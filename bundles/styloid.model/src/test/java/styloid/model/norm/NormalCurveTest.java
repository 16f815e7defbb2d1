package styloid.model.norm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class NormalCurveTest {
  private static final NormalDistribution JUDGE = NormalDistribution.of(0, 1);

  @Test
  void agreesWithAStatisticsLibraryFromTailToTail() {
    for (int step = -8000; step <= 8000; step++) {
      double z = step / 1000.0;
      double expected = JUDGE.cumulativeProbability(z);
      double found = NormalCurve.cumulative(z);
      assertEquals(expected, found, 1e-15, "absolute, at z = " + z);
      assertEquals(1, found / expected, 1e-13, "relative, at z = " + z);
    }
  }

  @Test
  void keepsItsDigitsFarOutInTheLowerTail() {
    for (int step = -370; step <= -80; step++) {
      double z = step / 10.0;
      assertEquals(
          1, NormalCurve.cumulative(z) / JUDGE.cumulativeProbability(z), 1e-11, "z = " + z);
    }
  }

  @Test
  void givesTheValueOfAShareAsAStatisticsLibraryDoes() {
    for (int step = 1; step < 1000; step++) {
      double p = step / 1000.0;
      assertEquals(
          JUDGE.inverseCumulativeProbability(p), NormalCurve.quantile(p), 1e-12, "p = " + p);
    }
    assertEquals(JUDGE.inverseCumulativeProbability(1e-9), NormalCurve.quantile(1e-9), 1e-12);
    for (double none : new double[] {0, 1, -0.1, 1.1, Double.NaN}) {
      assertThrows(IllegalArgumentException.class, () -> NormalCurve.quantile(none));
    }
  }

  @Test
  void joinsItsPiecesWithoutAStep() {
    for (double seam : new double[] {0.67448975, Math.sqrt(32)}) {
      for (double z : new double[] {seam, -seam}) {
        double below = NormalCurve.cumulative(Math.nextDown(z));
        double above = NormalCurve.cumulative(Math.nextUp(z));
        assertEquals(below, above, 4e-16, "at z = " + z);
      }
    }
  }

  @Test
  void isHalfAtTheMeanAndSettlesAtBothEnds() {
    assertEquals(0.5, NormalCurve.cumulative(0));
    assertEquals(0, NormalCurve.cumulative(Double.NEGATIVE_INFINITY));
    assertEquals(1, NormalCurve.cumulative(Double.POSITIVE_INFINITY));
    assertEquals(50, NormalCurve.percentile(0));
    assertThrows(ArithmeticException.class, () -> NormalCurve.cumulative(Double.NaN));
  }

  @Test
  void mirrorsRoundTheMean() {
    for (int step = 0; step <= 6000; step++) {
      double z = step / 1000.0;
      assertEquals(1, NormalCurve.cumulative(z) + NormalCurve.cumulative(-z), 2e-16);
    }
  }

  @Test
  void countsStandardDeviationsAndRefusesNone() {
    assertEquals(-1.5, NormalCurve.z(70, 100, 20));
    assertEquals(0, NormalCurve.z(100, 100, 20));
    assertTrue(NormalCurve.z(101, 100, 20) > 0);
    assertThrows(IllegalArgumentException.class, () -> NormalCurve.z(1, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> NormalCurve.z(1, 1, Double.NaN));
  }
}
