package styloid.plan;

import java.util.List;

/**
 * Position groups that must all be done before the next layer begins. A group is a set of steps
 * with the same position that become possible at the same time, so that doing them together is
 * never worse. Sets of groups are bit masks.
 */
final class Layer {
  /** Most groups of a layer, so that a search state fits into one number. */
  static final int MOST = 48;

  /**
   * A position group.
   *
   * @param need its position, see {@link Settings}
   * @param before groups of the layer that come first
   * @param block number of the joint whose steps with gravity reduced, in more than one position,
   *     stand in one run; {@link #NO_BLOCK} for all others
   * @param steps in plain order
   */
  record Group(int need, long before, int block, List<PlanStep> steps) {}

  static final int NO_BLOCK = -1;

  private final List<Group> groups;
  private final int[] need;
  private final long[] before;
  private final int[] block;
  private final long[] blocks;
  private final long[] bodies = new long[Settings.BODIES];
  private final long[] pairMates;
  private final long constrained;
  private final long waiting;
  private final long unmindful;
  private final long[] fitting = new long[Settings.COUNT];

  Layer(List<Group> groups, int blockCount) {
    this.groups = List.copyOf(groups);
    int count = groups.size();
    need = new int[count];
    before = new long[count];
    block = new int[count];
    blocks = new long[blockCount];
    pairMates = new long[count];
    long held = 0;
    long later = 0;
    long free = 0;
    for (int i = 0; i < count; i++) {
      Group group = groups.get(i);
      need[i] = group.need();
      before[i] = group.before();
      block[i] = group.block();
      bodies[Settings.body(need[i])] |= 1L << i;
      if (block[i] != NO_BLOCK) {
        blocks[block[i]] |= 1L << i;
      }
      if (before[i] != 0 || block[i] != NO_BLOCK) {
        held |= 1L << i;
      }
      later |= before[i] != 0 ? 1L << i : 0;
      free |= Settings.rotation(need[i]) == 0 ? 1L << i : 0;
      for (int setting = 0; setting < Settings.COUNT; setting++) {
        fitting[setting] |= Settings.after(setting, need[i]) == setting ? 1L << i : 0;
      }
    }
    constrained = held;
    waiting = later;
    unmindful = free;
    findMates();
  }

  private void findMates() {
    for (int i = 0; i < need.length; i++) {
      for (int j = 0; j < need.length; j++) {
        if (Settings.pair(need[i]) == Settings.pair(need[j]) && Settings.rotation(need[j]) != 0) {
          pairMates[i] |= 1L << j;
        }
      }
    }
  }

  int size() {
    return need.length;
  }

  long all() {
    return (1L << need.length) - 1;
  }

  int need(int group) {
    return need[group];
  }

  List<PlanStep> steps(int group) {
    return groups.get(group).steps();
  }

  boolean inBlock(int group) {
    return block[group] != NO_BLOCK;
  }

  /** Whether everything that must come before a group is done. */
  boolean possible(int group, long done) {
    return (before[group] & ~done) == 0;
  }

  /** The groups that are not done and need not wait. */
  long ready(long done) {
    long ready = all() & ~done;
    for (long left = ready & waiting; left != 0; left &= left - 1) {
      int group = Long.numberOfTrailingZeros(left);
      if (!possible(group, done)) {
        ready &= ~(1L << group);
      }
    }
    return ready;
  }

  /** The groups that can be done without a change. */
  long fitting(int setting) {
    return fitting[setting];
  }

  /** The groups that do not mind the rotation, those without a position among them. */
  long unmindful() {
    return unmindful;
  }

  /** Groups that need a body position; 0 for those that need none. */
  long ofBody(int body) {
    return bodies[body];
  }

  /** Whether no group of this body position ever has to wait for another. */
  boolean simple(int body) {
    return (bodies[body] & constrained) == 0;
  }

  /** Groups with the body and support of this one that need a certain rotation. */
  long pairMates(int group) {
    return pairMates[group];
  }

  /** What is left of the block that was begun and must be finished first; 0 when none is. */
  long open(long done) {
    for (long members : blocks) {
      long left = members & ~done;
      if (left != 0 && left != members) {
        return left;
      }
    }
    return 0;
  }

  /** The groups of joints that must be done in one run and are not begun. */
  long untouched(long done) {
    long untouched = 0;
    for (long members : blocks) {
      untouched |= (members & done) == 0 ? members : 0;
    }
    return untouched;
  }

  /**
   * Least cost that joints not begun add to the way through all others. Of each part of the
   * position such a run shows every value it needs, and at most its first and last can lie on the
   * way.
   */
  int detours(long done, Settings settings) {
    int sum = 0;
    for (int i = 0; i < blocks.length; i++) {
      sum += (blocks[i] & done) == 0 ? detour(blocks[i], settings.weights()) : 0;
    }
    return sum;
  }

  private int detour(long members, Weights weights) {
    long bodyValues = 0;
    long supports = 0;
    long rotations = 0;
    for (long rest = members; rest != 0; rest &= rest - 1) {
      int one = need[Long.numberOfTrailingZeros(rest)];
      bodyValues |= 1L << Settings.body(one);
      supports |= 1L << Settings.support(one);
      rotations |= 1L << Settings.rotation(one);
    }
    return weights.of(new Changes(between(bodyValues), between(supports), between(rotations)));
  }

  /** Values besides two and besides "any". */
  private static int between(long values) {
    return Math.max(0, Long.bitCount(values & ~1L) - 2);
  }

  /** The groups of one joint's steps with gravity reduced. */
  long of(Joint joint) {
    long found = 0;
    for (int i = 0; i < need.length; i++) {
      PlanStep any = groups.get(i).steps().get(0);
      if (any.id().gravityReduced() && any.joint().equals(joint)) {
        found |= 1L << i;
      }
    }
    return found;
  }
}
