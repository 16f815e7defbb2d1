package styloid.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Looks for the cheapest way through all layers. First a beam keeps the most promising ways of each
 * length; then best-first search proves that nothing is cheaper, or finds it.
 */
final class Search {
  /** Ways kept by the beam. */
  static final int BEAM = 64;

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
    Way best = beam(start);
    return prove(start, best, most);
  }

  /** A good way, not proven the best. */
  Way beam(int start) {
    List<Way> level = List.of(start(start));
    Way best = null;
    while (!level.isEmpty()) {
      HashMap<Long, Way> next = new HashMap<>();
      for (Way way : level) {
        if (moves.finished(way)) {
          best = best == null || way.cost() < best.cost() ? way : best;
          continue;
        }
        for (Way longer : follow(way)) {
          next.merge(longer.key(), longer, (a, b) -> b.cost() < a.cost() ? b : a);
        }
      }
      ArrayList<Way> kept = new ArrayList<>(next.values());
      kept.sort(CHEAPEST_FIRST);
      level = kept.subList(0, Math.min(BEAM, kept.size()));
    }
    return best;
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
        if (longer.bound() < good.cost() && cheaper(costs, longer)) {
          open.add(longer);
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
    long candidates = moves.candidates(way);
    for (long left = candidates; left != 0; left &= left - 1) {
      longer.add(bounded(moves.take(way, Long.numberOfTrailingZeros(left))));
    }
    return longer;
  }

  private Way bounded(Way way) {
    return way.bounded(way.cost() + bounds.least(way), numbered++);
  }
}
