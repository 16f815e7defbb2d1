package styloid.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The plan against every order there is. */
class LeastChangesTest {
  private static final Weights[] WEIGHTS = {
    Weights.STANDARD, new Weights(1, 1, 1), new Weights(9, 3, 1), new Weights(2, 5, 3)
  };

  private static void isBest(long seed, Cases.Kind kind, boolean remember) {
    Weights weights = WEIGHTS[(int) (seed % WEIGHTS.length)];
    List<PlanStep> steps = new Cases(seed).steps(kind);
    Plan plan = new Planner(weights).plan(steps);
    BruteForce all = new BruteForce(steps, weights, remember);
    assertTrue(all.allows(plan.steps()), () -> "seed " + seed + " breaks a rule");
    assertEquals(all.least(), plan.cost(), () -> "seed " + seed);
    assertTrue(plan.proven(), () -> "seed " + seed);
    assertTrue(plan.plainCost() >= plan.cost(), () -> "seed " + seed);
  }

  @Test
  void noOrderOfSixHundredSmallCasesIsCheaper() {
    for (long seed = 0; seed < 600; seed++) {
      int steps = 2 + (int) (seed % 6);
      isBest(seed, new Cases.Kind(steps, 1 + (int) (seed % 2), 3, 3, true, true), false);
    }
  }

  @Test
  void noOrderOfMiddlingCasesIsCheaper() {
    for (long seed = 1000; seed < 1120; seed++) {
      int steps = 9 + (int) (seed % 5);
      isBest(seed, new Cases.Kind(steps, 1, 3, 4, seed % 3 != 0, true), true);
    }
  }

  @Test
  void stagesThatFollowEachOtherArePlannedTogether() {
    for (long seed = 2000; seed < 2060; seed++) {
      isBest(seed, new Cases.Kind(13, 3, 2, 4, seed % 2 == 0, true), true);
    }
  }
}
