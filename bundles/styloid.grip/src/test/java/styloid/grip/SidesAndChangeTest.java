package styloid.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Patient.Dominance;
import styloid.model.Patient.Sex;
import styloid.model.Side;
import styloid.model.Unit;

class SidesAndChangeTest {
  private static final Unit KG = Unit.KILOGRAM_FORCE;

  private static Visit hands(String right, String left) {
    return new Visit()
        .trials("power", Side.RIGHT, KG, right, right, right)
        .trials("power", Side.LEFT, KG, left, left, left);
  }

  @Test
  void theInvolvedHandIsGivenInPercentOfTheOther() {
    assertEquals(
        50, hands("20", "40").involved(Side.RIGHT).number("involved-ratio-power", Side.UNSIDED));
    assertEquals(
        200, hands("20", "40").involved(Side.LEFT).number("involved-ratio-power", Side.UNSIDED));
    assertEquals(
        "why.involved-unknown", hands("20", "40").reason("involved-ratio-power", Side.UNSIDED));
    assertEquals(
        "why.involved-both",
        hands("20", "40")
            .involved(Side.LEFT, Side.RIGHT)
            .reason("involved-ratio-power", Side.UNSIDED));
    assertEquals(
        "why.other-zero",
        hands("20", "0").involved(Side.RIGHT).reason("involved-ratio-power", Side.UNSIDED));
  }

  @Test
  void theDominantHandIsGivenInPercentOfTheOtherWithPublishedFiguresBeside() {
    Visit left = hands("20", "40").handed(Dominance.LEFT);
    assertEquals(200, left.number("dominant-ratio-power", Side.UNSIDED));
    String steps =
        left.result("dominant-ratio-power", Side.UNSIDED).why().steps().stream()
            .map(Visit.texts()::text)
            .reduce("", String::concat);
    assertTrue(steps.contains("12.72 %"), steps);
    assertTrue(steps.contains("Dominant hand (left) 40.00 kg"), steps);
    assertEquals(
        "why.dominance-unknown", hands("1", "2").reason("dominant-ratio-power", Side.UNSIDED));
    assertEquals(
        "why.dominance-either",
        hands("1", "2").handed(Dominance.EITHER).reason("dominant-ratio-power", Side.UNSIDED));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          20,    26.49, smaller, gain
          20,    26.5,  gain,    gain
          26.5,  20,    loss,    loss
          26.49, 20,    smaller, loss
          20,    26.2,  smaller, gain
          20,    26.19, smaller, smaller
          20,    20,    smaller, smaller
          """)
  void aChangeOfExactlyTheLimitReachesIt(String then, String now, String mcid, String mdc) {
    Visit visit = hands(now, "30").after(hands(then, "30").on(Visit.DAY.minusMonths(2)));
    assertEquals(mcid, visit.choice("change-mcid-power", Side.RIGHT));
    assertEquals(mdc, visit.choice("change-mdc-power", Side.RIGHT));
  }

  @Test
  void theDetectableChangeDiffersByHand() {
    Visit visit = hands("25.7", "25.7").after(hands("20", "20"));
    assertEquals("smaller", visit.choice("change-mdc-power", Side.RIGHT));
    assertEquals("gain", visit.choice("change-mdc-power", Side.LEFT));
  }

  @Test
  void theLastVisitWithAllTrialsCounts() {
    Visit first = hands("20", "20").on(Visit.DAY.minusMonths(4));
    Visit second =
        new Visit()
            .on(Visit.DAY.minusMonths(2))
            .trials("power", Side.RIGHT, KG, "24", "24")
            .absent("power", Side.RIGHT, 3)
            .trials("power", Side.LEFT, KG, "25", "25", "25");
    Visit now = hands("30", "30").after(second).after(first);
    assertEquals(10, now.number("change-power", Side.RIGHT), 1e-12);
    assertEquals(50, now.number("change-percent-power", Side.RIGHT), 1e-12);
    assertEquals(5, now.number("change-power", Side.LEFT), 1e-12);
    assertEquals("why.no-earlier", hands("30", "30").reason("change-power", Side.LEFT));
    assertEquals(
        "why.no-earlier",
        now.trials("tip", Side.LEFT, KG, "5", "5", "5").reason("change-tip", Side.LEFT));
  }

  @Test
  void unitsMayChangeBetweenVisits() {
    Visit then = new Visit().trials("tip", Side.LEFT, Unit.POUND_FORCE, "10", "10", "10");
    Visit now = new Visit().trials("tip", Side.LEFT, KG, "5", "5", "5").after(then);
    assertEquals(5 - 4.5359237, now.number("change-tip", Side.LEFT), 1e-12);
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          MALE,   60, 26.99, low,     -
          MALE,   60, 27,    not-low, -
          MALE,   65, 26,    low,     not-low
          MALE,   65, 25.99, low,     low
          FEMALE, 65, 16,    not-low, not-low
          FEMALE, 90, 15.99, low,     low
          """)
  void strengthIsLowOnlyBelowTheCutOff(Sex sex, int age, String best, String ewgsop2, String fnih) {
    Visit visit = hands("10", best).who(sex, age);
    assertEquals(ewgsop2, visit.choice("low-strength-ewgsop2", Side.UNSIDED));
    if (fnih.equals("-")) {
      assertEquals("why.too-young", visit.reason("low-strength-fnih", Side.UNSIDED));
    } else {
      assertEquals(fnih, visit.choice("low-strength-fnih", Side.UNSIDED));
    }
  }

  @Test
  void cutOffsNeedAgeAndSex() {
    assertEquals(
        "norm.why.sex-unknown",
        hands("10", "10").aged(70).reason("low-strength-ewgsop2", Side.UNSIDED));
    assertEquals(
        "norm.why.age-unknown",
        hands("10", "10").sex(Sex.MALE).reason("low-strength-ewgsop2", Side.UNSIDED));
    assertEquals(
        "why.too-young",
        hands("10", "10").who(Sex.MALE, 59).reason("low-strength-ewgsop2", Side.UNSIDED));
  }
}
