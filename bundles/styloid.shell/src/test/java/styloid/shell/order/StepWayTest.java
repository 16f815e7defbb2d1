package styloid.shell.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.plan.Plan;
import styloid.plan.PlanStep;
import styloid.plan.PlannedStep;
import styloid.plan.StepId;
import styloid.session.OpenEvaluation;
import styloid.shell.Clinic;

class StepWayTest {
  private static final OpenEvaluation OPEN = Clinic.settled();
  private static final Plan ORDER = OPEN.order().orElseThrow();
  private static final TestId SCREEN = new TestId("screen");
  private final StepWay way = new StepWay(OPEN);

  private static ItemKey screen(String item, Side side) {
    return new ItemKey(SCREEN, new ItemId(item), side, Digit.NONE, 1);
  }

  @Test
  void aStepBeginsAtItsFirstPlaceWithoutAnEntry() {
    StepId elbow = new StepId(SCREEN, "forearm", Side.LEFT, false);
    assertEquals(
        Optional.of(screen("forearm-pronation", Side.LEFT)),
        way.start(elbow),
        "supination has an entry");
    StepId wrist = new StepId(SCREEN, "wrist", Side.RIGHT, false);
    assertEquals(Optional.of(screen("wrist-extension", Side.RIGHT)), way.start(wrist));
  }

  @Test
  void aStepThatIsDoneBeginsAtItsFirstPlace() {
    StepId elbow = new StepId(SCREEN, "elbow", Side.RIGHT, false);
    assertTrue(ORDER.done().stream().map(PlanStep::id).anyMatch(elbow::equals));
    assertEquals(Optional.empty(), way.firstOpen(elbow));
    assertEquals(Optional.of(screen("elbow-flexion", Side.RIGHT)), way.start(elbow));
  }

  @Test
  void everyStepOfTheOrderHasAPlaceToBegin() {
    assertFalse(ORDER.steps().isEmpty());
    for (PlanStep step : ORDER.steps()) {
      assertTrue(way.firstOpen(step.id()).isPresent(), step.id().toString());
    }
  }

  @Test
  void sidesThatTakeTurnsAreOneStretch() {
    ItemKey right = screen("shoulder-flexion", Side.RIGHT);
    assertEquals(Optional.empty(), way.onward(right, Optional.of(right.opposite())));
  }

  @Test
  void atTheEndOfAStepTheOrderSaysWhatIsNext() {
    ItemKey last = screen("shoulder-external-rotation", Side.LEFT);
    StepId here = new StepId(SCREEN, "shoulder", Side.LEFT, false);
    StepId next =
        ORDER.steps().stream()
            .map(PlanStep::id)
            .filter(id -> !id.equals(here))
            .findFirst()
            .orElseThrow();
    assertEquals(way.firstOpen(next), way.onward(last, Optional.empty()));
    assertEquals(
        way.firstOpen(next), way.onward(last, Optional.of(screen("elbow-flexion", Side.RIGHT))));
  }

  @Test
  void aLineSaysPlaceSidePositionAndReason() {
    OrderWords words = new OrderWords(Clinic.words());
    PlannedStep first =
        ORDER.order().stream()
            .filter(p -> p.step().id().equals(new StepId(SCREEN, "wrist", Side.LEFT, false)))
            .findFirst()
            .orElseThrow();
    String line = words.line(7, first);
    assertTrue(line.startsWith("7. Wrist, left. Screen of active motion. sitting, "), line);
    assertTrue(line.contains("The involved side comes second."), line);
    assertEquals(Locale.ENGLISH.getLanguage(), Clinic.words().locale().getLanguage());
  }
}
