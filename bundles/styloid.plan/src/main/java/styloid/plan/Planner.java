package styloid.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import styloid.model.Side;
import styloid.plan.PlanStep.State;

/**
 * Plans the order of steps with the least cost of changes, under the rules of
 * docs/rules/test-order.md: screen, then goniometry, then resistance; painful steps last in each;
 * the involved side second; gravity-reduced steps of a joint in one run after its others. Pure and
 * deterministic: the same steps, in whatever order they are given, make the same plan.
 */
public final class Planner {
  /** Up to so many position groups, no order is cheaper than the plan. */
  public static final int EXACT_GROUPS = 20;

  /** Beyond that, ways looked at for a proof: where no stage has more, and where one has. */
  static final int LONG = 4_000;

  static final int SHORT = 500;

  private static final int MOST_KEPT = 8;

  private final Settings settings;
  private final Weights weights;

  public Planner(Weights weights) {
    this.weights = Objects.requireNonNull(weights, "weights");
    this.settings = new Settings(weights);
  }

  /** A planner with the standard weights. */
  public Planner() {
    this(Weights.STANDARD);
  }

  /**
   * A plan for these steps.
   *
   * @throws IllegalArgumentException when a step stands twice, more than one is in progress, a side
   *     is involved in one step and not in another, or a group's region or order differs by side
   */
  public Plan plan(List<PlanStep> steps) {
    check(steps);
    Optional<PlanStep> current = current(steps);
    Placement placed = Placement.UNKNOWN.after(current.flatMap(PlanStep::position));
    return plan(steps, placed, current, List.of());
  }

  /**
   * The plan brought up to date: steps added, gone, done, or turned painful. The step in progress
   * stays first. The old order is kept as far as it is as cheap as any other.
   *
   * @param steps all steps as they are now
   */
  public Plan replan(Plan plan, List<PlanStep> steps) {
    check(steps);
    Optional<PlanStep> current = current(steps);
    Optional<PlanStep> last = current.or(plan::last);
    Placement placed = plan.placed().after(current.flatMap(PlanStep::position));
    return plan(steps, placed, last, plan.steps().stream().map(PlanStep::id).toList());
  }

  /**
   * The plan with another step in progress, or none.
   *
   * @throws IllegalArgumentException when the plan has no such step
   */
  public Plan replan(Plan plan, Optional<StepId> inProgress) {
    ArrayList<PlanStep> steps = new ArrayList<>(plan.done());
    for (PlanStep step : plan.steps()) {
      boolean current = inProgress.equals(Optional.of(step.id()));
      steps.add(step.withState(current ? State.IN_PROGRESS : State.TO_DO));
    }
    if (inProgress.isPresent() && current(steps).isEmpty()) {
      throw new IllegalArgumentException("not in the plan: " + inProgress.get());
    }
    return replan(plan, steps);
  }

  private Plan plan(
      List<PlanStep> steps, Placement placed, Optional<PlanStep> last, List<StepId> old) {
    List<PlanStep> sorted = steps.stream().sorted(PlanStep.PLAIN).toList();
    List<PlanStep> todo = in(sorted, State.TO_DO);
    Optional<Joint> begun = Rules.begun(last, todo);
    List<PlanStep> plain = plain(todo, begun);
    Moves moves = new Moves(LayerBuilder.layers(todo, begun), settings, begun);
    int start = Settings.of(placed);
    Search.Found found = new Search(moves).find(start, limit(moves.layers()));
    List<PlanStep> best = moves.steps(found.way(), start);
    List<PlanStep> order =
        new ArrayList<>(keep(todo, old, begun, placed, found.way().cost()).orElse(best));
    List<PlanStep> current = in(sorted, State.IN_PROGRESS);
    order.addAll(0, current);
    return new Plan(
        in(sorted, State.DONE),
        new Reasons(order, placed).explain(),
        placed,
        Reasons.changes(order, placed),
        Reasons.changes(plain, placed),
        weights,
        found.proven() && moves.layers().size() == Rules.split(todo).size(),
        last);
  }

  private static int limit(List<Layer> layers) {
    int groups = layers.stream().mapToInt(Layer::size).sum();
    int most = layers.stream().mapToInt(Layer::size).max().orElse(0);
    return groups <= EXACT_GROUPS ? Integer.MAX_VALUE : most <= EXACT_GROUPS ? LONG : SHORT;
  }

  private static List<PlanStep> in(List<PlanStep> steps, State state) {
    return steps.stream().filter(step -> step.state() == state).toList();
  }

  private static Optional<PlanStep> current(List<PlanStep> steps) {
    return in(steps, State.IN_PROGRESS).stream().findFirst();
  }

  /** The plain order, with a joint already begun finished first, as it must be in any order. */
  private static List<PlanStep> plain(List<PlanStep> todo, Optional<Joint> begun) {
    if (begun.isEmpty()) {
      return todo;
    }
    int first = Rules.split(todo).get(0).size();
    ArrayList<PlanStep> plain = new ArrayList<>(todo);
    plain
        .subList(0, first)
        .sort(
            Comparator.comparing(s -> !s.id().gravityReduced() || !s.joint().equals(begun.get())));
    return plain;
  }

  /** The old order with new steps put where they cost least, if it is as cheap as the best. */
  private Optional<List<PlanStep>> keep(
      List<PlanStep> todo, List<StepId> old, Optional<Joint> begun, Placement placed, int best) {
    HashMap<StepId, PlanStep> left = new HashMap<>();
    todo.forEach(step -> left.put(step.id(), step));
    ArrayList<PlanStep> order = new ArrayList<>();
    for (StepId id : old) {
      PlanStep step = left.remove(id);
      if (step != null) {
        order.add(step);
      }
    }
    if (left.size() > MOST_KEPT || order.isEmpty() || !Rules.allow(order, begun)) {
      return Optional.empty();
    }
    for (PlanStep added : todo) {
      if (left.containsKey(added.id()) && !insert(order, added, begun, placed)) {
        return Optional.empty();
      }
    }
    boolean asCheap = weights.of(Reasons.changes(order, placed)) <= best;
    return asCheap ? Optional.of(order) : Optional.empty();
  }

  private boolean insert(
      ArrayList<PlanStep> order, PlanStep added, Optional<Joint> begun, Placement placed) {
    record Place(int index, int cost) {}
    List<Place> places =
        IntStream.rangeClosed(0, order.size())
            .mapToObj(
                i -> {
                  order.add(i, added);
                  int cost = weights.of(Reasons.changes(order, placed));
                  order.remove(i);
                  return new Place(i, cost);
                })
            .sorted(Comparator.comparingInt(Place::cost))
            .toList();
    for (Place place : places) {
      order.add(place.index(), added);
      if (Rules.allow(order, begun)) {
        return true;
      }
      order.remove(place.index());
    }
    return false;
  }

  private static List<Object> group(PlanStep step) {
    return List.of(step.id().test(), step.id().group());
  }

  private static void check(List<PlanStep> steps) {
    HashSet<StepId> ids = new HashSet<>();
    HashMap<Side, Boolean> involved = new HashMap<>();
    HashMap<List<Object>, List<Object>> places = new HashMap<>();
    for (PlanStep step : steps) {
      if (!ids.add(step.id())) {
        throw new IllegalArgumentException("stands twice: " + step.id());
      }
      List<Object> place = List.of(step.region(), step.order());
      if (!place.equals(places.merge(group(step), place, (first, second) -> first))) {
        throw new IllegalArgumentException("region and order differ by side: " + step.id());
      }
      Boolean known = involved.putIfAbsent(step.id().side(), step.involved());
      if (known != null && known != step.involved()) {
        throw new IllegalArgumentException(
            "the side is involved in one step and not in another: " + step.id());
      }
    }
    if (in(steps, State.IN_PROGRESS).size() > 1) {
      throw new IllegalArgumentException("more than one step is in progress");
    }
  }
}
