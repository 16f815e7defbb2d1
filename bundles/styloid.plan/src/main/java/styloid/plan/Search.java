package styloid.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.TreeMap;

/**
 * Looks for the cheapest way through all layers. First a beam keeps the most promising of all ways
 * that have come equally far; then best-first search proves that nothing is cheaper, or finds it.
 */
final class Search {
  /** Ways kept by a beam whose answer may be the last word. */
  private static final int WIDE = 128;

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
    Found found = prove(start, beam(start, 1, NARROW, null), most);
    return found.proven() ? found : new Found(widen(start, found.way()), false);
  }

  /** A good way, not proven the best. */
  Way beam(int start) {
    return widen(start, beam(start, 1, NARROW, null));
  }

  /** Looks for a better way than this one with wide beams. */
  private Way widen(int start, Way good) {
    Way best = good;
    for (int foresight : FORESIGHT) {
      best = beam(start, foresight, WIDE, best);
    }
    return best;
  }

  /**
   * Of ways that have come equally far, only some are kept, and none that cannot be cheaper than
   * the best so far.
   *
   * @param good the best so far; null when there is none
   * @return the best of those kept, or {@code good}
   */
  private Way beam(int start, int foresight, int width, Way good) {
    Way best = good;
    TreeMap<Integer, Level> byProgress = new TreeMap<>();
    collect(byProgress, moves.start(start));
    while (!byProgress.isEmpty()) {
      int most = best == null ? Integer.MAX_VALUE : best.cost();
      for (Way way :
          cheapest(byProgress.pollFirstEntry().getValue().ways, foresight, width, most)) {
        if (moves.finished(way)) {
          best = best == null || way.cost() < best.cost() ? way : best;
        } else {
          follow(way).forEach(longer -> collect(byProgress, longer));
        }
      }
    }
    return best;
  }

  private void collect(TreeMap<Integer, Level> byProgress, Way way) {
    byProgress.computeIfAbsent(moves.progress(way), k -> new Level()).add(way);
  }

  /** Ways that have come equally far; of those with the same key the cheapest. */
  private static final class Level {
    final ArrayList<Way> ways = new ArrayList<>();
    private final Memo places = new Memo();

    void add(Way way) {
      int place = places.get(way.key());
      if (place == Memo.MISSING) {
        places.put(way.key(), ways.size());
        ways.add(way);
      } else if (way.cost() < ways.get(place).cost()) {
        ways.set(place, way);
      }
    }
  }

  /** The first of the ways; equally far, they are in the same layer and have as much left. */
  private List<Way> cheapest(List<Way> ways, int foresight, int width, int most) {
    ArrayList<Way> worth = new ArrayList<>(ways.size());
    long[] order = new long[ways.size()];
    for (Way way : ways) {
      int least = bounds.least(way);
      if (way.cost() + least < most) {
        long rank = (long) (way.cost() + foresight * least) << 20 | way.cost() + least;
        order[worth.size()] = rank << 20 | worth.size();
        worth.add(way);
      }
    }
    Arrays.sort(order, 0, worth.size());
    ArrayList<Way> first = new ArrayList<>(width);
    for (int i = 0; i < Math.min(width, worth.size()); i++) {
      first.add(worth.get((int) order[i] & (1 << 20) - 1));
    }
    return first;
  }

  private Found prove(int start, Way good, int most) {
    Memo costs = new Memo();
    PriorityQueue<Way> open = new PriorityQueue<>(CHEAPEST_FIRST);
    open.add(start(start));
    int looked = 0;
    while (!open.isEmpty() && open.peek().bound() < good.cost()) {
      Way way = open.poll();
      if (moves.finished(way)) {
        return new Found(way, true);
      }
      int cheapest = costs.get(way.key());
      if (cheapest != Memo.MISSING && cheapest < way.cost()) {
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

  private static boolean cheaper(Memo costs, Way way) {
    int known = costs.get(way.key());
    if (known != Memo.MISSING && known <= way.cost()) {
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
