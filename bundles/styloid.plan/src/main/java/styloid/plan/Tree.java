package styloid.plan;

import java.util.Arrays;

/**
 * The cheapest tree that joins positions. With the usual weights it is counted part by part: as any
 * change of body costs more than all others together, a body position is joined in itself first,
 * and in it each support. Other weights take Prim's rule.
 */
final class Tree {
  /** Rotation bits of a position that does not mind the rotation. */
  private static final int ANY = (1 << Settings.ROTATIONS) - 1;

  private final Settings settings;
  private final boolean byParts;
  private final int[] needs = new int[Layer.MOST + 1];
  private final int[] near = new int[Layer.MOST + 1];
  private final int[] supports = new int[Settings.BODIES];
  private final int[] turns = new int[Settings.BODIES];
  private final int[] rotations = new int[Settings.BODIES * Settings.SUPPORTS];
  private final int[] part = new int[Settings.SUPPORTS];
  private int count;
  private boolean whole;
  private int longest;

  Tree(Settings settings) {
    this.settings = settings;
    Weights weights = settings.weights();
    this.byParts =
        weights.rotation() <= weights.support()
            && weights.support() + weights.rotation() <= weights.body();
  }

  void clear() {
    count = 0;
    whole = true;
  }

  /** One more position, or the present setting. */
  void add(int need) {
    needs[count++] = need;
    whole &= Settings.body(need) != 0 && Settings.support(need) != 0;
  }

  /** Cost of the longest change of the tree counted last. */
  int longest() {
    return longest;
  }

  int cost() {
    longest = 0;
    return count < 2 ? 0 : byParts && whole ? parts() : prim();
  }

  private int parts() {
    int bodies = 0;
    for (int i = 0; i < count; i++) {
      int body = Settings.body(needs[i]);
      int rotation = Settings.rotation(needs[i]);
      int bits = rotation == 0 ? ANY : 1 << rotation;
      bodies |= 1 << body;
      supports[body] |= 1 << Settings.support(needs[i]);
      turns[body] |= bits;
      rotations[Settings.pair(needs[i])] |= bits;
    }
    int total = Integer.bitCount(bodies) > 1 ? between(bodies) : 0;
    for (int left = bodies; left != 0; left &= left - 1) {
      total += within(Integer.numberOfTrailingZeros(left));
    }
    return total;
  }

  /** Joins what is in one body position, and forgets it. */
  private int within(int body) {
    int total = 0;
    int found = 0;
    for (int left = supports[body]; left != 0; left &= left - 1) {
      int pair = body * Settings.SUPPORTS + Integer.numberOfTrailingZeros(left);
      int bits = rotations[pair];
      // whoever does not mind the rotation joins all others of the support for nothing
      if (bits != ANY) {
        total += change(Integer.bitCount(bits) - 1, settings.weights().rotation());
      }
      part[found++] = bits;
      rotations[pair] = 0;
    }
    supports[body] = 0;
    turns[body] = 0;
    int groups = merge(found);
    int support = settings.weights().support();
    return total
        + change(found - groups, support)
        + change(groups - 1, support + settings.weights().rotation());
  }

  /** How many groups the supports fall into that share no rotation with another group. */
  private int merge(int found) {
    int left = found;
    for (int i = 0; i < left; i++) {
      for (int j = i + 1; j < left; j++) {
        if ((part[i] & part[j]) != 0) {
          part[i] |= part[j];
          part[j] = part[--left];
          j = i;
        }
      }
    }
    return left;
  }

  private int change(int changes, int weight) {
    if (changes <= 0) {
      return 0;
    }
    longest = Math.max(longest, weight);
    return changes * weight;
  }

  /** Joins the body positions with each other: the nearest one joins until none is left. */
  private int between(int bodies) {
    int total = 0;
    int root = Integer.numberOfTrailingZeros(bodies);
    int outside = bodies & bodies - 1;
    Arrays.fill(near, 0, Settings.BODIES, Integer.MAX_VALUE);
    while (outside != 0) {
      int nearest = -1;
      for (int left = outside; left != 0; left &= left - 1) {
        int body = Integer.numberOfTrailingZeros(left);
        near[body] = Math.min(near[body], cost(root, body));
        nearest = nearest < 0 || near[body] < near[nearest] ? body : nearest;
      }
      total += change(1, near[nearest]);
      root = nearest;
      outside &= ~(1 << nearest);
    }
    return total;
  }

  /** The least change from one body position to another. */
  private int cost(int one, int other) {
    Weights weights = settings.weights();
    int shared = supports[one] & supports[other];
    for (int left = shared; left != 0; left &= left - 1) {
      int support = Integer.numberOfTrailingZeros(left);
      int here = rotations[one * Settings.SUPPORTS + support];
      if ((here & rotations[other * Settings.SUPPORTS + support]) != 0) {
        return weights.body();
      }
    }
    boolean turned = shared != 0 || (turns[one] & turns[other]) == 0;
    return weights.body()
        + (shared == 0 ? weights.support() : 0)
        + (turned ? weights.rotation() : 0);
  }

  /** Prim's rule: the nearest position joins the tree until none is left. */
  private int prim() {
    int left = count - 1;
    int root = needs[left];
    for (int i = 0; i < left; i++) {
      near[i] = settings.cost(root, needs[i]);
    }
    int total = 0;
    while (left > 0) {
      int nearest = 0;
      for (int i = 1; i < left; i++) {
        nearest = near[i] < near[nearest] ? i : nearest;
      }
      total += near[nearest];
      longest = Math.max(longest, near[nearest]);
      int joined = needs[nearest];
      left--;
      needs[nearest] = needs[left];
      near[nearest] = near[left];
      for (int i = 0; i < left; i++) {
        near[i] = Math.min(near[i], settings.cost(joined, needs[i]));
      }
    }
    return total;
  }
}
