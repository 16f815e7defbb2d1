package styloid.model;

import java.util.Objects;

/**
 * The place of one value: test, item, side, digit and trial (from 1). Every part must be said;
 * nothing here has a default.
 */
public record ItemKey(TestId test, ItemId item, Side side, Digit digit, int trial) {
  public ItemKey {
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(item, "item");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(digit, "digit");
    if (trial < 1 || trial > 99) {
      throw new IllegalArgumentException("trial must be 1 to 99: " + trial);
    }
  }

  public ItemRef ref() {
    return new ItemRef(test, item);
  }

  /** The same place on the other limb. */
  public ItemKey opposite() {
    return new ItemKey(test, item, side.opposite(), digit, trial);
  }

  /** Another item of the same test, side and digit, first trial. */
  public ItemKey sibling(ItemId other) {
    return new ItemKey(test, other, side, digit, 1);
  }

  /**
   * Name of the entry in formulas and workbooks, such as {@code grip__power__right__1}. Letters,
   * digits and underscores only, never mistaken for a cell.
   */
  public String cellName() {
    StringBuilder name = new StringBuilder(64);
    name.append(test.value()).append("__").append(item.value());
    name.append("__").append(side.code());
    if (digit != Digit.NONE) {
      name.append("__").append(digit.code());
    }
    name.append("__").append(trial);
    for (int i = 0; i < name.length(); i++) {
      if (name.charAt(i) == '-') {
        name.setCharAt(i, '_');
      }
    }
    return name.toString();
  }

  // Written out: keys are looked up thousands of times after each entry, and what the compiler
  // makes
  // for records is several times slower in a program started for quickness.
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof ItemKey that
            && side == that.side
            && digit == that.digit
            && trial == that.trial
            && item.equals(that.item)
            && test.equals(that.test);
  }

  @Override
  public int hashCode() {
    int place = (side.ordinal() * 8 + digit.ordinal()) * 128 + trial;
    return (test.hashCode() * 31 + item.hashCode()) * 31 + place;
  }

  @Override
  public String toString() {
    return test + "/" + item + "/" + side.code() + "/" + digit.code() + "/" + trial;
  }
}
