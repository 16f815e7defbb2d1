package styloid.plan;

import java.util.List;

/**
 * Least cost of what is left. Any way through positions is a tree that joins them, so the cheapest
 * such tree is never dearer; layers after the present one are joined each by itself.
 */
final class Bounds {
  private final Moves moves;
  private final int[] later;
  private final int[] near = new int[Layer.MOST];
  private final int[] needs = new int[Layer.MOST];

  Bounds(Moves moves) {
    this.moves = moves;
    List<Layer> layers = moves.layers();
    later = new int[layers.size() + 1];
    for (int i = layers.size() - 1; i > 0; i--) {
      later[i - 1] = later[i] + tree(layers.get(i), 0, 0);
    }
  }

  int least(Way way) {
    if (moves.finished(way)) {
      return 0;
    }
    Layer layer = moves.layers().get(way.layer());
    return tree(layer, way.done(), way.setting()) + later[way.layer()];
  }

  /** The cheapest tree over the groups left and the present setting. */
  private int tree(Layer layer, long done, int setting) {
    int count = gather(layer, layer.all() & ~done, setting);
    if (setting == 0 && count > 0) {
      return join(needs[--count], count);
    }
    return join(setting, count);
  }

  /**
   * Groups that do not mind rotation are left out where another with the same body and support is
   * joined: they would stand in for every rotation and make the tree too cheap.
   */
  private int gather(Layer layer, long left, int setting) {
    int count = 0;
    for (long rest = left; rest != 0; rest &= rest - 1) {
      int group = Long.numberOfTrailingZeros(rest);
      int need = layer.need(group);
      boolean covered =
          Settings.rotation(need) == 0
              && ((layer.pairMates(group) & left) != 0
                  || Settings.pair(need) == Settings.pair(setting));
      if (need != 0 && !covered) {
        needs[count++] = need;
      }
    }
    return count;
  }

  /** Prim's rule: the nearest group joins the tree until none is left. */
  private int join(int root, int groups) {
    Settings settings = moves.settings();
    int count = groups;
    for (int i = 0; i < count; i++) {
      near[i] = settings.cost(root, needs[i]);
    }
    int total = 0;
    while (count > 0) {
      int nearest = 0;
      for (int i = 1; i < count; i++) {
        nearest = near[i] < near[nearest] ? i : nearest;
      }
      total += near[nearest];
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
