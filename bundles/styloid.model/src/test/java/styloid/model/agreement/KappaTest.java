package styloid.model.agreement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published examples: see kappa_worked.csv. */
class KappaTest {
  private static final List<Weights> KINDS =
      List.of(Weights.UNWEIGHTED, Weights.LINEAR, Weights.QUADRATIC);

  private static double[][] table(String rows) {
    return Stream.of(rows.split(" / "))
        .map(row -> Stream.of(row.split(" ")).mapToDouble(Double::parseDouble).toArray())
        .toArray(double[][]::new);
  }

  private static Weights weights(String words) {
    return switch (words) {
      case "unweighted" -> Weights.UNWEIGHTED;
      case "linear" -> Weights.LINEAR;
      case "quadratic" -> Weights.QUADRATIC;
      default -> {
        double[][] own = table(words.replace("disagreement weights ", ""));
        yield (row, column) -> own[row][column];
      }
    };
  }

  @Test
  void everyPublishedKappaIsReproducedToItsLastDigit() {
    List<List<String>> rows = Published.rows("kappa_worked.csv");
    assertEquals(15, rows.size());
    for (List<String> row : rows) {
      double kappa = Kappa.of(table(row.get(1)), weights(row.get(2))).value();
      for (String printed : row.subList(3, 5)) {
        if (!printed.isEmpty()) {
          BigDecimal digits = new BigDecimal(printed);
          BigDecimal own = BigDecimal.valueOf(kappa).setScale(digits.scale(), RoundingMode.HALF_UP);
          assertEquals(digits, own, row.toString());
        }
      }
    }
  }

  /** Standard error and 95 % interval as printed beside the first two examples. */
  @ParameterizedTest
  @CsvSource({"unweighted, 0.1380, 0.2137, 0.7547", "linear, 0.1457, 0.1845, 0.7558"})
  void errorAndIntervalAreAsPrinted(String kind, double error, double low, double high) {
    Kappa kappa = Kappa.of(table("0 4 1 / 0 8 0 / 0 1 5"), weights(kind));
    assertEquals(error, kappa.standardError(), 0.00005);
    assertEquals(low, kappa.interval(0.95).low(), 0.00005);
    assertEquals(high, kappa.interval(0.95).high(), 0.00005);
  }

  @Test
  void scoresOfTwoRatersGiveThePublishedTableAndItsKappa() {
    double[][] table = new double[6][6];
    for (double[] scores : Published.numbers("agreement_rater_scores.csv", 2, 3)) {
      table[(int) scores[0] - 1][(int) scores[1] - 1]++;
    }
    assertEquals(-0.006289, Kappa.of(table, Weights.UNWEIGHTED).value(), 5e-7);
    assertEquals(0.126214, Kappa.of(table, Weights.LINEAR).value(), 5e-7);
    assertEquals(0.229798, Kappa.of(table, Weights.QUADRATIC).value(), 5e-7);
  }

  @Test
  void swappingRatersOrMultiplyingTheCountsLeavesTheValue() {
    double[][] table = table("46 0 0 / 6 32 6 / 0 0 10");
    double[][] swapped = new double[3][3];
    double[][] fourfold = new double[3][3];
    for (int i = 0; i < 3; i++) {
      for (int j = 0; j < 3; j++) {
        swapped[j][i] = table[i][j];
        fourfold[i][j] = 4 * table[i][j];
      }
    }
    for (Weights kind : KINDS) {
      Kappa one = Kappa.of(table, kind);
      assertEquals(one.value(), Kappa.of(swapped, kind).value(), 1e-12);
      assertEquals(one.standardError(), Kappa.of(swapped, kind).standardError(), 1e-12);
      assertEquals(one.value(), Kappa.of(fourfold, kind).value(), 1e-12);
      assertEquals(
          one.standardError() / 2, Kappa.of(fourfold, kind).standardError(), 1e-12, "half");
    }
  }

  @Test
  void wholeAgreementIsOneWithoutError() {
    for (Weights kind : KINDS) {
      Kappa kappa = Kappa.of(table("3 0 / 0 4"), kind);
      assertEquals(1, kappa.value(), 1e-12);
      assertTrue(kappa.standardError() < 1e-7);
      assertTrue(kappa.interval(0.95).high() <= 1);
    }
  }

  @Test
  void tablesWithoutAKappaSaySo() {
    assertThrows(ArithmeticException.class, () -> Kappa.of(table("5 0 / 0 0"), Weights.LINEAR));
    assertThrows(ArithmeticException.class, () -> Kappa.of(table("0 0 / 0 0"), Weights.LINEAR));
    assertThrows(IllegalArgumentException.class, () -> Kappa.of(table("1 2 / 3"), Weights.LINEAR));
    assertThrows(
        IllegalArgumentException.class, () -> Kappa.of(table("1 -2 / 3 4"), Weights.LINEAR));
    assertThrows(IllegalArgumentException.class, () -> Kappa.of(table("1"), Weights.LINEAR));
  }
}
