package styloid.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.norm.NormRow;
import styloid.model.norm.NormTable;

/** Figures printed elsewhere that the tables must agree with. */
class PublishedFactsTest {
  private static NormTable table(String name) {
    return new NormChoice().tables().get(name);
  }

  /** The abstract prints peak medians of 51 kg (men, 29 to 39) and 31 kg (women, 26 to 42). */
  @ParameterizedTest
  @CsvSource({"MALE, 51, 29, 39", "FEMALE, 31, 26, 42"})
  void thePeakMedianOfTheCentilesIsThatOfTheAbstract(String sex, int median, int from, int to) {
    List<NormRow> rows =
        table("dodds-2014").rows().stream()
            .filter(r -> r.sex().orElseThrow().name().equals(sex))
            .toList();
    BigDecimal peak =
        rows.stream().map(r -> r.centiles().get(50)).max(BigDecimal::compareTo).orElseThrow();
    assertEquals(BigDecimal.valueOf(median), peak);
    rows.stream()
        .filter(r -> r.age().min() >= from && r.age().min() <= to)
        .forEach(r -> assertEquals(peak, r.centiles().get(50), "age " + r.age()));
  }

  /** Two five-year bands average to the pooled decade, to the tenth of a pound each is printed. */
  @Test
  void fiveYearBandsOfPalmarPinchAverageToTheVerifiedDecades() {
    List<NormRow> bands = table("mathiowetz-1985").rows();
    for (NormRow decade : table("palmar-decade").rows()) {
      double mean =
          IntStream.of(decade.age().min(), decade.age().min() + 5)
              .mapToDouble(
                  age ->
                      bands.stream()
                          .filter(r -> r.keys().get("measure").equals("palmar"))
                          .filter(r -> r.sex().equals(decade.sex()))
                          .filter(r -> r.hand().letter().equals("R") && r.age().holds(age))
                          .mapToDouble(r -> r.mean().orElseThrow().doubleValue())
                          .findFirst()
                          .orElseThrow())
              .average()
              .orElseThrow();
      assertEquals(decade.mean().orElseThrow().doubleValue(), mean, 0.16, decade::toString);
    }
  }

  @Test
  void everyTableNamesItsPopulationScoreAndHands() {
    new NormChoice()
        .tables()
        .forEach(
            (name, table) -> {
              assertTrue(table.population().length() > 20, name);
              assertTrue(
                  List.of("each", "best of both").contains(table.headers().get("hands")), name);
              assertEquals(
                  NormChoice.bestOfBoth(table),
                  table.score() == NormTable.Score.MAXIMUM,
                  name + ": the better hand is scored by its largest trial");
            });
  }

  @Test
  void bySexTheRightHandOfTheNormIsTheStrongerOneInEveryBandOfGrip() {
    List<NormRow> rows = table("mathiowetz-1985").rows();
    for (NormRow right : rows) {
      if (right.keys().get("measure").equals("power") && right.hand().letter().equals("R")) {
        NormRow left =
            rows.stream()
                .filter(r -> r.keys().equals(right.keys()) && r.sex().equals(right.sex()))
                .filter(r -> r.hand().letter().equals("L") && r.age().equals(right.age()))
                .findFirst()
                .orElseThrow();
        assertTrue(
            right.mean().orElseThrow().compareTo(left.mean().orElseThrow()) > 0, right::toString);
      }
    }
  }
}
