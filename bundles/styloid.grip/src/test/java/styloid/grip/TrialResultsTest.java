package styloid.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.model.Entry;
import styloid.model.Outcome;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.SourceStatus;
import styloid.model.Unit;
import styloid.testkit.SampleEvaluations;

class TrialResultsTest {
  private static final Unit KG = Unit.KILOGRAM_FORCE;
  private static final Unit LB = Unit.POUND_FORCE;

  private static Visit kg(String... readings) {
    return new Visit().trials("power", Side.RIGHT, KG, readings);
  }

  @Test
  void meanLargestSpreadAndVariationOfThree() {
    Visit visit = kg("38", "40", "42");
    assertEquals(40, visit.number("mean-power", Side.RIGHT));
    assertEquals(42, visit.number("max-power", Side.RIGHT));
    assertEquals(2, visit.number("sd-power", Side.RIGHT));
    assertEquals(5, visit.number("cv-power", Side.RIGHT));
  }

  @ParameterizedTest
  @EnumSource(Measure.class)
  void anAbsentOrMissingTrialMakesEveryFigureIncomplete(Measure measure) {
    String id = measure.code();
    Visit visit =
        new Visit()
            .who(Patient.Sex.FEMALE, 40)
            .trials(id, Side.LEFT, KG, "5", "6")
            .absent(id, Side.LEFT, 3)
            .trials(id, Side.RIGHT, KG, "5", "6");
    for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
      for (String kind :
          List.of("mean-", "max-", "sd-", "cv-", "z-", "percentile-", "band-", "change-")) {
        assertTrue(visit.incomplete(kind + id, side), kind + side);
      }
      Outcome outcome = visit.result("mean-" + id, side).outcome();
      assertEquals(List.of(Visit.key(id, side, 3)), ((Outcome.Incomplete) outcome).missing());
    }
    assertTrue(visit.incomplete("involved-ratio-" + id, Side.UNSIDED));
  }

  @Test
  void zeroReadingsHaveNoVariation() {
    Visit visit = kg("0", "0", "0");
    assertEquals(0, visit.number("mean-power", Side.RIGHT));
    assertEquals(0, visit.number("sd-power", Side.RIGHT));
    assertEquals("why.mean-zero", visit.reason("cv-power", Side.RIGHT));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          kgf,      40,    40
          [lbf_av], 100,   45.359237
          N,        98.07, 10.000357
          """)
  void forcesAreGivenInKilogramForce(String unit, String reading, double expected) {
    Unit typed = Unit.ofUcum(unit);
    Visit visit = new Visit().trials("power", Side.LEFT, typed, reading, reading, reading);
    Result mean = visit.result("mean-power", Side.LEFT);
    assertEquals(KG, mean.quantity().orElseThrow().unit());
    assertEquals(expected, visit.number("mean-power", Side.LEFT), 1e-6);
  }

  @Test
  void poundsTypedStayBesideTheResultAndAreSaidToBeConverted() {
    Visit visit = new Visit().trials("tip", Side.LEFT, LB, "12", "13", "14");
    List<String> steps =
        visit.result("mean-tip", Side.LEFT).why().steps().stream()
            .map(Visit.texts()::text)
            .toList();
    assertTrue(steps.contains("Readings as typed: 12 lb, 13 lb, 14 lb."), steps::toString);
    assertTrue(steps.contains("In the unit typed: 13.00 lb."), steps::toString);
  }

  @Test
  void mixedUnitsAreComputedRightAndPointedOut() {
    Visit visit =
        kg("40", "40").record(Visit.key("power", Side.RIGHT, 3), Quantity.of("88.18", LB));
    assertEquals((80 + 88.18 * 0.45359237) / 3, visit.number("mean-power", Side.RIGHT), 1e-12);
    assertTrue(
        visit.result("mean-power", Side.RIGHT).why().steps().stream()
            .anyMatch(s -> s.key().equals("step.mixed-units")));
    assertFalse(
        kg("40", "41", "42").result("mean-power", Side.RIGHT).why().steps().stream()
            .anyMatch(s -> s.key().equals("step.mixed-units")));
  }

  @Test
  void thereAndBackReturnsTheTypedDigits() {
    Random random = new Random(20260102);
    for (int i = 0; i < 2000; i++) {
      BigDecimal typed = BigDecimal.valueOf(random.nextInt(20_000), 2);
      for (Unit other : List.of(LB, Unit.NEWTON)) {
        Quantity back = new Quantity(typed, KG).in(other).in(KG);
        BigDecimal rounded = back.amount().setScale(2, RoundingMode.HALF_UP);
        assertEquals(typed, rounded);
        assertTrue(
            back.amount().subtract(typed).abs().compareTo(new BigDecimal("1e-29")) < 0,
            () -> "blurred: " + back);
      }
    }
  }

  @Test
  void conversionAgreesWithExactFractions() {
    BigInteger pound = new BigInteger("45359237");
    BigInteger whole = BigInteger.TEN.pow(8);
    Random random = new Random(20260103);
    for (int i = 0; i < 500; i++) {
      long hundredths = random.nextInt(30_000);
      BigDecimal exact =
          new BigDecimal(BigInteger.valueOf(hundredths).multiply(pound))
              .divide(new BigDecimal(whole.multiply(BigInteger.valueOf(100))));
      Quantity kg = new Quantity(BigDecimal.valueOf(hundredths, 2), LB).in(KG);
      assertEquals(0, exact.compareTo(kg.amount()), () -> hundredths + " hundredths of a pound");
      BigDecimal back =
          new BigDecimal(BigInteger.valueOf(hundredths).multiply(whole))
              .divide(
                  new BigDecimal(pound.multiply(BigInteger.valueOf(100))), MathContext.DECIMAL64);
      Quantity lb = new Quantity(BigDecimal.valueOf(hundredths, 2), KG).in(LB);
      assertEquals(0, back.compareTo(lb.amount().round(MathContext.DECIMAL64)));
    }
  }

  @Test
  void theFormulaOfAResultGivesItsValueInItsUnit() {
    SampleEvaluations samples = new SampleEvaluations(20260104);
    GripModule module = new GripModule();
    int seen = 0;
    for (int i = 0; i < 60; i++) {
      PatientContext context =
          samples.context(samples.patient(), samples.full(module.definition()));
      Map<String, Double> cells = new HashMap<>();
      for (Entry entry : context.snapshot().entries()) {
        entry
            .value()
            .filter(Quantity.class::isInstance)
            .ifPresent(
                v -> cells.put(entry.key().cellName(), ((Quantity) v).amount().doubleValue()));
      }
      for (Result result : module.results(context)) {
        if (result.why().formula().isPresent()) {
          double value = result.quantity().orElseThrow().amount().doubleValue();
          double sheet = Sheetlike.value(result.why().formula().get(), cells);
          assertEquals(value, sheet, 1e-10 * Math.max(1, Math.abs(value)), result.key()::toString);
          seen++;
        }
      }
    }
    assertTrue(seen > 1000, "formulas seen: " + seen);
  }

  @Test
  void factorsInFormulasAreTheExactOnes() {
    Visit visit =
        new Visit()
            .who(Patient.Sex.MALE, 30)
            .trials("power", Side.LEFT, LB, "90", "91", "92")
            .trials("power", Side.RIGHT, KG, "40", "41", "42")
            .record(Visit.key("power", Side.RIGHT, 3), Quantity.of("400", Unit.NEWTON));
    assertEquals(
        "AVERAGE(grip__power__left__1*0.45359237,grip__power__left__2*0.45359237,"
            + "grip__power__left__3*0.45359237)",
        visit.result("mean-power", Side.LEFT).why().formula().orElseThrow());
    assertEquals(
        "(AVERAGE(grip__power__right__1/0.45359237,grip__power__right__2/0.45359237,"
            + "grip__power__right__3/4.4482216152605)-121.8)/22.4",
        visit.result("z-power", Side.RIGHT).why().formula().orElseThrow());
  }

  @Test
  void theSameReadingsOnTheOtherHandGiveTheSameFigures() {
    for (String kind : List.of("mean-", "max-", "sd-", "cv-")) {
      Visit left = new Visit().trials("key", Side.LEFT, LB, "17.5", "16", "18.25");
      Visit right = new Visit().trials("key", Side.RIGHT, LB, "17.5", "16", "18.25");
      assertEquals(left.number(kind + "key", Side.LEFT), right.number(kind + "key", Side.RIGHT));
    }
  }

  @Test
  void variationShowsTheFalseAlarmsOfItsLimitAndTheWeakestStatus() {
    Result cv = kg("38", "40", "42").result("cv-power", Side.RIGHT);
    String steps = String.join(" ", cv.why().steps().stream().map(Visit.texts()::text).toList());
    assertTrue(steps.contains("97 of 100 women and 64 of 100 men"), steps);
    assertEquals(SourceStatus.MEMORY, cv.why().status());
    assertEquals("grip-consistency", cv.why().rule());
  }

  @Test
  void noWordJudgesThePerson() {
    new GripModule()
        .definition()
        .labels()
        .byLanguage()
        .values()
        .forEach(
            words ->
                words.forEach(
                    (key, text) ->
                        assertFalse(
                            text.toLowerCase(Locale.ROOT)
                                .matches(".*(effort|sincer|malinger|feign|fake|cheat).*"),
                            key)));
  }

  @Test
  void resultsAreOfEveryDeclaredKey() {
    GripModule module = new GripModule();
    Results results = new Visit().results();
    module
        .definition()
        .results()
        .forEach(
            declared ->
                declared
                    .sides()
                    .forEach(
                        side ->
                            assertTrue(
                                results.result(Say.key(declared.id().value(), side)).isPresent(),
                                declared.id() + " " + side)));
  }
}
