package styloid.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.TreeMap;

/**
 * Looks for the cheapest way through all layers. First a beam keeps the most promising of all ways
 * that have come equally far; then best-first search proves that nothing is cheaper, or finds it.
 */
final class Search {
  /** Ways kept by the beam. */
  static final int BEAM = 128;

  /** The way found. */
  record Found(Way way, boolean proven) {}

  private static final Comparator<Way> CHEAPEST_FIRST =
      Comparator.comparingInt(Way::bound)
          .thenComparing(Comparator.comparingInt(Way::layer).reversed())
          .thenComparing(way -> -Long.bitCount(way.done()))
          .thenComparingInt(Way::number);

  private final Moves moves;
  private final Bounds bounds;
  private int numbered;

  Search(Moves moves) {
    this.moves = moves;
    this.bounds = new Bounds(moves);
  }

  /**
   * The cheapest way.
   *
   * @param most ways looked at before the proof is given up and the best so far returned
   */
  Found find(int start, int most) {
    return prove(start, beam(start), most);
  }

  /** A good way, not proven the best: of ways that have come equally far, only some are kept. */
  Way beam(int start) {
    Way best = null;
    TreeMap<Integer, Map<Long, Way>> byProgress = new TreeMap<>();
    collect(byProgress, moves.start(start));
    while (!byProgress.isEmpty()) {
      for (Way way : cheapest(byProgress.pollFirstEntry().getValue())) {
        if (moves.finished(way)) {
          best = best == null || way.cost() < best.cost() ? way : best;
        } else {
          follow(way).forEach(longer -> collect(byProgress, longer));
        }
      }
    }
    return best;
  }

  private void collect(TreeMap<Integer, Map<Long, Way>> byProgress, Way way) {
    byProgress
        .computeIfAbsent(moves.progress(way), k -> new LinkedHashMap<>())
        .merge(way.key(), way, (a, b) -> b.cost() < a.cost() ? b : a);
  }

  private List<Way> cheapest(Map<Long, Way> ways) {
    return ways.values().stream().map(this::bounded).sorted(CHEAPEST_FIRST).limit(BEAM).toList();
  }

  private Found prove(int start, Way good, int most) {
    HashMap<Long, Integer> costs = new HashMap<>();
    PriorityQueue<Way> open = new PriorityQueue<>(CHEAPEST_FIRST);
    open.add(start(start));
    int looked = 0;
    while (!open.isEmpty() && open.peek().bound() < good.cost()) {
      Way way = open.poll();
      if (moves.finished(way)) {
        return new Found(way, true);
      }
      if (costs.getOrDefault(way.key(), Integer.MAX_VALUE) < way.cost()) {
        continue;
      }
      if (++looked > most) {
        return new Found(good, false);
      }
      for (Way longer : follow(way)) {
        if (cheaper(costs, longer)) {
          Way bounded = bounded(longer);
          if (bounded.bound() < good.cost()) {
            open.add(bounded);
          }
        }
      }
    }
    return new Found(good, true);
  }

  private static boolean cheaper(HashMap<Long, Integer> costs, Way way) {
    Integer known = costs.get(way.key());
    if (known != null && known <= way.cost()) {
      return false;
    }
    costs.put(way.key(), way.cost());
    return true;
  }

  private Way start(int setting) {
    return bounded(moves.start(setting));
  }

  private List<Way> follow(Way way) {
    ArrayList<Way> longer = new ArrayList<>();
    for (long left = moves.candidates(way); left != 0; left &= left - 1) {
      longer.add(moves.take(way, Long.numberOfTrailingZeros(left)));
    }
    return longer;
  }

  private Way bounded(Way way) {
    return way.bounded(way.cost() + bounds.least(way), numbered++);
  }
}
