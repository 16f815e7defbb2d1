package styloid.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import styloid.model.Message;

/**
 * The order of the steps still to do.
 *
 * @param done steps that are done, in plain order
 * @param order the step in progress, if any, then those to do
 * @param placed how the patient is placed now, before the first change of this plan
 * @param changes all changes still to come
 * @param plain the changes the plain order (proximal to distal, under the same rules) would need
 * @param weights what the order was chosen by
 * @param proven whether no order costs less; else the order is good but a better one may exist
 * @param last the step in progress, or the one that was in progress last
 */
public record Plan(
    List<PlanStep> done,
    List<PlannedStep> order,
    Placement placed,
    Changes changes,
    Changes plain,
    Weights weights,
    boolean proven,
    Optional<PlanStep> last) {

  public Plan {
    done = List.copyOf(done);
    order = List.copyOf(order);
    Objects.requireNonNull(placed, "placed");
    Objects.requireNonNull(changes, "changes");
    Objects.requireNonNull(plain, "plain");
    Objects.requireNonNull(weights, "weights");
    Objects.requireNonNull(last, "last");
  }

  /**
   * Changes the plan saves against the plain order. One kind may be below zero when it buys fewer
   * changes of a weightier kind; their weighted sum never is.
   */
  public Changes saved() {
    return plain.minus(changes);
  }

  /** What the changes cost under the weights. */
  public int cost() {
    return weights.of(changes);
  }

  /** What the plain order would cost under the weights; never less than {@link #cost}. */
  public int plainCost() {
    return weights.of(plain);
  }

  /** The first step not yet begun. */
  public Optional<PlanStep> next() {
    return steps().stream().filter(s -> s.state() == PlanStep.State.TO_DO).findFirst();
  }

  /** The steps in order. */
  public List<PlanStep> steps() {
    return order.stream().map(PlannedStep::step).toList();
  }

  /** The plan in a sentence: its changes, those of the plain order, and how many are saved. */
  public Message summary() {
    Changes saved = saved();
    return PlanWords.message(
        saved.total() > 0 ? "summary.saves" : "summary",
        changes.total(),
        changes.body(),
        changes.support(),
        changes.rotation(),
        plain.total(),
        saved.total());
  }
}
