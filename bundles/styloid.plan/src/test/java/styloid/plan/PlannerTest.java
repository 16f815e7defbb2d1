package styloid.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import styloid.model.Message;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.plan.PlanStep.State;
import styloid.spi.Position;
import styloid.spi.Position.Body;
import styloid.spi.Position.Rotation;
import styloid.spi.Position.Support;
import styloid.spi.Texts;

class PlannerTest {
  private static final Position SITTING_UP = position(Body.SITTING, Rotation.PALM_UP);
  private static final Position SITTING_DOWN = position(Body.SITTING, Rotation.PALM_DOWN);
  private static final Position SITTING_ANY = position(Body.SITTING, Rotation.ANY);
  private static final Position PRONE = position(Body.PRONE, Rotation.ANY);

  private final Planner planner = new Planner();

  private static Position position(Body body, Rotation rotation) {
    return new Position(body, Support.FOREARM_ON_TABLE, rotation);
  }

  private static PlanStep step(String group, Side side, Position position) {
    return Cases.step(group, group.charAt(0), side, position);
  }

  private static PlanStep with(PlanStep s, Stage stage, boolean painful, boolean reduced) {
    StepId id = new StepId(s.id().test(), s.id().group(), s.id().side(), reduced);
    return new PlanStep(
        id, s.region(), stage, s.order(), s.position(), painful, s.involved(), s.state());
  }

  private static String groups(Plan plan) {
    return String.join(" ", plan.steps().stream().map(s -> s.id().group()).toList());
  }

  private static List<String> keys(Plan plan, int place) {
    return plan.order().get(place).reasons().stream().map(Message::key).toList();
  }

  @Test
  void nothingToDoIsAPlanWithoutSteps() {
    Plan plan = planner.plan(List.of());
    assertEquals(List.of(), plan.order());
    assertEquals(Changes.NONE, plan.changes());
    assertTrue(plan.proven());
  }

  @Test
  void stepsOfOnePositionStandTogetherAndTheSavingIsCounted() {
    Plan plan =
        planner.plan(
            List.of(
                step("a", Side.RIGHT, SITTING_UP),
                step("b", Side.RIGHT, PRONE),
                step("c", Side.RIGHT, SITTING_UP),
                step("d", Side.RIGHT, SITTING_DOWN)));
    assertEquals(11, plan.cost());
    assertEquals(new Changes(1, 0, 1), plan.changes());
    assertEquals(new Changes(2, 0, 1), plan.plain());
    assertEquals(1, plan.saved().total());
  }

  @Test
  void anyRotationFitsWhateverTheForearmIsIn() {
    Plan plan =
        planner.plan(
            List.of(
                step("a", Side.RIGHT, SITTING_UP),
                step("b", Side.RIGHT, SITTING_ANY),
                step("c", Side.RIGHT, null)));
    assertEquals(Changes.NONE, plan.changes());
  }

  @Test
  void screenThenGoniometryThenResistanceEvenWhenItCostsChanges() {
    PlanStep a = step("a", Side.RIGHT, SITTING_UP);
    PlanStep b = step("b", Side.RIGHT, PRONE);
    PlanStep c = step("c", Side.RIGHT, SITTING_UP);
    Plan plan =
        planner.plan(
            List.of(
                with(a, Stage.RESISTANCE, false, false),
                with(b, Stage.GONIOMETRY, false, false),
                with(c, Stage.SCREEN, false, false)));
    assertEquals("c b a", groups(plan));
    assertEquals("reason.stage.resistance", keys(plan, 2).get(0));
  }

  @Test
  void aPainfulStepIsLastOfItsStageAndSaysSo() {
    PlanStep a = with(step("a", Side.RIGHT, SITTING_UP), Stage.RESISTANCE, true, false);
    Plan plan = planner.plan(List.of(a, step("b", Side.RIGHT, PRONE)));
    assertEquals("b a", groups(plan));
    assertTrue(keys(plan, 1).contains("reason.painful"));
  }

  @Test
  void theInvolvedSideFollowsTheOther() {
    PlanStep right = step("a", Side.RIGHT, SITTING_UP);
    PlanStep involved =
        new PlanStep(
            right.id(),
            Region.WRIST,
            Stage.RESISTANCE,
            right.order(),
            right.position(),
            false,
            true,
            State.TO_DO);
    Plan plan = planner.plan(List.of(involved, step("a", Side.LEFT, SITTING_UP)));
    assertEquals(Side.LEFT, plan.steps().get(0).id().side());
    assertEquals(List.of("reason.involved-second", "reason.same-position"), keys(plan, 1));
  }

  @Test
  void gravityReducedStepsOfAJointFollowItsOthersInOneRun() {
    List<PlanStep> steps =
        List.of(
            with(step("a", Side.RIGHT, PRONE), Stage.RESISTANCE, false, true),
            with(step("b", Side.RIGHT, SITTING_UP), Stage.RESISTANCE, false, true),
            step("c", Side.RIGHT, PRONE),
            step("d", Side.RIGHT, SITTING_UP),
            step("e", Side.LEFT, PRONE));
    Plan plan = planner.plan(steps);
    List<Boolean> reduced = plan.steps().stream().map(s -> s.id().gravityReduced()).toList();
    int first = reduced.indexOf(true);
    assertTrue(reduced.get(first + 1), groups(plan));
    assertTrue(groups(plan).indexOf('c') < 2 * first && groups(plan).indexOf('d') < 2 * first);
    assertTrue(keys(plan, first).contains("reason.gravity-reduced"));
    assertTrue(keys(plan, first + 1).contains("reason.joint-together"));
  }

  @Test
  void theStepInProgressStaysFirstWhateverIsAdded() {
    for (long seed = 0; seed < 50; seed++) {
      List<PlanStep> steps = new Cases(seed).steps(new Cases.Kind(8, 1, 3, 3, true, false));
      Plan plan = planner.plan(steps);
      StepId current = plan.steps().get((int) (seed % 8)).id();
      Plan begun = planner.replan(plan, Optional.of(current));
      assertEquals(current, begun.steps().get(0).id());
      assertEquals(List.of("reason.in-progress"), keys(begun, 0));
      ArrayList<PlanStep> more = new ArrayList<>(begun.steps());
      more.add(addition(steps));
      Plan again = planner.replan(begun, more);
      assertEquals(current, again.steps().get(0).id());
      BruteForce all = new BruteForce(more, Weights.STANDARD, true);
      assertTrue(all.allows(again.steps()), "seed " + seed);
      assertEquals(all.least(), again.cost(), "seed " + seed);
    }
  }

  /** A step of the same stage, on a side that is there already. */
  private static PlanStep addition(List<PlanStep> steps) {
    PlanStep like = steps.get(0);
    StepId id = new StepId(new TestId("test"), "added", like.id().side(), false);
    return new PlanStep(
        id,
        Region.THUMB,
        like.stage(),
        99,
        Optional.of(PRONE),
        false,
        like.involved(),
        State.TO_DO);
  }

  @Test
  void anOrderThatIsStillAsGoodIsKeptWhenAStepIsDone() {
    for (long seed = 0; seed < 30; seed++) {
      Plan plan = planner.plan(new Cases(seed).steps(new Cases.Kind(9, 2, 3, 3, true, false)));
      ArrayList<PlanStep> later = new ArrayList<>(plan.steps());
      later.set(0, later.get(0).withState(State.IN_PROGRESS));
      Plan begun = planner.replan(plan, later);
      assertEquals(ids(plan.steps()), ids(begun.steps()), "seed " + seed);
      later.set(0, later.get(0).withState(State.DONE));
      Plan done = planner.replan(begun, later);
      assertEquals(ids(plan.steps().subList(1, 9)), ids(done.steps()), "seed " + seed);
      assertEquals(plan.changes(), done.changes(), "seed " + seed);
    }
  }

  private static List<StepId> ids(List<PlanStep> steps) {
    return steps.stream().map(PlanStep::id).toList();
  }

  @Test
  void thePlanDoesNotDependOnTheOrderTheStepsAreGivenIn() {
    List<PlanStep> steps = FullEvaluation.steps(1, 0, 5);
    ArrayList<PlanStep> shuffled = new ArrayList<>(steps);
    Collections.shuffle(shuffled, new Random(1));
    assertEquals(planner.plan(steps), planner.plan(shuffled));
  }

  @Test
  void contradictoryStepsAreRefused() {
    PlanStep a = step("a", Side.RIGHT, PRONE);
    PlanStep b = step("b", Side.RIGHT, PRONE).withState(State.IN_PROGRESS);
    PlanStep c = step("c", Side.RIGHT, PRONE).withState(State.IN_PROGRESS);
    PlanStep involved =
        new PlanStep(
            c.id(), c.region(), c.stage(), c.order(), c.position(), false, true, State.TO_DO);
    assertThrows(IllegalArgumentException.class, () -> planner.plan(List.of(a, a)));
    assertThrows(IllegalArgumentException.class, () -> planner.plan(List.of(b, c)));
    assertThrows(IllegalArgumentException.class, () -> planner.plan(List.of(a, involved)));
    PlanStep elsewhere = Cases.step("a", 1, Side.LEFT, PRONE);
    assertThrows(IllegalArgumentException.class, () -> planner.plan(List.of(a, elsewhere)));
    Plan plan = planner.plan(List.of(a));
    assertThrows(IllegalArgumentException.class, () -> planner.replan(plan, Optional.of(b.id())));
  }

  @Test
  void everyReasonAndSummaryHasItsWords() {
    Texts texts = new Texts(Map.of(PlanWords.SCOPE, PlanWords.labels()), Locale.ENGLISH);
    Plan plan = planner.plan(FullEvaluation.steps(0, 30, 10));
    ArrayList<Message> messages = new ArrayList<>(List.of(plan.summary()));
    plan.order().forEach(step -> messages.addAll(step.reasons()));
    for (Message message : messages) {
      assertTrue(texts.find(message.scope(), message.key()).isPresent(), message.key());
    }
    String summary = texts.text(plan.summary());
    assertTrue(summary.contains(plan.saved().total() + " are saved"), summary);
  }

  @Test
  void weightsOfNothingAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new Weights(0, 1, 1));
    assertThrows(IllegalArgumentException.class, () -> new Weights(1, 1, 1001));
  }
}
