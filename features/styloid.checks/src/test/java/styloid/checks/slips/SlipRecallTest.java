package styloid.checks.slips;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Floors of what the questions about slips find in 2,000 made-up evaluations with one slip each.
 * The floors are what was measured, less a little; thresholds were chosen on other seeds.
 */
class SlipRecallTest {
  private static final long FIRST_SEED = 1;
  private static final int EVALUATIONS = 2000;

  private static Measured measured;

  @BeforeAll
  static void measure() {
    measured = Measured.of(SlipBench.TESTS, FIRST_SEED, EVALUATIONS);
  }

  @Test
  void everyEvaluationHoldsOneSlip() {
    assertEquals(EVALUATIONS, measured.counts.values().stream().mapToInt(c -> c.slips).sum());
    assertTrue(measured.fields > 100_000, measured::toString);
  }

  @ParameterizedTest
  @CsvSource({"UNIT, 0.97", "TENFOLD, 0.92", "SWAPPED, 0.68", "SIDE, 0.13"})
  void slipsThatChangeAnInterpretationAreFound(Injection.Kind kind, double floor) {
    double recall = measured.counts.get(kind).recall();
    assertTrue(recall >= floor, () -> kind + " " + recall + "\n" + measured);
  }

  @ParameterizedTest
  @CsvSource({"UNIT, 0.97", "TENFOLD, 0.97", "SWAPPED, 0.85", "SIDE, 0.33"})
  void soAreThoseAnEarlierValueCanTellFromChance(Injection.Kind kind, double floor) {
    double recall = measured.counts.get(kind).tellableRecall();
    assertTrue(recall >= floor, () -> kind + " " + recall + "\n" + measured);
  }

  @Test
  void atMostFiveOfAThousandSoundFieldsAreAskedAbout() {
    assertTrue(measured.falsePerThousand() <= 5, measured::toString);
  }
}
