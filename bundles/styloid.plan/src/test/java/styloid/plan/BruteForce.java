package styloid.plan;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.plan.PlanStep.State;
import styloid.spi.Position;
import styloid.spi.Position.Rotation;

/**
 * The least cost of any order, by trying all of them; the rules are written down anew here, step by
 * step, so that a mistake in the planner's is found.
 */
final class BruteForce {
  private static final int NONE = Integer.MAX_VALUE;

  private final PlanStep[] steps;
  private final Weights weights;
  private final Map<List<Object>, Integer> remembered = new HashMap<>();
  private final boolean remember;

  /**
   * @param remember whether to remember the cost of what is left from the same situation, which
   *     makes larger cases possible
   */
  BruteForce(List<PlanStep> steps, Weights weights, boolean remember) {
    this.steps = steps.stream().filter(s -> s.state() != State.DONE).toArray(PlanStep[]::new);
    this.weights = weights;
    this.remember = remember;
  }

  int least() {
    for (int i = 0; i < steps.length; i++) {
      if (steps[i].state() == State.IN_PROGRESS) {
        return least(1L << i, i, true, place(new Object[3], steps[i]));
      }
    }
    return least(0, -1, false, new Object[3]);
  }

  /** Whether an order, begun with the step in progress, breaks no rule. */
  boolean allows(List<PlanStep> order) {
    long done = 0;
    int last = -1;
    boolean begun = false;
    for (PlanStep step : order) {
      int index = List.of(steps).indexOf(step);
      if (step.state() == State.IN_PROGRESS) {
        if (done != 0) {
          return false;
        }
        begun = true;
      } else {
        if (!allowed(done, last, begun, index)) {
          return false;
        }
        begun = false;
      }
      done |= 1L << index;
      last = index;
    }
    return Long.bitCount(done) == steps.length;
  }

  private int least(long done, int last, boolean begun, Object[] placed) {
    if (Long.bitCount(done) == steps.length) {
      return 0;
    }
    List<Object> key = Arrays.asList(done, last, placed[0], placed[1], placed[2]);
    if (remember && remembered.containsKey(key)) {
      return remembered.get(key);
    }
    int best = NONE;
    for (int i = 0; i < steps.length; i++) {
      if ((done >> i & 1) == 0 && allowed(done, last, begun, i)) {
        int rest = least(done | 1L << i, i, false, place(placed, steps[i]));
        if (rest != NONE) {
          best = Math.min(best, rest + cost(placed, steps[i]));
        }
      }
    }
    if (remember) {
      remembered.put(key, best);
    }
    return best;
  }

  private boolean allowed(long done, int last, boolean begun, int next) {
    PlanStep step = steps[next];
    for (int i = 0; i < steps.length; i++) {
      if ((done >> i & 1) == 0 && i != next && mustComeFirst(steps[i], step)) {
        return false;
      }
    }
    if (last < 0 || !steps[last].id().gravityReduced()) {
      return true;
    }
    return sameJoint(steps[last], step) && step.id().gravityReduced()
        || !mustGoOn(done, steps[last], begun);
  }

  private static boolean sameJoint(PlanStep one, PlanStep other) {
    return one.region() == other.region() && one.id().side() == other.id().side();
  }

  private static boolean mustComeFirst(PlanStep first, PlanStep step) {
    if (first.stage() != step.stage()) {
      return first.stage().compareTo(step.stage()) < 0;
    }
    if (first.painful() != step.painful()) {
      return step.painful();
    }
    boolean otherSide =
        first.id().group().equals(step.id().group())
            && first.id().gravityReduced() == step.id().gravityReduced();
    return otherSide && !first.involved() && step.involved()
        || step.id().gravityReduced() && !first.id().gravityReduced() && sameJoint(first, step);
  }

  /** Whether the joint of the last step has gravity-reduced steps that have to follow at once. */
  private boolean mustGoOn(long done, PlanStep last, boolean begun) {
    boolean more = false;
    for (int i = 0; i < steps.length; i++) {
      PlanStep step = steps[i];
      boolean left = (done >> i & 1) == 0 && step.id().gravityReduced() && sameJoint(step, last);
      if (left && begun) {
        // After a step in progress they follow only if each could be done now.
        if (isFirstPart(done, step)) {
          if (waits(done, step)) {
            return false;
          }
          more = true;
        }
      } else if (left) {
        more |= step.stage() == last.stage() && step.painful() == last.painful();
      }
    }
    return more;
  }

  private boolean isFirstPart(long done, PlanStep step) {
    for (int i = 0; i < steps.length; i++) {
      boolean earlier =
          steps[i].stage().compareTo(step.stage()) < 0
              || steps[i].stage() == step.stage() && !steps[i].painful() && step.painful();
      if ((done >> i & 1) == 0 && earlier) {
        return false;
      }
    }
    return true;
  }

  private boolean waits(long done, PlanStep step) {
    for (int i = 0; i < steps.length; i++) {
      if ((done >> i & 1) == 0 && steps[i] != step && mustComeFirst(steps[i], step)) {
        return true;
      }
    }
    return false;
  }

  private int cost(Object[] placed, PlanStep step) {
    Optional<Position> position = step.position();
    if (position.isEmpty()) {
      return 0;
    }
    Position to = position.get();
    return (changed(placed[0], to.body()) ? weights.body() : 0)
        + (changed(placed[1], to.support()) ? weights.support() : 0)
        + (to.rotation() != Rotation.ANY && changed(placed[2], to.rotation())
            ? weights.rotation()
            : 0);
  }

  private static boolean changed(Object from, Object to) {
    return from != null && from != to;
  }

  private static Object[] place(Object[] placed, PlanStep step) {
    if (step.position().isEmpty()) {
      return placed;
    }
    Position to = step.position().get();
    Object rotation = to.rotation() == Rotation.ANY ? placed[2] : to.rotation();
    return new Object[] {to.body(), to.support(), rotation};
  }
}
