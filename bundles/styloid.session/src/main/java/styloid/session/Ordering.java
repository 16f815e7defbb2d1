package styloid.session;

import java.util.List;
import java.util.Optional;
import styloid.model.Evaluation;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.plan.EvaluationSteps;
import styloid.plan.Plan;
import styloid.plan.PlanStep;
import styloid.plan.Planner;
import styloid.plan.PutForward;
import styloid.plan.StepId;
import styloid.spi.TestDefinition;

/** Keeps the order of the steps still to do up to date with what is recorded. */
final class Ordering {
  private final Planner planner = new Planner();
  private final ModuleBook book;

  Ordering(ModuleBook book) {
    this.book = book;
  }

  /** A plan with the steps it was made from. */
  record Ordered(List<PlanStep> steps, Plan plan) {}

  /** The step of a key, if a module at hand has it. */
  Optional<StepId> stepOf(Optional<ItemKey> key) {
    return key.flatMap(
        k ->
            book.definitions().stream()
                .filter(test -> test.id().equals(k.test()))
                .findFirst()
                .flatMap(test -> EvaluationSteps.stepOf(test, k)));
  }

  /**
   * Puts the steps of a desk in order, one call at a time for one desk. Most entries change no
   * step; those cost no planning.
   *
   * @return whether the order is another one now
   */
  boolean update(Desk desk) {
    Optional<Ordered> before = desk.order();
    PatientContext context = desk.context();
    if (context.evaluation().state() == Evaluation.State.SIGNED) {
      desk.order(Optional.empty());
      return before.isPresent();
    }
    List<TestDefinition> tests = book.definitions();
    PutForward wanted = PutForward.of(tests, context.results());
    List<PlanStep> steps = EvaluationSteps.of(tests, context, desk.atWork(), wanted);
    if (before.filter(b -> b.steps().equals(steps)).isPresent()) {
      return false;
    }
    Plan plan =
        before.map(b -> planner.replan(b.plan(), steps)).orElseGet(() -> planner.plan(steps));
    desk.order(Optional.of(new Ordered(steps, plan)));
    return true;
  }
}
