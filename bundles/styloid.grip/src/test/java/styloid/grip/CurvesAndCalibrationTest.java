package styloid.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Side;
import styloid.model.Unit;

class CurvesAndCalibrationTest {
  private static final Unit KG = Unit.KILOGRAM_FORCE;

  private static Visit curve(String points) {
    Visit visit = new Visit();
    String[] all = points.trim().split(" ");
    for (int i = 0; i < all.length; i++) {
      visit.trials("position-" + (i + 1), Side.LEFT, KG, all[i]);
    }
    return visit;
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          30 40 38 32 25, one-peak, 2
          30 40 40 32 25, one-peak, 0
          20 25 30 35 40, rising,   5
          40 35 30 30 20, falling,  1
          30 30 30 30 30, level,    0
          30 25 30 20 10, uneven,   0
          30 40 20 25 10, uneven,   2
          """)
  void theCurveIsDescribedByShapeAndPeak(String points, String shape, int peak) {
    Visit visit = curve(points);
    assertEquals(shape, visit.choice("curve-shape", Side.LEFT));
    if (peak == 0) {
      assertEquals("why.no-single-peak", visit.reason("curve-peak", Side.LEFT));
    } else {
      assertEquals(peak, visit.number("curve-peak", Side.LEFT));
    }
  }

  @Test
  void fourPositionsAreNoCurve() {
    Visit visit = curve("30 40 38 32");
    assertTrue(visit.incomplete("curve-shape", Side.LEFT));
    assertTrue(visit.absent("position-5", Side.LEFT, 1).incomplete("curve-peak", Side.LEFT));
  }

  @Test
  void rapidExchangeIsGivenInPercentOfTheSlowGrip() {
    Visit visit =
        new Visit()
            .trials("power", Side.RIGHT, KG, "38", "40", "39")
            .trials("rapid-exchange", Side.RIGHT, KG, "30", "34", "32", "33", "31");
    assertEquals(85, visit.number("rapid-ratio", Side.RIGHT));
    assertTrue(visit.incomplete("rapid-ratio", Side.LEFT));
    assertTrue(
        visit.result("rapid-ratio", Side.RIGHT).why().steps().stream()
            .anyMatch(s -> s.key().equals("step.described")));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          2026-03-02, current
          2025-03-02, current
          2025-03-01, overdue
          2019-01-01, overdue
          """)
  void aCalibrationIsInDateForTwelveMonthsDayIncluded(String date, String state) {
    assertEquals(
        state,
        new Visit().text("grip-calibration-date", date).choice("grip-calibration", Side.UNSIDED));
  }

  @Test
  void aDateThatCannotBeReadOrLiesAheadIsSaid() {
    assertEquals(
        "why.not-a-date",
        new Visit()
            .text("pinch-calibration-date", "last May")
            .reason("pinch-calibration", Side.UNSIDED));
    assertEquals(
        "why.date-ahead",
        new Visit()
            .text("pinch-calibration-date", "2026-03-03")
            .reason("pinch-calibration", Side.UNSIDED));
    assertTrue(new Visit().incomplete("pinch-calibration", Side.UNSIDED));
  }
}
