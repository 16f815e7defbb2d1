package styloid.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plans of more positions than can be tried one by one. */
class LargePlansTest {
  private static Search search(List<PlanStep> steps) {
    List<PlanStep> plain = steps.stream().sorted(PlanStep.PLAIN).toList();
    List<Layer> layers = LayerBuilder.layers(plain, Optional.empty());
    return new Search(new Moves(layers, new Settings(Weights.STANDARD), Optional.empty()));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # positions, bodies, supports
          14, 2, 5
          20, 1, 6
          20, 3, 4
          20, 5, 6
          28, 4, 5
          40, 5, 6
          """)
  void theUnprovenAnswerIsWithinTwoPercentOfTheLeast(int positions, int bodies, int supports) {
    for (long seed = 0; seed < 8; seed++) {
      List<PlanStep> steps = new Cases(seed).positions(positions, bodies, supports);
      Search.Found least = search(steps).find(0, Integer.MAX_VALUE);
      int quick = search(steps).beam(0).cost();
      assertTrue(least.proven());
      assertTrue(
          quick >= least.way().cost() && quick * 50 <= least.way().cost() * 51,
          quick + " against " + least.way().cost() + ", seed " + seed);
    }
  }

  @ParameterizedTest
  @CsvSource({"0, 10", "30, 0", "30, 20"})
  void theUnprovenAnswerForAFullEvaluationIsWithinTwoPercentToo(int reduced, int painful) {
    int proven = 0;
    for (long seed = 0; seed < 5; seed++) {
      List<PlanStep> steps = FullEvaluation.steps(seed, reduced, painful);
      Search.Found least = search(steps).find(0, 40_000);
      int quick = search(steps).beam(0).cost();
      if (least.proven()) {
        proven++;
        assertTrue(quick * 50 <= least.way().cost() * 51, quick + " vs " + least.way().cost());
      }
      assertTrue(quick >= least.way().cost());
    }
    assertTrue(proven > 0, "nothing to compare with");
  }

  @Test
  void theFullEvaluationIsProvenAndSavesMostOfTheChanges() {
    Plan plan = new Planner().plan(FullEvaluation.steps(0, 0, 0));
    assertTrue(plan.proven());
    assertEquals(27, plan.changes().total());
    assertEquals(68, plan.plain().total());
  }

  @Test
  void twentyPositionsOfAStageAreAlwaysProven() {
    for (long seed = 50; seed < 60; seed++) {
      assertTrue(new Planner().plan(new Cases(seed).positions(20, 5, 6)).proven());
    }
  }

  @Test
  void aSearchThatIsCutShortSaysSoAndStillAnswers() {
    List<PlanStep> steps = new Cases(7).positions(40, 5, 6);
    Search.Found found = search(steps).find(0, 1);
    assertFalse(found.proven());
    assertTrue(found.way().cost() > 0);
  }

  @Test
  void moreGroupsThanALayerHoldsAreStillPlannedUnderTheRules() {
    List<PlanStep> steps = new Cases(3).positions(100, 5, 6);
    Plan plan = new Planner().plan(steps);
    assertEquals(100, plan.order().size());
    assertTrue(Rules.allow(plan.steps(), Optional.empty()));
    assertTrue(plan.cost() <= plan.plainCost());
    assertFalse(plan.proven());
  }

  @Test
  void manyJointsWithGravityReducedKeepTheRules() {
    Cases.Kind kind = new Cases.Kind(60, 3, 5, 6, true, true);
    for (long seed = 0; seed < 4; seed++) {
      List<PlanStep> steps = new Cases(seed).steps(kind);
      Plan plan = new Planner().plan(steps);
      assertTrue(new BruteForce(steps, Weights.STANDARD, false).allows(plan.steps()));
      assertTrue(plan.cost() <= plan.plainCost());
    }
  }
}
