package styloid.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static styloid.model.Condition.is;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Condition;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.plan.PlanStep.State;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.Pose;
import styloid.spi.Position;
import styloid.spi.Setting;
import styloid.spi.TestDefinition;

class EvaluationStepsTest {
  private static final TestId ID = new TestId("strength");
  private static final Position UP =
      new Position(Position.Body.SITTING, Position.Support.FREE, Position.Rotation.MID);
  private static final Position REDUCED =
      new Position(Position.Body.SUPINE, Position.Support.HELD, Position.Rotation.MID);
  private static final ItemKind RANGE = ItemKind.Choices.of("full", "part");
  private static final StepId RIGHT = new StepId(ID, "bend", Side.RIGHT, false);
  private static final StepId RIGHT_REDUCED = new StepId(ID, "bend", Side.RIGHT, true);

  private final ArrayList<Entry> entries = new ArrayList<>();
  private final ArrayList<Precaution> precautions = new ArrayList<>();
  private Map<String, String> choices = Map.of();

  private static TestDefinition strength() {
    return test(
        ID,
        Item.bothSides("bend-range", RANGE, Demand.ACTIVE_MOTION),
        Item.bothSides("bend-hold", RANGE, Demand.RESISTANCE).askedWhen(is("bend-range", "full")),
        Item.bothSides("bend-reduced", ItemKind.Choices.of("full", "none"), Demand.ACTIVE_MOTION)
            .askedWhen(is("bend-range", "part")),
        Item.bothSides("bend-felt", ItemKind.Choices.of("yes", "no"), Demand.ACTIVE_MOTION)
            .askedWhen(is("bend-reduced", "none")),
        Item.bothSides("bend-note", new ItemKind.Words(10), Demand.NONE).asOptional());
  }

  private static TestDefinition test(TestId id, Item... items) {
    return test(id, List.of(), items);
  }

  private static TestDefinition test(TestId id, List<Setting> settings, Item... items) {
    Guide guide =
        new Guide(Optional.of(UP), Optional.of(REDUCED), List.of(), Pose.neutral(), List.of());
    Group group =
        new Group(
            "bend",
            Region.ELBOW,
            Set.of(Region.ELBOW),
            List.of(items),
            Group.Walk.SIDE_BY_SIDE,
            Group.Layout.LIST,
            List.of(),
            guide);
    return new TestDefinition(
        id,
        "1",
        1,
        List.of(group),
        List.of(),
        List.of(),
        List.of(),
        Set.of(),
        new Labels(Map.of("en", Map.of())),
        Optional.empty(),
        List.of(),
        settings);
  }

  private void record(TestId test, String item, Side side, Value value) {
    ItemKey key = new ItemKey(test, new ItemId(item), side, Digit.NONE, 1);
    entries.add(
        new Entry(
            new EntryId(new UUID(0, entries.size())),
            key,
            Optional.of(value),
            Instant.EPOCH,
            new TherapistId("t"),
            false));
  }

  private PatientContext context() {
    PatientId patient = new PatientId(new UUID(1, 1));
    return new PatientContext(
        new Patient(
            patient,
            "1",
            "Made Up",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Set.of(Side.RIGHT),
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        new Evaluation(
            new EvaluationId(new UUID(1, 2)),
            patient,
            LocalDate.EPOCH,
            new TherapistId("t"),
            Evaluation.State.DRAFT,
            Map.of(),
            choices),
        precautions,
        Snapshot.of(entries),
        Results.empty(),
        List.of());
  }

  private List<PlanStep> steps(TestDefinition... tests) {
    return EvaluationSteps.of(List.of(tests), context(), Optional.empty(), id -> true);
  }

  private Optional<PlanStep> step(StepId id, TestDefinition... tests) {
    return steps(tests).stream().filter(s -> s.id().equals(id)).findFirst();
  }

  @Test
  void atFirstEachSideIsToDoAgainstGravityOnly() {
    List<PlanStep> steps = steps(strength());
    assertEquals(List.of(RIGHT, RIGHT.opposite()), steps.stream().map(PlanStep::id).toList());
    assertEquals(Optional.of(UP), steps.get(0).position());
    assertEquals(Stage.RESISTANCE, steps.get(0).stage());
    assertTrue(steps.get(0).involved());
    assertFalse(steps.get(1).involved());
  }

  @Test
  void gravityReducedIsToDoOnceTheMotionFellShort() {
    record(ID, "bend-range", Side.RIGHT, new Choice("part"));
    assertEquals(State.DONE, step(RIGHT, strength()).orElseThrow().state());
    PlanStep reduced = step(RIGHT_REDUCED, strength()).orElseThrow();
    assertEquals(State.TO_DO, reduced.state());
    assertEquals(Optional.of(REDUCED), reduced.position());
    assertTrue(step(RIGHT_REDUCED.opposite(), strength()).isEmpty());
  }

  @Test
  void gravityReducedIsToDoOnlyUnderTheSettingThatAsksForIt() {
    Setting scheme = new Setting(ID + ".scheme", List.of("whole", "fine"), "whole");
    TestDefinition test =
        test(
            ID,
            List.of(scheme),
            Item.bothSides("bend-range", RANGE, Demand.ACTIVE_MOTION),
            Item.bothSides("bend-reduced", RANGE, Demand.ACTIVE_MOTION)
                .askedWhen(Condition.all(is("bend-range", "part"), scheme.is("whole"))));
    record(ID, "bend-range", Side.RIGHT, new Choice("part"));
    assertTrue(step(RIGHT_REDUCED, test).isPresent());
    choices = Map.of(scheme.key(), "fine");
    assertTrue(step(RIGHT_REDUCED, test).isEmpty());
    assertEquals(State.DONE, step(RIGHT, test).orElseThrow().state());
  }

  @Test
  void whatTheReducedMotionLeadsToIsDoneInItsPosition() {
    record(ID, "bend-range", Side.RIGHT, new Choice("part"));
    record(ID, "bend-reduced", Side.RIGHT, new Choice("none"));
    assertEquals(State.DONE, step(RIGHT, strength()).orElseThrow().state());
    assertEquals(State.TO_DO, step(RIGHT_REDUCED, strength()).orElseThrow().state());
    record(ID, "bend-felt", Side.RIGHT, new Choice("yes"));
    assertEquals(State.DONE, step(RIGHT_REDUCED, strength()).orElseThrow().state());
  }

  @Test
  void anAbsenceIsAnEntry() {
    record(ID, "bend-range", Side.RIGHT, new Absence(Absence.Reason.REFUSED));
    assertEquals(State.DONE, step(RIGHT, strength()).orElseThrow().state());
  }

  @Test
  void whatAPrecautionWithholdsIsLeftOut() {
    precautions.add(
        new Precaution(
            Precaution.Kind.NO_ACTIVE_MOTION,
            Region.ELBOW,
            Side.RIGHT,
            Digit.NONE,
            Optional.empty(),
            Optional.empty(),
            "surgeon",
            ""));
    assertTrue(step(RIGHT, strength()).isEmpty());
    assertTrue(step(RIGHT.opposite(), strength()).isPresent());
  }

  @Test
  void onlyTheWithheldPartIsLeftOut() {
    precautions.add(
        new Precaution(
            Precaution.Kind.NO_RESISTANCE,
            Region.ELBOW,
            Side.RIGHT,
            Digit.NONE,
            Optional.empty(),
            Optional.empty(),
            "surgeon",
            ""));
    assertEquals(State.TO_DO, step(RIGHT, strength()).orElseThrow().state());
    record(ID, "bend-range", Side.RIGHT, new Choice("full"));
    assertEquals(State.DONE, step(RIGHT, strength()).orElseThrow().state());
  }

  @Test
  void painFoundInTheScreenMarksTheMotionInEveryTestOnThatSideOnly() {
    TestId screen = new TestId("screen");
    TestDefinition looked =
        test(
            screen,
            Item.bothSides("bend", RANGE, Demand.ACTIVE_MOTION),
            Item.bothSides("bend-pain", ItemKind.Choices.of("no", "yes"), Demand.NONE));
    record(screen, "bend-pain", Side.RIGHT, new Choice("yes"));
    record(screen, "bend-pain", Side.LEFT, new Choice("no"));
    assertTrue(step(RIGHT, looked, strength()).orElseThrow().painful());
    assertFalse(step(RIGHT.opposite(), looked, strength()).orElseThrow().painful());
  }

  @Test
  void theStageIsThatOfWhatIsHardestOnTheLimb() {
    ItemKind degrees = ItemKind.Number.of(Unit.DEGREE, 0, 0, 150, 180, 0);
    Item angle = Item.bothSides("angle", degrees, Demand.ACTIVE_MOTION);
    Item grip = Item.bothSides("squeeze", RANGE, Demand.GRIP_OR_PINCH);
    Item look = Item.bothSides("look", RANGE, Demand.ACTIVE_MOTION);
    assertEquals(Stage.SCREEN, EvaluationSteps.stage(test(ID, look)));
    assertEquals(Stage.GONIOMETRY, EvaluationSteps.stage(test(ID, look, angle)));
    assertEquals(Stage.RESISTANCE, EvaluationSteps.stage(test(ID, look, angle, grip)));
  }

  @Test
  void whatIsNotWantedIsLeftOutAndTheStepUnderWayIsKept() {
    record(ID, "bend-range", Side.RIGHT, new Choice("part"));
    List<PlanStep> steps =
        EvaluationSteps.of(
            List.of(strength()),
            context(),
            Optional.of(RIGHT),
            id -> id.side() == Side.RIGHT && !id.gravityReduced());
    assertEquals(1, steps.size());
    assertEquals(State.IN_PROGRESS, steps.get(0).state());
  }

  @Test
  void theStepUnderWayStaysEvenWhenItIsNotWanted() {
    List<PlanStep> steps =
        EvaluationSteps.of(List.of(strength()), context(), Optional.of(RIGHT), id -> false);
    assertEquals(List.of(RIGHT), steps.stream().map(PlanStep::id).toList());
  }

  @Test
  void everyKeyBelongsToAStep() {
    assertEquals(Optional.of(RIGHT), stepOf("bend-range"));
    assertEquals(Optional.of(RIGHT_REDUCED), stepOf("bend-reduced"));
    assertEquals(Optional.of(RIGHT_REDUCED), stepOf("bend-felt"));
    assertEquals(Optional.empty(), stepOf("unknown"));
  }

  private static Optional<StepId> stepOf(String item) {
    ItemKey key = new ItemKey(ID, new ItemId(item), Side.RIGHT, Digit.NONE, 1);
    return EvaluationSteps.stepOf(strength(), key);
  }
}
