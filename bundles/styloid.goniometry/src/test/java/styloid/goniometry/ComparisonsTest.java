package styloid.goniometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Digit;
import styloid.model.Outcome;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.SourceStatus;
import styloid.model.Unit;
import styloid.spi.Texts;

class ComparisonsTest {
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # own, other, deficit
          120,  140, 20
          140,  120, -20
          140,  140, 0
          """)
  void deficitAgainstTheOtherSideIsOtherMinusThis(String own, String other, double deficit) {
    Visit visit =
        new Visit()
            .degrees("elbow-flexion-active", Side.LEFT, own)
            .degrees("elbow-flexion-active", Side.RIGHT, other);
    assertEquals(deficit, visit.number("elbow-flexion-active-side-deficit", Side.LEFT, Digit.NONE));
    assertEquals(
        deficit, -visit.number("elbow-flexion-active-side-deficit", Side.RIGHT, Digit.NONE) + 0.0);
  }

  @Test
  void deficitOfExtensionCountsFromTheOtherSidesHyperextension() {
    Visit visit =
        new Visit()
            .degrees("pip-extension-active", Side.LEFT, Digit.RING, "-30")
            .degrees("pip-extension-active", Side.RIGHT, Digit.RING, "5");
    assertEquals(35, visit.number("pip-extension-active-side-deficit", Side.LEFT, Digit.RING));
  }

  @Test
  void spanIsComparedInCentimetresWhateverWasTyped() {
    Visit visit =
        new Visit()
            .put("span", Side.LEFT, Digit.NONE, Quantity.of("185", Unit.MILLIMETRE))
            .put("span", Side.RIGHT, Digit.NONE, Quantity.of("20.0", Unit.CENTIMETRE));
    assertEquals(1.5, visit.number("span-side-deficit", Side.LEFT, Digit.NONE));
    assertEquals(-1.5, visit.number("span-side-deficit", Side.RIGHT, Digit.NONE));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # active, passive, other side's passive, error, what limits
          140, 145, 145, 5,   within-error
          139, 145, 145, 5,   active-lag
          140, 140, 145, 5,   within-error
          139, 139, 145, 5,   joint-restriction
          100, 139, 145, 5,   lag-and-restriction
          100, 140, 145, 5,   active-lag
          139, 145, 145, 10,  within-error
          139, 145, 145, 5.9, active-lag
          140, 144, 145, 0,   lag-and-restriction
          """)
  void lagAndRestrictionBeginAboveTheMeasurementError(
      String active, String passive, String other, String error, String limit) {
    Visit visit =
        new Visit()
            .involved(Side.LEFT)
            .choosing(Settings.ERROR, error)
            .degrees("elbow-flexion-active", Side.LEFT, active)
            .degrees("elbow-flexion-passive", Side.LEFT, passive)
            .degrees("elbow-flexion-passive", Side.RIGHT, other);
    assertEquals(limit, visit.choice("elbow-flexion-limit", Side.LEFT, Digit.NONE));
    assertEquals(
        Double.parseDouble(passive) - Double.parseDouble(active),
        visit.number("elbow-flexion-lag", Side.LEFT, Digit.NONE));
  }

  @Test
  void extensorLagAndFixedContractureAreToldApart() {
    Visit lag =
        new Visit()
            .degrees("pip-extension-active", Side.LEFT, Digit.RING, "-40")
            .degrees("pip-extension-passive", Side.LEFT, Digit.RING, "0");
    assertEquals("active-lag", lag.choice("pip-extension-limit", Side.LEFT, Digit.RING));
    Visit contracture =
        new Visit()
            .degrees("pip-extension-active", Side.LEFT, Digit.RING, "-40")
            .degrees("pip-extension-passive", Side.LEFT, Digit.RING, "-40");
    assertEquals(
        "joint-restriction", contracture.choice("pip-extension-limit", Side.LEFT, Digit.RING));
  }

  @Test
  void anInvolvedOtherSideIsNoComparisonForPassiveMotion() {
    Visit visit =
        new Visit()
            .involved(Side.LEFT, Side.RIGHT)
            .degrees("elbow-flexion-active", Side.LEFT, "100")
            .degrees("elbow-flexion-passive", Side.LEFT, "100")
            .degrees("elbow-flexion-passive", Side.RIGHT, "100");
    assertEquals("joint-restriction", visit.choice("elbow-flexion-limit", Side.LEFT, Digit.NONE));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # motion, active, passive, error, reason
          elbow-flexion,      140, 100, 5,   unavailable.active-beyond-passive
          shoulder-adduction, 10,  20,  5,   unavailable.no-comparison
          elbow-flexion,      100, 140, six, unavailable.error-setting
          elbow-flexion,      100, 140, 46,  unavailable.error-setting
          """)
  void whatLimitsIsLeftOpenWhenItCannotBeSaid(
      String motion, String active, String passive, String error, String reason) {
    Visit visit =
        new Visit()
            .choosing(Settings.ERROR, error)
            .degrees(motion + "-active", Side.LEFT, active)
            .degrees(motion + "-passive", Side.LEFT, passive);
    Outcome outcome = visit.result(motion + "-limit", Side.LEFT, Digit.NONE).outcome();
    assertEquals(reason, ((Outcome.Unavailable) outcome).reason().key());
  }

  @Test
  void aLagWithoutItsActiveMotionIsIncomplete() {
    Visit visit = new Visit().degrees("elbow-flexion-passive", Side.LEFT, "140");
    for (String id : List.of("elbow-flexion-lag", "elbow-flexion-limit")) {
      Outcome outcome = visit.result(id, Side.LEFT, Digit.NONE).outcome();
      assertEquals(
          List.of(Visit.key("elbow-flexion-active", Side.LEFT, Digit.NONE)),
          ((Outcome.Incomplete) outcome).missing());
    }
  }

  private static Visit earlier(String item, Digit digit, String amount) {
    return new Visit().on(LocalDate.of(2026, 2, 2)).degrees(item, Side.LEFT, digit, amount);
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # change of PIP flexion; SEM 4 to 11: MDC90 9.33 to 25.67, MDC95 11.09 to 30.49
          9.3,   within-error
          9.4,   depends-on-joint
          -9.4,  depends-on-joint
          25.6,  depends-on-joint
          25.7,  beyond-90
          30.4,  beyond-90
          30.5,  beyond-95
          -30.5, beyond-95
          0,     within-error
          """)
  void changeIsHeldAgainstTheMinimalDetectableChange(String change, String meaning) {
    double now = 50 + Double.parseDouble(change);
    Visit visit =
        new Visit()
            .after(earlier("pip-flexion-active", Digit.RING, "50"))
            .degrees("pip-flexion-active", Side.LEFT, Digit.RING, Double.toString(now));
    assertEquals(
        Double.parseDouble(change),
        visit.number("pip-flexion-active-change", Side.LEFT, Digit.RING),
        1e-9);
    assertEquals(meaning, visit.choice("pip-flexion-active-change-meaning", Side.LEFT, Digit.RING));
  }

  @Test
  void theClinicsOwnErrorReplacesThePublishedOne() {
    Visit visit =
        new Visit()
            .choosing(Settings.SEM, "2")
            .after(earlier("elbow-flexion-active", Digit.NONE, "100"))
            .degrees("elbow-flexion-active", Side.LEFT, "105.6");
    assertEquals(
        "beyond-95", visit.choice("elbow-flexion-active-change-meaning", Side.LEFT, Digit.NONE));
  }

  @ParameterizedTest
  @CsvSource({"0", "-2", "46", "two", "''"})
  void anErrorThatCannotBeIsNamedAndNotReplaced(String sem) {
    Visit visit =
        new Visit()
            .choosing(Settings.SEM, sem)
            .after(earlier("pip-flexion-active", Digit.RING, "50"))
            .degrees("pip-flexion-active", Side.LEFT, Digit.RING, "90");
    Outcome outcome =
        visit.result("pip-flexion-active-change-meaning", Side.LEFT, Digit.RING).outcome();
    assertEquals("unavailable.sem-setting", ((Outcome.Unavailable) outcome).reason().key());
  }

  @ParameterizedTest
  @CsvSource({
    "elbow-flexion, NONE",
    "forearm-supination, NONE",
    "thumb-ip-flexion, THUMB",
    "thumb-cmc-flexion, THUMB",
    "thumb-palmar-abduction, THUMB"
  })
  void aJointWithoutAPublishedErrorSaysSoInWords(String motion, Digit digit) {
    Visit visit =
        new Visit()
            .after(earlier(motion + "-active", digit, "20"))
            .degrees(motion + "-active", Side.LEFT, digit, "60");
    assertEquals(40, visit.number(motion + "-active-change", Side.LEFT, digit));
    Outcome outcome = visit.result(motion + "-active-change-meaning", Side.LEFT, digit).outcome();
    Texts texts =
        new Texts(Map.of("goniometry", Visit.module().definition().labels()), Locale.ENGLISH);
    assertEquals(
        "No published standard error is known here for this joint. The clinic can set its own"
            + " (goniometry.sem).",
        texts.text(((Outcome.Unavailable) outcome).reason()));
  }

  @ParameterizedTest
  @CsvSource({
    "A. Therapist, 54, beyond-90",
    "B. Therapist, 54, depends-on-joint",
    "A. Therapist, 64, beyond-95",
    "B. Therapist, 64, beyond-90"
  })
  void anotherExaminerWidensTheErrorOfTheShoulder(String who, String change, String meaning) {
    Visit visit =
        new Visit()
            .by(who)
            .after(earlier("shoulder-flexion-active", Digit.NONE, "60"))
            .degrees(
                "shoulder-flexion-active",
                Side.LEFT,
                Integer.toString(60 + Integer.parseInt(change)));
    assertEquals(
        meaning, visit.choice("shoulder-flexion-active-change-meaning", Side.LEFT, Digit.NONE));
  }

  @Test
  void changeSkipsAVisitWithoutAValue() {
    Visit empty = new Visit().on(LocalDate.of(2026, 2, 20));
    empty.absent("elbow-flexion-active", Side.LEFT, Digit.NONE);
    Visit visit =
        new Visit()
            .after(empty)
            .after(earlier("elbow-flexion-active", Digit.NONE, "100"))
            .degrees("elbow-flexion-active", Side.LEFT, "110");
    assertEquals(10, visit.number("elbow-flexion-active-change", Side.LEFT, Digit.NONE));
  }

  @Test
  void aFirstVisitHasNoChange() {
    Visit visit = new Visit().degrees("elbow-flexion-active", Side.LEFT, "110");
    assertTrue(visit.find("elbow-flexion-active-change", Side.LEFT, Digit.NONE).isEmpty());
  }

  @Test
  void valuesFromMemoryAreShownAsSuch() {
    Visit visit =
        new Visit()
            .degrees("pip-flexion-active", Side.LEFT, Digit.RING, "80")
            .degrees("elbow-flexion-active", Side.LEFT, "80");
    assertEquals(
        SourceStatus.MEMORY,
        visit.result("pip-flexion-active-reference-deficit", Side.LEFT, Digit.RING).why().status());
    assertEquals(
        SourceStatus.VERIFIED,
        visit
            .result("elbow-flexion-active-reference-deficit", Side.LEFT, Digit.NONE)
            .why()
            .status());
  }
}
