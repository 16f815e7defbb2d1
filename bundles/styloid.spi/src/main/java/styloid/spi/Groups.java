package styloid.spi;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.RandomAccess;
import java.util.Set;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemRef;
import styloid.model.TestId;

/**
 * The groups of a test as an unmodifiable list, equal to any list of the same groups, that knows
 * where each item stands: items are looked for at every key press.
 */
final class Groups extends AbstractList<Group> implements RandomAccess {
  private final TestId test;
  private final List<Group> groups;
  private final List<Item> items;
  private final Set<ItemRef> refs;
  private final Map<ItemId, Item> byId = new HashMap<>();
  private final Map<ItemId, Group> groupOf = new HashMap<>();

  private Groups(TestId test, List<Group> given) {
    this.test = test;
    groups = List.copyOf(given);
    ArrayList<Item> all = new ArrayList<>();
    HashSet<ItemRef> named = new HashSet<>();
    for (Group group : groups) {
      for (Item item : group.items()) {
        all.add(item);
        named.add(new ItemRef(test, item.id()));
        byId.putIfAbsent(item.id(), item);
        groupOf.putIfAbsent(item.id(), group);
      }
    }
    items = List.copyOf(all);
    refs = Set.copyOf(named);
  }

  /** These groups; the same object when they are indexed already. */
  static Groups of(TestId test, List<Group> groups) {
    return groups instanceof Groups indexed && indexed.test.equals(test)
        ? indexed
        : new Groups(test, groups);
  }

  @Override
  public Group get(int index) {
    return groups.get(index);
  }

  @Override
  public int size() {
    return groups.size();
  }

  /** Every item, group after group. */
  List<Item> items() {
    return items;
  }

  Set<ItemRef> refs() {
    return refs;
  }

  Optional<Item> item(ItemId which) {
    return Optional.ofNullable(byId.get(which));
  }

  Optional<Group> groupOf(ItemId which) {
    return Optional.ofNullable(groupOf.get(which));
  }
}
