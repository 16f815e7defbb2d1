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
  private final int[] near = new int[Layer.MOST];
  private final int[] needs = new int[Layer.MOST];
  private int longest;

  Bounds(Moves moves) {
    this.moves = moves;
    List<Layer> layers = moves.layers();
    next = new int[layers.size()][];
    for (int i = layers.size() - 1; i >= 0; i--) {
      next[i] = new int[layers.get(i).size()];
      for (int group = 0; group < next[i].length && i + 1 < next.length; group++) {
        next[i][group] = least(i + 1, 0, layers.get(i).need(group));
      }
    }
  }

  int least(Way way) {
    return moves.finished(way) ? 0 : least(way.layer(), way.done(), way.setting());
  }

  private int least(int at, long done, int setting) {
    Layer layer = moves.layers().get(at);
    long left = layer.all() & ~done;
    int tree = tree(layer, left, setting);
    int end = end(layer, next[at], left, setting);
    int detours = layer.detours(done, moves.settings());
    if (detours == 0) {
      return tree + end;
    }
    int without = tree(layer, left & ~layer.untouched(done), setting);
    return Math.max(tree + end, without + detours + least(next[at], left));
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
    for (long rest = left; rest != 0; rest &= rest - 1) {
      int group = Long.numberOfTrailingZeros(rest);
      int ring = 0;
      if (setting != 0 && joined(layer, group, left, setting)) {
        ring = Math.max(0, longest - moves.settings().cost(setting, layer.need(group)));
      }
      end = Math.min(end, ring + next[group]);
    }
    return end;
  }

  /** The cheapest tree over the groups left and the present setting. */
  private int tree(Layer layer, long left, int setting) {
    int count = 0;
    for (long rest = left; rest != 0; rest &= rest - 1) {
      int group = Long.numberOfTrailingZeros(rest);
      if (joined(layer, group, left, setting)) {
        needs[count++] = layer.need(group);
      }
    }
    if (setting == 0 && count > 0) {
      return join(needs[--count], count);
    }
    return join(setting, count);
  }

  /**
   * Groups that do not mind rotation are left out where another with the same body and support is
   * joined: they would stand in for every rotation and make the tree too cheap.
   */
  private static boolean joined(Layer layer, int group, long left, int setting) {
    int need = layer.need(group);
    boolean covered =
        Settings.rotation(need) == 0
            && ((layer.pairMates(group) & left) != 0
                || Settings.pair(need) == Settings.pair(setting));
    return need != 0 && !covered;
  }

  /** Prim's rule: the nearest group joins the tree until none is left. */
  private int join(int root, int groups) {
    Settings settings = moves.settings();
    int count = groups;
    for (int i = 0; i < count; i++) {
      near[i] = settings.cost(root, needs[i]);
    }
    int total = 0;
    longest = 0;
    while (count > 0) {
      int nearest = 0;
      for (int i = 1; i < count; i++) {
        nearest = near[i] < near[nearest] ? i : nearest;
      }
      total += near[nearest];
      longest = Math.max(longest, near[nearest]);
      int joined = needs[nearest];
      count--;
      needs[nearest] = needs[count];
      near[nearest] = near[count];
      for (int i = 0; i < count; i++) {
        near[i] = Math.min(near[i], settings.cost(joined, needs[i]));
      }
    }
    return total;
  }
}
