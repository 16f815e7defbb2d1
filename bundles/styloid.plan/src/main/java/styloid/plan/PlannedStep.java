package styloid.plan;

import java.util.List;
import java.util.Objects;
import styloid.model.Message;

/**
 * A step at its place in a plan.
 *
 * @param changes what has to be changed for it, coming from the step before; none for a step in
 *     progress
 * @param reasons why it stands here, the weightiest first; never empty
 */
public record PlannedStep(PlanStep step, Changes changes, List<Message> reasons) {
  public PlannedStep {
    Objects.requireNonNull(step, "step");
    Objects.requireNonNull(changes, "changes");
    reasons = List.copyOf(reasons);
    if (reasons.isEmpty()) {
      throw new IllegalArgumentException("no reason for " + step.id());
    }
  }
}
