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
  /** Ways kept by a beam whose answer may be the last word. */
  private static final int WIDE = 256;

  /** Ways kept by a beam that only gives the proof a start. */
  private static final int NARROW = 64;

  /** How much more what is left counts than what is spent: some good ways pay early. */
  private static final List<Integer> FORESIGHT = List.of(1, 2, 4);

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
    boolean toTheEnd = most == Integer.MAX_VALUE;
    return prove(start, toTheEnd ? beam(start, 1, NARROW) : beam(start), most);
  }

  /** A good way, not proven the best. */
  Way beam(int start) {
    Way best = null;
    for (int foresight : FORESIGHT) {
      Way way = beam(start, foresight, WIDE);
      best = best == null || way.cost() < best.cost() ? way : best;
    }
    return best;
  }

  /** Of ways that have come equally far, only some are kept. */
  private Way beam(int start, int foresight, int width) {
    Way best = null;
    TreeMap<Integer, Map<Long, Way>> byProgress = new TreeMap<>();
    collect(byProgress, moves.start(start));
    while (!byProgress.isEmpty()) {
      for (Way way : cheapest(byProgress.pollFirstEntry().getValue(), foresight, width)) {
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

  private List<Way> cheapest(Map<Long, Way> ways, int foresight, int width) {
    return ways.values().stream()
        .map(this::bounded)
        .sorted(
            Comparator.<Way>comparingInt(w -> w.cost() + foresight * (w.bound() - w.cost()))
                .thenComparing(CHEAPEST_FIRST))
        .limit(width)
        .toList();
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
