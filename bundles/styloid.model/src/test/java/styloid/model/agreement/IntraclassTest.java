package styloid.model.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.apache.commons.statistics.distribution.FDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Six targets by four judges of Shrout PE, Fleiss JL. 1979. Psychol Bull 86(2):420-428, and 20
 * subjects by three raters of a statistics package.
 */
class IntraclassTest {
  private static final Ratings SIX_BY_FOUR =
      new Ratings(Published.numbers("icc_shrout_fleiss_data.csv", 1, 4));
  private static final Ratings TWENTY_BY_THREE =
      new Ratings(Published.numbers("agreement_rater_scores.csv", 1, 3));

  private static Map<String, Double> found() {
    Ratings.MeanSquares ms = SIX_BY_FOUR.meanSquares();
    // what is printed as 95 % turns out to leave 5 % out on each side
    Estimate oneWay = Intraclass.ONE_WAY.ofOne(SIX_BY_FOUR, 0.90);
    return Map.ofEntries(
        Map.entry("BMS", ms.between()),
        Map.entry("WMS", ms.within()),
        Map.entry("JMS", ms.raters()),
        Map.entry("EMS", ms.error()),
        Map.entry("ICC(1,1)", oneWay.value()),
        Map.entry("ICC(2,1)", Intraclass.AGREEMENT.ofOne(SIX_BY_FOUR, 0.95).value()),
        Map.entry("ICC(3,1)", Intraclass.CONSISTENCY.ofOne(SIX_BY_FOUR, 0.95).value()),
        Map.entry("ICC(1,4)", Intraclass.ONE_WAY.ofMean(SIX_BY_FOUR, 0.95).value()),
        Map.entry("ICC(2,4)", Intraclass.AGREEMENT.ofMean(SIX_BY_FOUR, 0.95).value()),
        Map.entry("ICC(3,4)", Intraclass.CONSISTENCY.ofMean(SIX_BY_FOUR, 0.95).value()),
        Map.entry("ICC(1,1) 95 percent low", oneWay.low()),
        Map.entry("ICC(1,1) 95 percent high", oneWay.high()));
  }

  @Test
  void everyPrintedResultOfTheSixByFourTableIsReproducedToItsLastDigit() {
    Map<String, Double> found = found();
    TreeSet<String> named = new TreeSet<>();
    for (List<String> row : Published.rows("icc_shrout_fleiss_results.csv")) {
      named.add(row.get(0));
      for (String printed : row.subList(1, 3)) {
        if (!printed.isEmpty()) {
          BigDecimal digits = new BigDecimal(printed);
          BigDecimal own =
              BigDecimal.valueOf(found.get(row.get(0)))
                  .setScale(digits.scale(), RoundingMode.HALF_UP);
          assertEquals(digits, own, row.get(0));
        }
      }
    }
    assertEquals(new TreeSet<>(found.keySet()), named);
  }

  /** That program finds its quantiles to about six digits. */
  @Test
  void theIntervalStoredWithAStatisticsProgramIsReproducedAsFarAsItGoes() {
    Estimate oneWay = Intraclass.ONE_WAY.ofOne(SIX_BY_FOUR, 0.90);
    assertEquals(-0.0967218809492438, oneWay.low(), 1e-6);
    assertEquals(0.64339874385296, oneWay.high(), 1e-6);
  }

  /** From memory, as printed by a statistics package for the six-by-four table. */
  @ParameterizedTest
  @CsvSource({
    "ONE_WAY,     false, -0.133, 0.72",
    "AGREEMENT,   false,  0.019, 0.76",
    "CONSISTENCY, false,  0.342, 0.95",
    "ONE_WAY,     true,  -0.884, 0.91",
    "AGREEMENT,   true,   0.071, 0.93",
    "CONSISTENCY, true,   0.676, 0.99"
  })
  void intervalsOfTheSixByFourTableAreAsPrinted(
      Intraclass model, boolean mean, double low, double high) {
    Estimate estimate = mean ? model.ofMean(SIX_BY_FOUR, 0.95) : model.ofOne(SIX_BY_FOUR, 0.95);
    assertEquals(low, estimate.low(), 0.0005);
    assertEquals(high, estimate.high(), 0.005);
  }

  /** From memory, as printed in the manual of the statistics package the scores come with. */
  @Test
  void agreementOfTwentyByThreeIsAsPrinted() {
    Estimate agreement = Intraclass.AGREEMENT.ofOne(TWENTY_BY_THREE, 0.95);
    assertEquals(0.198, agreement.value(), 0.0005);
    assertEquals(-0.039, agreement.low(), 0.0005);
    assertEquals(0.494, agreement.high(), 0.0005);
  }

  /** The intervals once more, from the formulas of the paper and another library's distribution. */
  @ParameterizedTest
  @CsvSource({"0.90", "0.95", "0.99"})
  void intervalsAgreeWithALibrarysDistribution(double confidence) {
    for (Ratings ratings : List.of(SIX_BY_FOUR, TWENTY_BY_THREE)) {
      Ratings.MeanSquares ms = ratings.meanSquares();
      double n = ratings.targets();
      double k = ratings.raters();
      double p = 1 - (1 - confidence) / 2;
      double f = ms.between() / ms.error();
      double low = f / f(n - 1, (n - 1) * (k - 1), p);
      double high = f * f((n - 1) * (k - 1), n - 1, p);
      Estimate consistency = Intraclass.CONSISTENCY.ofOne(ratings, confidence);
      assertEquals((low - 1) / (low + k - 1), consistency.low(), 1e-10);
      assertEquals((high - 1) / (high + k - 1), consistency.high(), 1e-10);
      Estimate mean = Intraclass.CONSISTENCY.ofMean(ratings, confidence);
      assertEquals(1 - 1 / low, mean.low(), 1e-10);
      assertEquals(1 - 1 / high, mean.high(), 1e-10);
      assertAgreement(ratings, ms, n, k, p, confidence);
    }
  }

  private static void assertAgreement(
      Ratings ratings, Ratings.MeanSquares ms, double n, double k, double p, double confidence) {
    Estimate agreement = Intraclass.AGREEMENT.ofOne(ratings, confidence);
    double icc = agreement.value();
    double fj = ms.raters() / ms.error();
    double vn = (k - 1) * (n - 1) * Math.pow(k * icc * fj + n * (1 + (k - 1) * icc) - k * icc, 2);
    double vd =
        (n - 1) * k * k * icc * icc * fj * fj + Math.pow(n * (1 + (k - 1) * icc) - k * icc, 2);
    double v = vn / vd;
    double fl = f(n - 1, v, p);
    double fu = f(v, n - 1, p);
    double rest = k * ms.raters() + (k * n - k - n) * ms.error();
    assertEquals(
        n * (ms.between() - fl * ms.error()) / (fl * rest + n * ms.between()),
        agreement.low(),
        1e-10);
    assertEquals(
        n * (fu * ms.between() - ms.error()) / (rest + n * fu * ms.between()),
        agreement.high(),
        1e-10);
  }

  private static double f(double upper, double lower, double p) {
    return FDistribution.of(upper, lower).inverseCumulativeProbability(p);
  }

  @ParameterizedTest
  @EnumSource
  void neitherUnitNorOriginNorTheOrderOfTargetsAndRatersMatters(Intraclass model) {
    Random random = new Random(7);
    double[][] given = new double[9][3];
    double[][] changed = new double[9][3];
    for (int i = 0; i < 9; i++) {
      double target = random.nextGaussian() * 10;
      for (int j = 0; j < 3; j++) {
        given[i][j] = target + j * 2 + random.nextGaussian() * 3;
        changed[8 - i][2 - j] = given[i][j] * 9.80665 - 40;
      }
    }
    Estimate one = model.ofOne(new Ratings(given), 0.95);
    Estimate other = model.ofOne(new Ratings(changed), 0.95);
    assertEquals(one.value(), other.value(), 1e-12);
    assertEquals(one.low(), other.low(), 1e-10);
    assertEquals(one.high(), other.high(), 1e-10);
    assertTrue(one.low() < one.value() && one.value() < one.high());
  }

  @ParameterizedTest
  @EnumSource
  void ratersWhoAgreeWhollyHaveOneAndThoseWithoutAnySpreadNone(Intraclass model) {
    Ratings same = new Ratings(new double[][] {{1, 1}, {2, 2}, {4, 4}});
    assertEquals(new Estimate(1, 1, 1, 0.95), model.ofOne(same, 0.95));
    Ratings flat = new Ratings(new double[][] {{3, 3}, {3, 3}});
    assertThrows(ArithmeticException.class, () -> model.ofOne(flat, 0.95));
  }

  @Test
  void aConstantOffsetIsErrorForAgreementAndNoneForConsistency() {
    Ratings offset = new Ratings(new double[][] {{1, 6}, {2, 7}, {4, 9}, {7, 12}});
    assertEquals(1, Intraclass.CONSISTENCY.ofOne(offset, 0.95).value());
    assertTrue(Intraclass.AGREEMENT.ofOne(offset, 0.95).value() < 0.5);
  }

  @Test
  void tablesWithHolesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Ratings(new double[][] {{1, 2}, {1}}));
    assertThrows(
        IllegalArgumentException.class,
        () -> new Ratings(new double[][] {{1, 2}, {1, Double.NaN}}));
    assertThrows(IllegalArgumentException.class, () -> new Ratings(new double[][] {{1, 2}}));
    assertThrows(IllegalArgumentException.class, () -> new Ratings(new double[][] {{1}, {2}}));
    assertThrows(IllegalArgumentException.class, () -> Intraclass.ONE_WAY.ofOne(SIX_BY_FOUR, 1));
  }

  /** SEM is the square root of the error's mean square, when the SD is that of the model. */
  @Test
  void theErrorOfMeasurementIsTheRootOfTheErrorsMeanSquare() {
    for (Ratings ratings : List.of(SIX_BY_FOUR, TWENTY_BY_THREE)) {
      Ratings.MeanSquares ms = ratings.meanSquares();
      double k = ratings.raters();
      double sd = Math.sqrt((ms.between() + (k - 1) * ms.error()) / k);
      double icc = Intraclass.CONSISTENCY.ofOne(ratings, 0.95).value();
      assertEquals(Math.sqrt(ms.error()), MeasurementError.sem(sd, icc), 1e-12);
      double oneWay = Math.sqrt((ms.between() + (k - 1) * ms.within()) / k);
      double own = Intraclass.ONE_WAY.ofOne(ratings, 0.95).value();
      assertEquals(Math.sqrt(ms.within()), MeasurementError.sem(oneWay, own), 1e-12);
    }
  }

  /**
   * MDD 12 to 30 degrees from SEM 4 to 11: Reissner L and others. 2019. J Orthop Surg Res 14:173;
   * the SEM is printed rounded to whole degrees.
   */
  @Test
  void theDetectableChangePrintedBesideAnErrorIsWithinItsRounding() {
    assertTrue(MeasurementError.mdc95(3.5) <= 12 && 12 <= MeasurementError.mdc95(4.5));
    assertTrue(MeasurementError.mdc95(10.5) <= 30 && 30 <= MeasurementError.mdc95(11.5));
    assertEquals(1.65 * Math.sqrt(2) * 4, MeasurementError.mdc90(4), 1e-12);
  }

  @Test
  void sdIsOfAllRatingsAndAnErrorIsNeverMoreThanTheSpread() {
    assertEquals(Math.sqrt(20.0 / 3), new Ratings(new double[][] {{1, 3}, {5, 7}}).sd(), 1e-12);
    assertEquals(5, MeasurementError.sem(5, -0.2));
    assertEquals(0, MeasurementError.sem(5, 1));
    assertThrows(IllegalArgumentException.class, () -> MeasurementError.sem(-1, 0.5));
    assertThrows(IllegalArgumentException.class, () -> MeasurementError.sem(1, 1.1));
  }
}
