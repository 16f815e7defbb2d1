package styloid.shell.map;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Finding;
import styloid.model.ItemKey;
import styloid.model.LimbPart;
import styloid.model.Message;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.session.OpenEvaluation;
import styloid.shell.Clinic;
import styloid.shell.map.PartState.Stage;

/** The map read from evaluations of the real tests. */
class LimbReadingTest {
  private static final TestId SCREEN = new TestId("screen");

  private static SidedPart at(String side, String part) {
    return new SidedPart(Codes.parse(LimbPart.class, part), Codes.parse(Side.class, side));
  }

  @ParameterizedTest
  @EnumSource(LimbPart.class)
  void everyPartOfBothLimbsIsTestedAndUntouchedInAFreshEvaluation(LimbPart part) {
    LimbReading fresh = LimbReading.of(new Visit().open());
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      SidedPart at = new SidedPart(part, side);
      assertFalse(fresh.index().slots(at).isEmpty());
      PartState state = fresh.state(at);
      assertEquals(Stage.UNTOUCHED, state.stage(), at::toString);
      assertFalse(state.limited() || state.notable());
    }
  }

  /** Which tests have something to say about a joint follows from their data alone. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          limb,      screen
          shoulder,  screen grading goniometry
          forearm,   screen grading goniometry
          hand,      screen grading goniometry grip
          thumb-cmc, screen grading goniometry
          thumb-ip,  screen grading goniometry
          index-mp,  screen grading goniometry
          ring-dip,  screen grading goniometry
          """)
  void testsOfAPart(String part, String tests) {
    List<String> found =
        LimbReading.of(new Visit().open()).index().slots(at("left", part)).stream()
            .map(slot -> slot.test().id().value())
            .distinct()
            .toList();
    assertEquals(List.of(tests.split(" ")), found);
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          thumb-cmc, thumb-cmc thumb-palmar-abduction thumb-radial-abduction
          thumb-mp,  thumb-mp
          index-mp,  finger-mp
          index-pip, finger-pip
          little-dip, finger-dip
          wrist,     wrist-frontal wrist-sagittal
          hand,      fingertip-to-crease opposition span
          """)
  void goniometryOfAPart(String part, String groups) {
    Set<String> found =
        LimbReading.of(new Visit().open()).index().slots(at("right", part)).stream()
            .filter(slot -> slot.test().id().value().equals("goniometry"))
            .map(slot -> slot.group().id())
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(new TreeSet<>(Set.of(groups.split(" "))), found);
  }

  @Test
  void valueOfOneDigitIsOfThatDigitAlone() {
    LimbReading read =
        LimbReading.of(new Visit().degrees("pip-flexion-active", "left", "ring", 40).open());
    assertEquals(Stage.IN_PROGRESS, read.state(at("left", "ring-pip")).stage());
    assertEquals(Stage.UNTOUCHED, read.state(at("left", "ring-dip")).stage());
    assertEquals(Stage.UNTOUCHED, read.state(at("left", "middle-pip")).stage());
    assertEquals(Stage.UNTOUCHED, read.state(at("right", "ring-pip")).stage());
  }

  @Test
  void screenOfTheFingersTogetherCountsForEach() {
    LimbReading read = LimbReading.of(new Visit().screen("pip-flexion", "right", "full").open());
    assertEquals(Stage.IN_PROGRESS, read.state(at("right", "index-pip")).stage());
    assertEquals(Stage.IN_PROGRESS, read.state(at("right", "little-pip")).stage());
    assertEquals(Stage.UNTOUCHED, read.state(at("right", "index-mp")).stage());
  }

  /** What was seen to be full is neither measured nor graded, so nothing is left. */
  @Test
  void partIsDoneWhenNothingIsPutForward() {
    Visit visit = new Visit();
    for (String motion : List.of("forearm-pronation", "forearm-supination")) {
      visit.screen(motion, "right", "full");
    }
    LimbReading read = LimbReading.of(visit.calculated());
    PartState state = read.state(at("right", "forearm"));
    assertEquals(new PartState(2, 0, 0, false, false), state);
    assertEquals(Stage.DONE, state.stage());
    assertEquals(Stage.UNTOUCHED, read.state(at("left", "forearm")).stage());
  }

  @Test
  void limitedMotionIsOutOfTheOrdinaryAndPutsMoreForward() {
    Visit visit = new Visit();
    visit.screen("forearm-pronation", "left", "full");
    visit.screen("forearm-supination", "left", "limited");
    visit.screen("forearm-supination-pain", "left", "no");
    LimbReading read = LimbReading.of(visit.calculated());
    PartState state = read.state(at("left", "forearm"));
    assertTrue(state.notable());
    assertEquals(Stage.IN_PROGRESS, state.stage());
    assertFalse(read.state(at("right", "forearm")).notable());
    assertFalse(read.state(at("left", "wrist")).notable());
  }

  @ParameterizedTest
  @CsvSource({
    "unable, true",
    "pain, true",
    "refused, false",
    "not-done, false",
    "equipment, false"
  })
  void absenceIsOutOfTheOrdinaryWhereTheLimbIsTheReason(String reason, boolean notable) {
    Visit visit = new Visit();
    visit.record(
        Visit.key("goniometry", "elbow-flexion-active", "right", "none"),
        new Absence(Codes.parse(Absence.Reason.class, reason)));
    assertEquals(notable, LimbReading.of(visit.open()).state(at("right", "elbow")).notable());
  }

  @Test
  void painIsOutOfTheOrdinary() {
    LimbReading read =
        LimbReading.of(new Visit().screen("elbow-flexion-pain", "left", "yes").open());
    assertTrue(read.state(at("left", "elbow")).notable());
    assertFalse(
        LimbReading.of(new Visit().screen("elbow-flexion-pain", "left", "no").open())
            .state(at("left", "elbow"))
            .notable());
  }

  @Test
  void gradeBelowFiveIsOutOfTheOrdinary() {
    ItemKey typed = Visit.key("grading", "elbow-extension-typed", "right", "none");
    for (String grade : List.of("4", "5")) {
      Visit visit = new Visit();
      visit.record(typed, new Choice(grade));
      assertEquals(
          grade.equals("4"),
          LimbReading.of(visit.calculated()).state(at("right", "elbow")).notable(),
          grade);
    }
  }

  @Test
  void precautionWithholdsWhatItForbidsAndIsSaidWhereItReaches() {
    Visit visit = new Visit();
    visit.limit(Precaution.Kind.NO_ACTIVE_MOTION, Region.FINGERS, "left", "index");
    LimbReading read = LimbReading.of(visit.open());
    assertEquals(Stage.WITHHELD, read.state(at("left", "index-pip")).stage());
    assertTrue(read.state(at("left", "index-pip")).limited());
    // A screen of all fingers together is withheld too; the finger's own angles are not.
    assertEquals(Stage.UNTOUCHED, read.state(at("left", "middle-pip")).stage());
    assertFalse(read.state(at("right", "index-pip")).limited());
    assertEquals(Stage.UNTOUCHED, read.state(at("right", "index-pip")).stage());
    assertEquals(1, read.limits(at("left", "index-pip")).size());
    assertTrue(read.limits(at("right", "index-pip")).isEmpty());
  }

  @Test
  void withheldStaysWithheldOnceThatIsRecorded() {
    Visit visit = new Visit();
    visit.limit(Precaution.Kind.NO_ACTIVE_MOTION, Region.ELBOW, "left", "none");
    visit.record(
        Visit.key("screen", "elbow-flexion", "left", "none"),
        new Absence(Absence.Reason.PRECAUTION));
    assertEquals(Stage.WITHHELD, LimbReading.of(visit.open()).state(at("left", "elbow")).stage());
  }

  /** What it forbids decides where a limit of the hand reaches, not the anatomy alone. */
  @Test
  void limitOfTheHandReachesTheJointsWhereItForbidsSomething() {
    Visit grip = new Visit();
    grip.limit(Precaution.Kind.NO_GRIP_OR_PINCH, Region.HAND, "left", "none");
    LimbReading read = LimbReading.of(grip.open());
    assertTrue(read.state(at("left", "hand")).limited());
    assertFalse(read.state(at("left", "index-pip")).limited());
    Visit resisted = new Visit();
    resisted.limit(Precaution.Kind.NO_RESISTANCE, Region.HAND, "left", "none");
    assertTrue(LimbReading.of(resisted.open()).state(at("left", "index-pip")).limited());
    Visit passive = new Visit();
    passive.limit(Precaution.Kind.NO_PASSIVE_MOTION, Region.HAND, "left", "none");
    assertTrue(LimbReading.of(passive.open()).state(at("left", "thumb-ip")).limited());
  }

  @Test
  void endedPrecautionReachesNothing() {
    Visit visit = new Visit();
    visit.endedLimit(Precaution.Kind.NO_ACTIVE_MOTION, Region.ELBOW, "left");
    PartState state = LimbReading.of(visit.open()).state(at("left", "elbow"));
    assertEquals(Stage.UNTOUCHED, state.stage());
    assertFalse(state.limited());
  }

  @Test
  void findingMarksThePartsItRestsOn() {
    ResultKey result =
        new ResultKey(SCREEN, new ResultId("elbow-flexion-next"), Side.LEFT, Digit.NONE);
    Finding finding =
        new Finding("rule", Message.verbatim("odd"), Side.LEFT, List.of(), List.of(result));
    LimbReading read = LimbReading.of(new Visit().found(finding));
    assertTrue(read.state(at("left", "elbow")).notable());
    assertFalse(read.state(at("right", "elbow")).notable());
    assertEquals(List.of(finding), PartSheet.of(read, at("left", "elbow")).findings());
    assertTrue(PartSheet.of(read, at("left", "wrist")).findings().isEmpty());
  }

  /** Three hundred entries, some taken back, each read on from the moment before. */
  @Test
  void laterMomentIsReadLikeAFreshOne() {
    Random random = new Random(11);
    Visit visit = new Visit();
    LimbReading reading = LimbReading.of(visit.open());
    List<String> sides = List.of("right", "left");
    List<String> motions =
        List.of("elbow-flexion", "pip-flexion", "thumb-ip-flexion", "full-fist", "mp-extension");
    List<String> answers = List.of("full", "limited", "unable");
    for (int turn = 0; turn < 300; turn++) {
      String motion = motions.get(random.nextInt(motions.size()));
      String side = sides.get(random.nextInt(2));
      switch (random.nextInt(4)) {
        case 0 -> visit.screen(motion + "-pain", side, random.nextBoolean() ? "yes" : "no");
        case 1 -> visit.takeBack(Visit.key("screen", motion, side, "none"));
        default -> visit.screen(motion, side, answers.get(random.nextInt(3)));
      }
      OpenEvaluation now =
          random.nextInt(3) == 0 ? visit.calculated() : visit.entered(reading.open());
      reading = reading.next(now);
      LimbReading fresh = LimbReading.of(now);
      for (SidedPart part : SidedPart.all()) {
        assertEquals(fresh.state(part), reading.state(part), turn + " " + part);
      }
    }
  }

  @Test
  void demoEvaluationIsReadWhole() {
    LimbReading read = LimbReading.of(Clinic.settled());
    assertEquals(Stage.IN_PROGRESS, read.state(at("left", "forearm")).stage());
    assertTrue(read.state(at("left", "forearm")).limited());
    assertTrue(read.state(at("left", "forearm")).notable());
    assertTrue(read.state(at("left", "wrist")).limited());
    assertFalse(read.state(at("right", "wrist")).limited());
    assertEquals(Stage.UNTOUCHED, read.state(at("right", "index-pip")).stage());
  }

  @Test
  void sheetTellsValuesNowAndBeforeAndWhereToGo() {
    LimbReading read = LimbReading.of(Clinic.settled());
    PartSheet sheet = PartSheet.of(read, at("left", "forearm"));
    assertEquals(1, sheet.limits().size());
    PartSheet.Step screen = sheet.steps().get(0);
    assertEquals("forearm", screen.group().id());
    PartSheet.Reading supination =
        screen.readings().stream()
            .filter(r -> r.key().item().value().equals("forearm-supination"))
            .findFirst()
            .orElseThrow();
    assertEquals(Optional.of(new Choice("limited")), supination.now().orElseThrow().value());
    assertEquals(new Choice("unable"), supination.last().orElseThrow().value());
    assertTrue(sheet.steps().stream().allMatch(s -> s.start().side() == Side.LEFT));
    assertEquals(sheet.toDo().get(0).start(), sheet.start().orElseThrow());
    assertTrue(screen.results().get(0).notable());
  }

  @Test
  void startIsTheFirstOpenPlaceOfTheDigit() {
    LimbReading read =
        LimbReading.of(new Visit().degrees("pip-extension-active", "left", "ring", 0).open());
    PartSheet sheet = PartSheet.of(read, at("left", "ring-pip"));
    ItemKey start =
        sheet.steps().stream()
            .filter(s -> s.test().id().value().equals("goniometry"))
            .findFirst()
            .orElseThrow()
            .start();
    assertEquals(Visit.key("goniometry", "pip-flexion-active", "left", "ring"), start);
  }
}
