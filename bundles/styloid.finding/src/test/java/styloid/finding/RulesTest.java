package styloid.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Finding;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.spi.FindingRule;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.testkit.SampleEvaluations;

class RulesTest {
  private static final Side R = Side.RIGHT;
  private static final Side L = Side.LEFT;
  private static final Digit NONE = Digit.NONE;

  static List<FindingRule> rules() {
    return Examined.RULES;
  }

  @Test
  void lagsAndRestrictionsAreGatheredPerLimbWithWhatTheyRestOn() {
    Examined examined =
        new Examined()
            .involved(L)
            .degrees("pip-flexion-active", L, Digit.RING, "60")
            .degrees("pip-flexion-passive", L, Digit.RING, "98")
            .degrees("elbow-flexion-active", L, NONE, "110")
            .degrees("elbow-flexion-passive", L, NONE, "112")
            .degrees("wrist-flexion-active", L, NONE, "20")
            .degrees("wrist-flexion-passive", L, NONE, "40");
    assertEquals(
        List.of(
            "left: Active lag: the joint allows it, the muscle does not bring it about: PIP"
                + " flexion, passive (ring finger), lag 38°. Error taken: 5°. (common practice, no"
                + " source)",
            "left: Joint restriction: passive motion stays short too: Elbow flexion, passive."
                + " Error taken: 5°. (common practice, no source)",
            "left: Active lag and joint restriction together: Wrist flexion, passive, lag 20°."
                + " Error taken: 5°. (common practice, no source)"),
        examined.words(new JointLimit()));
    Finding lag = examined.found(new JointLimit()).get(0);
    assertEquals(
        "[goniometry/pip-flexion-active/left/ring/1, goniometry/pip-flexion-passive/left/ring/1]",
        lag.entries().toString());
    assertEquals("[goniometry/pip-flexion-limit/left/ring]", lag.results().toString());
  }

  @ParameterizedTest
  @CsvSource({
    // passive, error, lags
    "145, '', false",
    "145.1, '', true",
    "148, 10, false",
    "155.1, 10, true"
  })
  void aFullMotionThatLagsBeyondTheErrorIsAConflict(String passive, String error, boolean told) {
    Examined examined =
        new Examined()
            .involved(L, R)
            .screen("elbow-flexion", L, "full")
            .degrees("elbow-flexion-active", L, NONE, "140")
            .degrees("elbow-flexion-passive", L, NONE, passive);
    if (!error.isEmpty()) {
      examined.choosing("goniometry.error", error);
    }
    if (passive.equals("155.1")) {
      examined.degrees("elbow-flexion-active", L, NONE, "145");
    }
    assertEquals(told, !examined.words(new FullButShort()).isEmpty());
  }

  @Test
  void aFullMotionShortOfAnUninvolvedOtherSideIsAConflictAndOfAnInvolvedOneNot() {
    Examined examined =
        new Examined()
            .involved(L)
            .screen("pip-flexion", L, "full")
            .screen("pip-flexion", R, "full")
            .degrees("pip-flexion-active", L, Digit.INDEX, "90")
            .degrees("pip-flexion-active", R, Digit.INDEX, "100")
            .degrees("pip-flexion-active", L, Digit.MIDDLE, "93")
            .degrees("pip-flexion-active", R, Digit.MIDDLE, "100")
            .degrees("pip-flexion-active", L, Digit.RING, "110")
            .degrees("pip-flexion-active", R, Digit.RING, "100");
    assertEquals(
        List.of(
            "left: The screen calls it full, yet active motion stops short of the other side by more"
                + " than the error of two readings (7.1°): Finger PIP flexion (index finger) 10°."
                + " Look again at one of the two. (common practice, no source)"),
        examined.words(new FullButShort()));
    assertEquals(
        List.of("screen/pip-flexion/left/none/1", "goniometry/pip-flexion-active/left/index/1"),
        examined.found(new FullButShort()).get(0).entries().stream()
            .map(ItemKey::toString)
            .toList());
    assertEquals(List.of(), examined.involved(L, R).words(new FullButShort()));
  }

  @Test
  void aLimitedMotionThatIsShortIsNoConflict() {
    Examined examined =
        new Examined()
            .screen("elbow-flexion", L, "limited")
            .degrees("elbow-flexion-active", L, NONE, "90")
            .degrees("elbow-flexion-passive", L, NONE, "140");
    assertEquals(List.of(), examined.words(new FullButShort()));
  }

  @ParameterizedTest
  @CsvSource({
    "unable, 5, true",
    "unable, 4, true",
    "unable, 4-, true",
    "unable, 3+, false",
    "unable, 0, false",
    "limited, 5, false",
    "full, 5, false"
  })
  void aStrongGradeOfAMotionTheScreenCallsUnableIsAConflict(
      String screened, String grade, boolean told) {
    Examined examined =
        new Examined()
            .screen("elbow-flexion", R, screened)
            .grade("elbow-flexion-palm-up", R, NONE, grade)
            .grade("elbow-flexion-palm-up", L, NONE, "5");
    List<String> words = examined.words(new GradedButUnable());
    assertEquals(told ? 1 : 0, words.size());
    if (told) {
      assertEquals(
          "right: The screen says unable: Elbow flexion. Yet Elbow flexion, palm up (biceps): grade is "
              + grade
              + ". Look again at one of the two. (common practice, no source)",
          words.get(0));
    }
  }

  @Test
  void weakGradesInOneNerveAreShownAsAPatternAndNoDiagnosis() {
    Examined examined =
        new Examined()
            .grade("wrist-extension", R, NONE, "1")
            .grade("mp-extension", R, NONE, "0")
            .grade("thumb-ip-extension", R, NONE, "2")
            .grade("wrist-flexion", R, NONE, "5")
            .grade("finger-adduction", R, NONE, "5")
            .grade("shoulder-abduction", R, NONE, "5")
            .grade("elbow-flexion-palm-up", R, NONE, "5");
    List<String> words = examined.words(new WeakPattern());
    assertTrue(
        words
            .get(0)
            .contains(
                "Radial nerve with branches: median grade; Posterior interosseous nerve: median"
                    + " grade 1, of 3 motions graded; 4 motions"),
        words::toString);
    assertTrue(words.get(1).contains("Root C7: median grade 1, of 4 motions"), words::toString);
    assertEquals(2, words.size());
    assertTrue(words.get(0).contains("no diagnosis"), words::toString);
    assertTrue(words.stream().noneMatch(w -> w.contains("Ulnar") || w.contains("Median nerve")));
    assertTrue(words.stream().allMatch(w -> w.startsWith("right: ")));
  }

  @ParameterizedTest
  @CsvSource({
    // grades of wrist extension, MP extension, wrist flexion, finger adduction, shoulder abduction
    "1, 5, 5, 5, 5", // one weak motion is no pattern
    "1, 0, 1, 1, 2", // weak everywhere is none either
    "1, 5, 5, 1, 5", // nor is weak in two nerves
    "4, 4-, 5, 5, 5" // none is weak
  })
  void fewScatteredOrNoWeakGradesAreNoPattern(
      String extension, String mp, String flexion, String adduction, String shoulder) {
    Examined examined = new Examined();
    String[] motions = {
      "wrist-extension", "mp-extension", "wrist-flexion", "finger-adduction", "shoulder-abduction"
    };
    String[] grades = {extension, mp, flexion, adduction, shoulder};
    for (int i = 0; i < motions.length; i++) {
      examined.grade(motions[i], R, NONE, grades[i]);
    }
    assertEquals(List.of(), examined.words(new WeakPattern()));
  }

  private static Examined flexors(String pipGrade) {
    Examined examined = new Examined().grip(L, "18").grip(R, "60");
    for (Digit digit : List.of(Digit.INDEX, Digit.MIDDLE, Digit.RING, Digit.LITTLE)) {
      examined.grade("pip-flexion", L, digit, digit == Digit.RING ? pipGrade : "5");
      examined.grade("pip-flexion", R, digit, "5");
    }
    return examined;
  }

  @Test
  void lowGripWithFullFingerFlexorsIsTold() {
    List<String> words = flexors("5").words(new GripLow());
    assertEquals(1, words.size(), words::toString);
    assertTrue(
        words.get(0).startsWith("left: Grip is far below the norm (more than 2 SD), z -3"),
        words::toString);
    assertTrue(words.get(0).contains(" (verified), although "), words::toString);
    assertTrue(words.get(0).contains("all 4 graded finger flexors are 5"), words::toString);
    assertEquals(List.of(), flexors("4").words(new GripLow()));
    assertEquals(List.of(), new Examined().grip(L, "18").words(new GripLow()));
  }

  @Test
  void painfulMotionsNobodyMeasuredAreNamedOnceMeasuringHasBegun() {
    Examined examined =
        new Examined()
            .screen("elbow-flexion", L, "limited")
            .screen("elbow-flexion-pain", L, "yes")
            .screen("wrist-flexion", L, "full")
            .screen("wrist-flexion-pain", L, "yes")
            .screen("wrist-extension", L, "limited")
            .screen("wrist-extension-pain", L, "yes")
            .screen("wrist-extension-decision", L, "drop")
            .screen("forearm-pronation", L, "limited")
            .screen("forearm-pronation-pain", L, "no")
            .screen("full-fist-pain", L, "yes");
    assertEquals(List.of(), examined.words(new PainNotMeasured()));
    examined.degrees("elbow-flexion-active", L, NONE, "90");
    assertEquals(
        List.of(
            "left: Painful in the screen and not measured: Wrist flexion. (common practice, no"
                + " source)"),
        examined.words(new PainNotMeasured()));
    examined.absent("wrist-flexion-active", L, NONE);
    assertEquals(List.of(), examined.words(new PainNotMeasured()));
  }

  /** Names of goniometry's own motions, so that none is missed when one is added. */
  @Test
  void everyMotionBothTestsKnowCanBeNotMeasured() {
    TestDefinition screen = Examined.MODULES.get(0).definition();
    TestDefinition goniometry = Examined.MODULES.get(1).definition();
    for (styloid.model.Item item : screen.items()) {
      String motion = item.id().value();
      boolean measured = goniometry.item(new styloid.model.ItemId(motion + "-active")).isPresent();
      Examined examined =
          new Examined()
              .screen(motion + "-pain", L, "yes")
              .degrees("shoulder-extension-active", L, NONE, "30");
      boolean isMotion = screen.item(new styloid.model.ItemId(motion + "-pain")).isPresent();
      if (isMotion && !motion.equals("shoulder-extension")) {
        assertEquals(measured, !examined.found(new PainNotMeasured()).isEmpty(), motion);
      }
    }
  }

  private static PatientContext sample(SampleEvaluations samples, double fill) {
    ArrayList<Entry> entries = new ArrayList<>();
    for (TestModule module : Examined.MODULES) {
      entries.addAll(samples.snapshot(module.definition(), fill).entries());
    }
    return Examined.calculated(samples.context(samples.patient(), Snapshot.of(entries)));
  }

  /** On seeded evaluations: never a fault, the same twice, resting only on what is there. */
  @ParameterizedTest
  @MethodSource("rules")
  void findingsRestOnEntriesAndResultsThatAreThere(FindingRule rule) {
    SampleEvaluations samples = new SampleEvaluations(11);
    for (int i = 0; i < 60; i++) {
      PatientContext context = sample(samples, i % 6 / 5.0);
      List<Finding> found = Examined.found(rule, context);
      assertEquals(found, Examined.found(rule, context));
      assertEquals(found.size(), new HashSet<>(found).size());
      for (Finding finding : found) {
        assertEquals(rule.id(), finding.rule());
        assertTrue(finding.side() != Side.UNSIDED);
        for (ItemKey entry : finding.entries()) {
          assertTrue(context.snapshot().entry(entry).isPresent(), entry::toString);
        }
        for (ResultKey result : finding.results()) {
          assertTrue(
              context.results().result(result).flatMap(Result::value).isPresent()
                  || result.result().value().endsWith("-next"),
              result::toString);
        }
        String words = Examined.texts().text(finding.text());
        assertFalse(words.contains("{") || words.contains("item.") || words.contains("result."));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("rules")
  void swappingSidesSwapsExactlyTheFindings(FindingRule rule) {
    SampleEvaluations samples = new SampleEvaluations(12);
    for (int i = 0; i < 30; i++) {
      PatientContext one = sample(samples, 0.5);
      PatientContext other =
          Examined.calculated(
              new PatientContext(
                  SampleEvaluations.swapped(one.patient()),
                  one.evaluation(),
                  List.of(),
                  SampleEvaluations.swapped(one.snapshot()),
                  styloid.model.Results.empty(),
                  List.of()));
      assertEquals(count(rule, one, R), count(rule, other, L));
      assertEquals(count(rule, one, L), count(rule, other, R));
    }
  }

  private static long count(FindingRule rule, PatientContext context, Side side) {
    return Examined.found(rule, context).stream().filter(f -> f.side() == side).count();
  }

  @ParameterizedTest
  @MethodSource("rules")
  void nothingRecordedOrNothingButAbsencesGivesNoFinding(FindingRule rule) {
    assertEquals(List.of(), new Examined().found(rule));
    SampleEvaluations samples = new SampleEvaluations(13);
    ArrayList<Entry> absent = new ArrayList<>();
    for (TestModule module : Examined.MODULES) {
      absent.addAll(samples.absent(module.definition()).entries());
    }
    PatientContext context =
        Examined.calculated(samples.context(samples.patient(), Snapshot.of(absent)));
    assertEquals(List.of(), Examined.found(rule, context));
  }

  @Test
  void everyRuleHasAnIdOfItsOwnAndAPageThatNamesItsSource() throws Exception {
    TreeSet<String> ids = new TreeSet<>();
    for (FindingRule rule : Examined.RULES) {
      assertTrue(ids.add(rule.id()), rule.id());
      Path page = Path.of("..", "..", "docs", "rules", rule.id() + ".md");
      assertTrue(Files.readString(page).contains("common practice, no source"), rule.id());
    }
  }
}
