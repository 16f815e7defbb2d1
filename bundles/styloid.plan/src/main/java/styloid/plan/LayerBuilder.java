package styloid.plan;

import static java.util.Comparator.comparing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gathers the steps of one stage, painful or not, into layers of position groups. */
final class LayerBuilder {
  /** Steps with one position that wait for the same other steps. */
  private record Waiting(int need, Set<PlanStep> before) {}

  /** Groups that may not be torn apart: a single one, or all of a joint with gravity reduced. */
  private record Unit(List<List<PlanStep>> groups, Set<PlanStep> before) {
    /** Whether these are a joint's steps with gravity reduced. */
    boolean isOf(Joint joint) {
      PlanStep any = groups.get(0).get(0);
      return any.id().gravityReduced() && any.joint().equals(joint);
    }
  }

  private final Rules rules;
  private final List<PlanStep> steps;
  private final Optional<Joint> begun;

  private LayerBuilder(List<PlanStep> steps, Optional<Joint> begun) {
    this.steps = steps;
    this.rules = new Rules(steps);
    this.begun = begun;
  }

  /**
   * The layers of steps still to do.
   *
   * @param plain the steps in plain order
   * @param begun joint to be finished first, in the first layer
   */
  static List<Layer> layers(List<PlanStep> plain, Optional<Joint> begun) {
    ArrayList<Layer> layers = new ArrayList<>();
    for (List<PlanStep> part : Rules.split(plain)) {
      Optional<Joint> first = layers.isEmpty() ? begun : Optional.empty();
      layers.addAll(new LayerBuilder(part, first).build());
    }
    return layers;
  }

  /** One layer, or several when there are more groups than one can hold. */
  private List<Layer> build() {
    ArrayList<Unit> units = new ArrayList<>(singles());
    units.addAll(joints());
    begun.ifPresent(joint -> units.sort(comparing(unit -> !unit.isOf(joint))));
    ArrayList<Layer> layers = new ArrayList<>();
    ArrayList<Unit> filling = new ArrayList<>();
    int filled = 0;
    for (Unit unit : units) {
      for (Unit part : parts(unit)) {
        if (filled + part.groups().size() > Layer.MOST) {
          layers.add(layer(filling));
          filling.clear();
          filled = 0;
        }
        filling.add(part);
        filled += part.groups().size();
      }
    }
    if (!filling.isEmpty()) {
      layers.add(layer(filling));
    }
    return layers;
  }

  /** Steps against gravity: first those that wait for nothing, then the others. */
  private List<Unit> singles() {
    LinkedHashMap<Waiting, List<PlanStep>> gathered = new LinkedHashMap<>();
    for (PlanStep step : steps) {
      if (!step.id().gravityReduced()) {
        Waiting key = new Waiting(Settings.of(step.position()), outside(step));
        gathered.computeIfAbsent(key, k -> new ArrayList<>()).add(step);
      }
    }
    ArrayList<Unit> free = new ArrayList<>();
    ArrayList<Unit> waiting = new ArrayList<>();
    gathered.forEach(
        (key, members) ->
            (key.before().isEmpty() ? free : waiting)
                .add(new Unit(List.of(members), key.before())));
    free.addAll(waiting);
    return free;
  }

  /** What a step waits for in other positions; in its own, the plain order sees to it. */
  private Set<PlanStep> outside(PlanStep step) {
    HashSet<PlanStep> outside = new HashSet<>();
    for (PlanStep before : rules.before(step)) {
      if (Settings.of(before.position()) == Settings.of(step.position())) {
        outside.addAll(outside(before));
      } else {
        outside.add(before);
      }
    }
    return outside;
  }

  private List<Unit> joints() {
    LinkedHashMap<Joint, List<PlanStep>> joints = new LinkedHashMap<>();
    for (PlanStep step : steps) {
      if (step.id().gravityReduced()) {
        joints.computeIfAbsent(step.joint(), k -> new ArrayList<>()).add(step);
      }
    }
    // The uninvolved limb's joints first, since the others may wait for them.
    ArrayList<Unit> units = new ArrayList<>();
    for (boolean involved : new boolean[] {false, true}) {
      for (List<PlanStep> members : joints.values()) {
        if (members.get(0).involved() == involved) {
          units.add(joint(members));
        }
      }
    }
    return units;
  }

  /** A joint once begun is finished, so none of its steps may start before all can. */
  private Unit joint(List<PlanStep> members) {
    LinkedHashMap<Integer, List<PlanStep>> byNeed = new LinkedHashMap<>();
    HashSet<PlanStep> before = new HashSet<>();
    for (PlanStep step : members) {
      byNeed.computeIfAbsent(Settings.of(step.position()), k -> new ArrayList<>()).add(step);
      before.addAll(rules.before(step));
    }
    return new Unit(List.copyOf(byNeed.values()), before);
  }

  /** A unit too large for a layer is cut; every part then fills layers of its own. */
  private static List<Unit> parts(Unit unit) {
    ArrayList<Unit> parts = new ArrayList<>();
    for (int from = 0; from < unit.groups().size(); from += Layer.MOST) {
      int to = Math.min(unit.groups().size(), from + Layer.MOST);
      parts.add(new Unit(unit.groups().subList(from, to), unit.before()));
    }
    return parts;
  }

  private static Layer layer(List<Unit> units) {
    Map<PlanStep, Integer> places = new HashMap<>();
    int place = 0;
    for (Unit unit : units) {
      for (List<PlanStep> group : unit.groups()) {
        for (PlanStep step : group) {
          places.put(step, place);
        }
        place++;
      }
    }
    ArrayList<Layer.Group> groups = new ArrayList<>();
    int blocks = 0;
    for (Unit unit : units) {
      long before = 0;
      for (PlanStep step : unit.before()) {
        // What is not in this layer was done in one before.
        before |= places.containsKey(step) ? 1L << places.get(step) : 0;
      }
      int block = unit.groups().size() > 1 ? blocks++ : Layer.NO_BLOCK;
      for (List<PlanStep> group : unit.groups()) {
        int need = Settings.of(group.get(0).position());
        groups.add(new Layer.Group(need, before, block, group));
      }
    }
    return new Layer(groups, blocks);
  }
}
