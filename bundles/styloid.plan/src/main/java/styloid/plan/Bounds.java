package styloid.plan;

import java.util.List;

/**
 * Least cost of what is left. Any way through positions is a tree that joins them, so the cheapest
 * such tree is never dearer. A way that ends near where it starts is dearer than that: closed to a
 * ring it is a tree and its longest change more. Where it ends decides how the next layer begins. A
 * joint done in one run is a detour from the way through the others.
 */
final class Bounds {
  private final Moves moves;
  private final int[][] next;
  private final Memo known = new Memo();
  private final Tree tree;

  Bounds(Moves moves) {
    this.moves = moves;
    this.tree = new Tree(moves.settings());
    List<Layer> layers = moves.layers();
    next = new int[layers.size()][];
    for (int i = layers.size() - 1; i >= 0; i--) {
      next[i] = new int[layers.get(i).size()];
      for (int group = 0; group < next[i].length && i + 1 < next.length; group++) {
        next[i][group] = least(i + 1, 0, layers.get(i).need(group));
      }
    }
  }

  /** The same places are reached by many ways and by several beams, so each is counted once. */
  int least(Way way) {
    if (moves.finished(way)) {
      return 0;
    }
    int least = known.get(way.key());
    if (least == Memo.MISSING) {
      least = least(way.layer(), way.done(), way.setting());
      known.put(way.key(), least);
    }
    return least;
  }

  private int least(int at, long done, int setting) {
    Layer layer = moves.layers().get(at);
    long left = layer.all() & ~done;
    int whole = tree(layer, left, setting);
    int end = end(layer, next[at], left, setting);
    int detours = layer.detours(done, moves.settings());
    if (detours == 0) {
      return whole + end;
    }
    int without = tree(layer, left & ~layer.untouched(done), setting);
    return Math.max(whole + end, without + detours + least(next[at], left));
  }

  private static int least(int[] next, long left) {
    int least = Integer.MAX_VALUE;
    for (long rest = left; rest != 0; rest &= rest - 1) {
      least = Math.min(least, next[Long.numberOfTrailingZeros(rest)]);
    }
    return least;
  }

  /** Least cost of ending at one of the groups left, beyond the tree that was joined last. */
  private int end(Layer layer, int[] next, long left, int setting) {
    int end = Integer.MAX_VALUE;
    int longest = tree.longest();
    long counted = setting == 0 ? 0 : joined(layer, left, setting);
    for (long rest = left; rest != 0; rest &= rest - 1) {
      int group = Long.numberOfTrailingZeros(rest);
      int ring = 0;
      if ((counted >> group & 1) != 0) {
        ring = Math.max(0, longest - moves.settings().cost(setting, layer.need(group)));
      }
      end = Math.min(end, ring + next[group]);
    }
    return end;
  }

  /** The cheapest tree over the groups left and the present setting. */
  private int tree(Layer layer, long left, int setting) {
    tree.clear();
    if (setting != 0) {
      tree.add(setting);
    }
    for (long rest = joined(layer, left, setting); rest != 0; rest &= rest - 1) {
      tree.add(layer.need(Long.numberOfTrailingZeros(rest)));
    }
    return tree.cost();
  }

  /**
   * Groups that do not mind rotation are left out where another with the same body and support is
   * joined: they would stand in for every rotation and make the tree too cheap.
   */
  private static long joined(Layer layer, long left, int setting) {
    long joined = left & ~layer.unmindful();
    for (long rest = left & layer.unmindful(); rest != 0; rest &= rest - 1) {
      int group = Long.numberOfTrailingZeros(rest);
      int need = layer.need(group);
      boolean covered =
          (layer.pairMates(group) & left) != 0 || Settings.pair(need) == Settings.pair(setting);
      if (need != 0 && !covered) {
        joined |= 1L << group;
      }
    }
    return joined;
  }
}
