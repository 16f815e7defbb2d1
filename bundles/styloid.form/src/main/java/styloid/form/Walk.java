package styloid.form;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Group;

/**
 * The order in which entry takes the fields of a group. What belongs to no limb comes where the
 * group lists it: before the limbs when listed first, else after them.
 */
final class Walk {
  private Walk() {}

  /**
   * Every key of a group in walking order.
   *
   * @param sides right and left in the order they are done
   */
  static List<ItemKey> order(TestId test, Group group, List<Side> sides) {
    ArrayList<ItemKey> keys = new ArrayList<>();
    ArrayList<Item> sided = new ArrayList<>();
    ArrayList<Item> after = new ArrayList<>();
    for (Item item : group.items()) {
      if (!item.sides().contains(Side.UNSIDED)) {
        sided.add(item);
      } else if (sided.isEmpty()) {
        keys.addAll(item.keys(test));
      } else {
        after.add(item);
      }
    }
    if (group.walk() == Group.Walk.ALTERNATING) {
      alternating(test, sided, sides, keys);
    } else {
      sides.forEach(side -> oneSide(test, group, sided, side, keys));
    }
    after.forEach(item -> keys.addAll(item.keys(test)));
    return keys;
  }

  private static void alternating(
      TestId test, List<Item> items, List<Side> sides, List<ItemKey> keys) {
    for (Item item : items) {
      for (Digit digit : EnumSet.copyOf(item.digits())) {
        for (int trial = 1; trial <= item.trials(); trial++) {
          for (Side side : sides) {
            if (item.sides().contains(side)) {
              keys.add(new ItemKey(test, item.id(), side, digit, trial));
            }
          }
        }
      }
    }
  }

  private static void oneSide(
      TestId test, Group group, List<Item> items, Side side, List<ItemKey> keys) {
    if (group.layout() != Group.Layout.DIGIT_GRID) {
      items.stream()
          .filter(i -> i.sides().contains(side))
          .forEach(i -> keys.addAll(i.keys(test, side)));
      return;
    }
    // A hand on one finger measures all of that finger before it takes the next.
    for (Digit digit : Digit.values()) {
      for (Item item : items) {
        if (item.sides().contains(side)) {
          item.keys(test, side).stream().filter(k -> k.digit() == digit).forEach(keys::add);
        }
      }
    }
  }
}
