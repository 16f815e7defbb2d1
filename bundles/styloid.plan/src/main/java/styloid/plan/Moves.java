package styloid.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a way may go on. Two kinds of moves are never offered, since a way at least as cheap does
 * without: going on while a step needs no change, and leaving a body position that could be
 * finished (see docs/rules/test-order.md for why).
 */
final class Moves {
  private final List<Layer> layers;
  private final Settings settings;
  private final long begun;
  private final long[] laterBodies;
  private final int[] before;

  /**
   * @param begun joint whose steps in the first layer come before all others
   */
  Moves(List<Layer> layers, Settings settings, Optional<Joint> begun) {
    this.layers = layers;
    this.settings = settings;
    this.begun =
        layers.isEmpty() ? 0 : begun.map(joint -> layers.get(0).of(joint)).orElse(0L).longValue();
    laterBodies = new long[layers.size()];
    before = new int[layers.size() + 1];
    for (int i = 0; i < layers.size(); i++) {
      before[i + 1] = before[i] + layers.get(i).size();
    }
    for (int i = layers.size() - 2; i >= 0; i--) {
      laterBodies[i] = laterBodies[i + 1];
      for (int body = 1; body < Settings.BODIES; body++) {
        laterBodies[i] |= layers.get(i + 1).ofBody(body) == 0 ? 0 : 1L << body;
      }
    }
  }

  List<Layer> layers() {
    return layers;
  }

  Settings settings() {
    return settings;
  }

  boolean finished(Way way) {
    return way.layer() == layers.size();
  }

  /** How many groups a way has done in all layers. */
  int progress(Way way) {
    return before[way.layer()] + Long.bitCount(way.done());
  }

  Way start(int setting) {
    return settle(0, 0, setting, 0, null, -1, null);
  }

  /** The way once the patient is placed for a group, with all that can be done there. */
  Way take(Way way, int group) {
    return take(way, group, null);
  }

  private Way take(Way way, int group, List<List<PlanStep>> visits) {
    Layer layer = layers.get(way.layer());
    int cost = way.cost() + settings.cost(way.setting(), layer.need(group));
    int setting = Settings.after(way.setting(), layer.need(group));
    if (visits != null) {
      visits.add(new ArrayList<>());
    }
    note(layer, group, visits);
    return settle(way.layer(), way.done() | 1L << group, setting, cost, way, group, visits);
  }

  /** Does whatever needs no change, and goes on to the next layer when one is finished. */
  private Way settle(
      int from, long done, int setting, int cost, Way before, int group, List<List<PlanStep>> to) {
    int at = from;
    long now = done;
    while (at < layers.size()) {
      Layer layer = layers.get(at);
      int next = free(layer, at, now, setting);
      if (next >= 0) {
        note(layer, next, to);
        now |= 1L << next;
      } else if (now == layer.all()) {
        at++;
        now = 0;
      } else {
        break;
      }
    }
    return new Way(at, now, setting, cost, 0, 0, before, group);
  }

  /** A group that can be done as the patient is placed; -1 when there is none. */
  private int free(Layer layer, int at, long done, int setting) {
    long open = open(layer, at, done);
    long left = (open != 0 ? open : layer.all() & ~done) & layer.fitting(setting);
    for (; left != 0; left &= left - 1) {
      int group = Long.numberOfTrailingZeros(left);
      // Beginning a joint of several positions is a decision of its own.
      boolean mayBegin = open != 0 || !layer.inBlock(group);
      if (mayBegin && layer.possible(group, done)) {
        return group;
      }
    }
    return -1;
  }

  private long open(Layer layer, int at, long done) {
    long first = at == 0 ? begun & ~done : 0;
    return first != 0 ? first : layer.open(done);
  }

  /** The groups that are worth going to next. */
  long candidates(Way way) {
    Layer layer = layers.get(way.layer());
    long open = open(layer, way.layer(), way.done());
    if (open != 0) {
      return open;
    }
    return layer.ready(way.done()) & ~wasteful(layer, way);
  }

  /** The groups for which a body position would be left or entered at a time that cannot pay. */
  private long wasteful(Layer layer, Way way) {
    int from = Settings.body(way.setting());
    if (!settings.bodyOutweighs() || from == 0) {
      return 0;
    }
    long done = way.done();
    if (finishable(layer, from, done)) {
      boolean comesBack = (laterBodies[way.layer()] >> from & 1) != 0;
      if (!comesBack || postponed(layer, done, from)) {
        return ~(layer.ofBody(from) | layer.ofBody(0));
      }
    }
    long wasteful = 0;
    for (int to = 1; to < Settings.BODIES; to++) {
      long there = layer.ofBody(to);
      long others = layer.all() & ~done & ~there & ~layer.ofBody(0);
      if (to != from && others != 0 && postponed(layer, done, to, there)) {
        wasteful |= there;
      }
    }
    return wasteful;
  }

  private static boolean finishable(Layer layer, int body, long done) {
    long rest = layer.ofBody(body) & ~done;
    for (long left = rest; left != 0; left &= left - 1) {
      int group = Long.numberOfTrailingZeros(left);
      if (layer.inBlock(group) || !layer.possible(group, done)) {
        return false;
      }
    }
    return rest != 0;
  }

  /** Whether another body position was left unfinished, to end the layer with. */
  private static boolean postponed(Layer layer, long done, int current) {
    for (int body = 1; body < Settings.BODIES; body++) {
      if (body != current && postponed(layer, done, body, layer.ofBody(body))) {
        return true;
      }
    }
    return false;
  }

  private static boolean postponed(Layer layer, long done, int body, long groups) {
    return layer.simple(body) && (groups & done) != 0 && (groups & ~done) != 0;
  }

  private static void note(Layer layer, int group, List<List<PlanStep>> visits) {
    if (visits != null) {
      if (visits.isEmpty()) {
        visits.add(new ArrayList<>());
      }
      visits.get(visits.size() - 1).addAll(layer.steps(group));
    }
  }

  /** The steps of a way in order. */
  List<PlanStep> steps(Way finished, int start) {
    ArrayDeque<Integer> taken = new ArrayDeque<>();
    for (Way way = finished; way.from() != null; way = way.from()) {
      taken.push(way.group());
    }
    ArrayList<List<PlanStep>> visits = new ArrayList<>();
    Way way = settle(0, 0, start, 0, null, -1, visits);
    for (int group : taken) {
      way = take(way, group, visits);
    }
    visits.forEach(Moves::arrange);
    return visits.stream().flatMap(List::stream).toList();
  }

  /** The plain order within a visit, unless that could tear a joint's steps apart. */
  private static void arrange(List<PlanStep> visit) {
    if (visit.stream().noneMatch(step -> step.id().gravityReduced())) {
      visit.sort(PlanStep.PLAIN);
    }
  }
}
