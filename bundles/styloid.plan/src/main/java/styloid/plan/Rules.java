package styloid.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What must come before what among the steps of one stage that are all painful or all not. */
final class Rules {
  private final Map<StepId, PlanStep> byId = new HashMap<>();
  private final Map<Joint, List<PlanStep>> againstGravity = new HashMap<>();
  private final Map<Joint, List<PlanStep>> gravityReduced = new HashMap<>();

  Rules(List<PlanStep> steps) {
    for (PlanStep step : steps) {
      byId.put(step.id(), step);
      (step.id().gravityReduced() ? gravityReduced : againstGravity)
          .computeIfAbsent(step.joint(), k -> new ArrayList<>())
          .add(step);
    }
  }

  /** The steps a step waits for: the uninvolved side's, and those against gravity of its joint. */
  List<PlanStep> before(PlanStep step) {
    ArrayList<PlanStep> before = new ArrayList<>();
    PlanStep other = byId.get(step.id().opposite());
    if (other != null && step.involved() && !other.involved()) {
      before.add(other);
    }
    if (step.id().gravityReduced()) {
      before.addAll(againstGravity.getOrDefault(step.joint(), List.of()));
    }
    return before;
  }

  /** Whether a joint has steps with gravity reduced left and all of them could be done now. */
  private boolean ready(Joint joint) {
    List<PlanStep> left = gravityReduced.getOrDefault(joint, List.of());
    return !left.isEmpty() && left.stream().allMatch(step -> before(step).isEmpty());
  }

  /** The joint of the last step, if it was one with gravity reduced and more of them can follow. */
  static Optional<Joint> begun(Optional<PlanStep> last, List<PlanStep> plain) {
    if (last.isEmpty() || plain.isEmpty() || !last.get().id().gravityReduced()) {
      return Optional.empty();
    }
    Joint joint = last.get().joint();
    Rules first = new Rules(split(plain).get(0));
    return first.ready(joint) ? Optional.of(joint) : Optional.empty();
  }

  /** Steps in plain order, cut where the stage changes or the painful ones begin. */
  static List<List<PlanStep>> split(List<PlanStep> plain) {
    ArrayList<List<PlanStep>> parts = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= plain.size(); i++) {
      if (i == plain.size() || !together(plain.get(i - 1), plain.get(i))) {
        parts.add(plain.subList(from, i));
        from = i;
      }
    }
    return parts;
  }

  private static boolean together(PlanStep one, PlanStep other) {
    return one.stage() == other.stage() && one.painful() == other.painful();
  }

  /**
   * Whether steps may be done in this order.
   *
   * @param begun a joint whose steps with gravity reduced must come first
   */
  static boolean allow(List<PlanStep> order, Optional<Joint> begun) {
    List<PlanStep> sorted = order.stream().sorted(PlanStep.PLAIN).toList();
    int from = 0;
    boolean first = true;
    for (List<PlanStep> part : split(sorted)) {
      List<PlanStep> done = order.subList(from, from + part.size());
      Optional<Joint> open = first ? begun : Optional.empty();
      if (!new HashSet<>(done).equals(new HashSet<>(part)) || !new Rules(part).keep(done, open)) {
        return false;
      }
      from += part.size();
      first = false;
    }
    return true;
  }

  private boolean keep(List<PlanStep> order, Optional<Joint> begun) {
    HashSet<PlanStep> done = new HashSet<>();
    HashMap<Joint, Integer> left = new HashMap<>();
    gravityReduced.forEach((joint, steps) -> left.put(joint, steps.size()));
    Optional<Joint> open = begun;
    for (PlanStep step : order) {
      boolean reduced = step.id().gravityReduced();
      boolean elsewhere = !reduced || !open.equals(Optional.of(step.joint()));
      if (open.isPresent() && elsewhere || !done.containsAll(before(step))) {
        return false;
      }
      done.add(step);
      if (reduced) {
        int more = left.merge(step.joint(), -1, Integer::sum);
        open = more > 0 ? Optional.of(step.joint()) : Optional.empty();
      }
    }
    return true;
  }
}
