package styloid.plan;

import java.util.Arrays;

/** Numbers kept by key, without an object for each; keys are never negative. */
final class Memo {
  static final int MISSING = Integer.MIN_VALUE;
  private static final long FREE = -1;

  private long[] keys = freed(1 << 12);
  private int[] values = new int[keys.length];
  private int size;

  private static long[] freed(int length) {
    long[] keys = new long[length];
    Arrays.fill(keys, FREE);
    return keys;
  }

  /** The number kept, or {@link #MISSING}. */
  int get(long key) {
    int place = place(key);
    return keys[place] == key ? values[place] : MISSING;
  }

  void put(long key, int value) {
    int place = place(key);
    if (keys[place] != key) {
      keys[place] = key;
      size++;
    }
    values[place] = value;
    if (size > keys.length / 2) {
      grow();
    }
  }

  private void grow() {
    long[] before = keys;
    int[] kept = values;
    keys = freed(before.length * 2);
    values = new int[keys.length];
    for (int i = 0; i < before.length; i++) {
      if (before[i] != FREE) {
        int place = place(before[i]);
        keys[place] = before[i];
        values[place] = kept[i];
      }
    }
  }

  /** Where a key stands, or would stand. */
  private int place(long key) {
    long mixed = key * 0x9E3779B97F4A7C15L;
    int mask = keys.length - 1;
    int place = (int) (mixed >>> 32) & mask;
    while (keys[place] != FREE && keys[place] != key) {
      place = place + 1 & mask;
    }
    return place;
  }
}
