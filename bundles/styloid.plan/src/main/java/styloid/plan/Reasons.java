package styloid.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Message;
import styloid.spi.Position;
import styloid.spi.Position.Rotation;

/** Goes through an order and says of each step what it changes and why it stands there. */
final class Reasons {
  private final List<PlanStep> order;
  private final Set<StepId> before = new HashSet<>();
  private Placement placed;

  Reasons(List<PlanStep> order, Placement placed) {
    this.order = order;
    this.placed = placed;
  }

  List<PlannedStep> explain() {
    ArrayList<PlannedStep> planned = new ArrayList<>();
    for (int i = 0; i < order.size(); i++) {
      PlanStep step = order.get(i);
      Changes changes = placed.changesTo(step.position());
      planned.add(new PlannedStep(step, changes, reasons(i)));
      placed = placed.after(step.position());
      before.add(step.id());
    }
    return planned;
  }

  /** All changes of an order. */
  static Changes changes(List<PlanStep> order, Placement from) {
    Changes sum = Changes.NONE;
    Placement placed = from;
    for (PlanStep step : order) {
      sum = sum.plus(placed.changesTo(step.position()));
      placed = placed.after(step.position());
    }
    return sum;
  }

  private List<Message> reasons(int place) {
    PlanStep step = order.get(place);
    ArrayList<Message> reasons = new ArrayList<>();
    if (step.state() == PlanStep.State.IN_PROGRESS) {
      return List.of(PlanWords.message("reason.in-progress"));
    }
    Optional<PlanStep> last = place == 0 ? Optional.empty() : Optional.of(order.get(place - 1));
    boolean opens = last.filter(l -> l.stage() == step.stage()).isEmpty();
    if (opens && last.isPresent()) {
      reasons.add(PlanWords.message("reason.stage." + step.stage().code()));
    }
    if (step.painful()) {
      reasons.add(PlanWords.message("reason.painful"));
    }
    if (step.id().gravityReduced()) {
      boolean together = last.filter(l -> sameRun(l, step)).isPresent();
      reasons.add(PlanWords.message(together ? "reason.joint-together" : "reason.gravity-reduced"));
    }
    if (step.involved() && before.contains(step.id().opposite())) {
      reasons.add(PlanWords.message("reason.involved-second"));
    }
    reasons.addAll(position(step));
    return reasons;
  }

  private static boolean sameRun(PlanStep last, PlanStep step) {
    return last.id().gravityReduced() && last.joint().equals(step.joint());
  }

  private List<Message> position(PlanStep step) {
    if (step.position().isEmpty()) {
      return List.of(PlanWords.message("reason.any-position"));
    }
    if (placed.equals(Placement.UNKNOWN)) {
      return List.of(PlanWords.message("reason.first"));
    }
    Changes changes = placed.changesTo(step.position());
    if (changes.equals(Changes.NONE)) {
      return List.of(PlanWords.message("reason.same-position"));
    }
    ArrayList<Message> messages = new ArrayList<>();
    messages.add(PlanWords.message("reason.fewest-changes"));
    Position to = step.position().get();
    if (changes.body() > 0) {
      messages.add(PlanWords.message("change.body", to.body()));
    }
    if (changes.support() > 0) {
      messages.add(PlanWords.message("change.support", to.support()));
    }
    if (changes.rotation() > 0 && to.rotation() != Rotation.ANY) {
      messages.add(PlanWords.message("change.rotation", to.rotation()));
    }
    return messages;
  }
}
