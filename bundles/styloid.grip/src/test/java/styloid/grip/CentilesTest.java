package styloid.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Patient.Sex;
import styloid.model.Side;
import styloid.model.SourceStatus;
import styloid.model.Unit;

class CentilesTest {
  private static Visit visit(Sex sex, int age, String best) {
    return new Visit()
        .who(sex, age)
        .choosing("grip.norm", "dodds-2014")
        .trials("power", Side.RIGHT, Unit.KILOGRAM_FORCE, "5", best, "5")
        .trials("power", Side.LEFT, Unit.KILOGRAM_FORCE, "4", "4", "4");
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          FEMALE, 30, 23.99, below-p10
          FEMALE, 30, 24,    p10-to-p25
          FEMALE, 30, 26.99, p10-to-p25
          FEMALE, 30, 27,    p25-to-p50
          FEMALE, 30, 31,    p50-to-p75
          FEMALE, 30, 35,    p75-to-p90
          FEMALE, 30, 38.99, p75-to-p90
          FEMALE, 30, 39,    p90-and-above
          MALE,   22, 31.99, below-p10
          MALE,   22, 32.4,  p10-to-p25
          MALE,   90, 16,    p10-to-p25
          MALE,   10, 22,    p90-and-above
          """)
  void aValueOnACentileBelongsToTheBandAboveIt(Sex sex, int age, String best, String band) {
    assertEquals(band, visit(sex, age, best).choice("centile-best", Side.UNSIDED));
  }

  @Test
  void betweenPrintedAgesTheLineIsTakenAndSaidSo() {
    // P10 of men is 30 at 20 and 36 at 25, so 32.4 at 22.
    assertEquals("below-p10", visit(Sex.MALE, 22, "32.39").choice("centile-best", Side.UNSIDED));
    assertEquals(
        SourceStatus.COMMON_PRACTICE,
        visit(Sex.MALE, 22, "33").result("centile-best", Side.UNSIDED).why().status());
    assertEquals(
        SourceStatus.MEMORY,
        visit(Sex.MALE, 25, "33").result("centile-best", Side.UNSIDED).why().status());
  }

  @ParameterizedTest
  @CsvSource({"MALE, 9", "MALE, 91", "FEMALE, 19", "FEMALE, 81"})
  void agesOutsideTheTableGiveNoValue(Sex sex, int age) {
    assertEquals(
        "norm.why.age-outside", visit(sex, age, "30").reason("centile-best", Side.UNSIDED));
  }

  @Test
  void anotherTableHasNoCentilesToRead() {
    Visit visit = visit(Sex.MALE, 30, "40").choosing("grip.norm", "mathiowetz-1985");
    assertEquals("norm.why.no-centiles", visit.reason("centile-best", Side.UNSIDED));
  }
}
