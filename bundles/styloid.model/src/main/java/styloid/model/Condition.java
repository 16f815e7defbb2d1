package styloid.model;

import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;

/**
 * When an item is asked, judged from other items of the same test, side and digit (first trial) and
 * from the settings of the test the evaluation is made under. Pure data, so that forms, checks and
 * files read the same rule.
 */
public sealed interface Condition
    permits Condition.Always,
        Condition.Is,
        Condition.Recorded,
        Condition.Chosen,
        Condition.Not,
        Condition.All,
        Condition.Any {

  /** Whether the condition holds at {@code key}'s side and digit. */
  boolean holds(Snapshot snapshot, ItemKey key);

  /** Items the condition looks at. */
  Set<ItemId> reads();

  /** What the condition asks of settings. */
  default Set<Chosen> choices() {
    return Set.of();
  }

  /** Holds everywhere. */
  record Always() implements Condition {
    @Override
    public boolean holds(Snapshot snapshot, ItemKey key) {
      return true;
    }

    @Override
    public Set<ItemId> reads() {
      return Set.of();
    }
  }

  /** The item's choice is one of these codes. */
  record Is(ItemId item, Set<String> codes) implements Condition {
    public Is {
      Objects.requireNonNull(item, "item");
      codes = Set.copyOf(codes);
    }

    @Override
    public boolean holds(Snapshot snapshot, ItemKey key) {
      return snapshot.choice(key.sibling(item)).filter(codes::contains).isPresent();
    }

    @Override
    public Set<ItemId> reads() {
      return Set.of(item);
    }
  }

  /** The item has any entry, an absence included. */
  record Recorded(ItemId item) implements Condition {
    public Recorded {
      Objects.requireNonNull(item, "item");
    }

    @Override
    public boolean holds(Snapshot snapshot, ItemKey key) {
      return snapshot.entry(key.sibling(item)).isPresent();
    }

    @Override
    public Set<ItemId> reads() {
      return Set.of(item);
    }
  }

  /**
   * The setting stands at this code.
   *
   * @param setting key of a setting of the same test
   * @param code one of its codes
   * @param preset the code at which it stands while nothing is chosen, as the setting says
   */
  record Chosen(String setting, String code, String preset) implements Condition {
    public Chosen {
      Objects.requireNonNull(setting, "setting");
      Objects.requireNonNull(code, "code");
      Objects.requireNonNull(preset, "preset");
    }

    @Override
    public boolean holds(Snapshot snapshot, ItemKey key) {
      return snapshot.choices().getOrDefault(setting, preset).equals(code);
    }

    @Override
    public Set<ItemId> reads() {
      return Set.of();
    }

    @Override
    public Set<Chosen> choices() {
      return Set.of(this);
    }
  }

  /** The other condition does not hold. */
  record Not(Condition condition) implements Condition {
    public Not {
      Objects.requireNonNull(condition, "condition");
    }

    @Override
    public boolean holds(Snapshot snapshot, ItemKey key) {
      return !condition.holds(snapshot, key);
    }

    @Override
    public Set<ItemId> reads() {
      return condition.reads();
    }

    @Override
    public Set<Chosen> choices() {
      return condition.choices();
    }
  }

  /** All of them hold. */
  record All(List<Condition> conditions) implements Condition {
    public All {
      conditions = List.copyOf(conditions);
    }

    @Override
    public boolean holds(Snapshot snapshot, ItemKey key) {
      return conditions.stream().allMatch(c -> c.holds(snapshot, key));
    }

    @Override
    public Set<ItemId> reads() {
      return union(conditions);
    }

    @Override
    public Set<Chosen> choices() {
      return asked(conditions);
    }
  }

  /** At least one of them holds. */
  record Any(List<Condition> conditions) implements Condition {
    public Any {
      conditions = List.copyOf(conditions);
    }

    @Override
    public boolean holds(Snapshot snapshot, ItemKey key) {
      return conditions.stream().anyMatch(c -> c.holds(snapshot, key));
    }

    @Override
    public Set<ItemId> reads() {
      return union(conditions);
    }

    @Override
    public Set<Chosen> choices() {
      return asked(conditions);
    }
  }

  static Condition always() {
    return new Always();
  }

  static Condition is(String item, String... codes) {
    return new Is(new ItemId(item), Set.of(codes));
  }

  static Condition recorded(String item) {
    return new Recorded(new ItemId(item));
  }

  static Condition not(Condition condition) {
    return new Not(condition);
  }

  static Condition all(Condition... conditions) {
    return new All(List.of(conditions));
  }

  static Condition any(Condition... conditions) {
    return new Any(List.of(conditions));
  }

  private static Set<ItemId> union(List<Condition> conditions) {
    TreeSet<ItemId> all = new TreeSet<>();
    conditions.forEach(c -> all.addAll(c.reads()));
    return all;
  }

  private static Set<Chosen> asked(List<Condition> conditions) {
    HashSet<Chosen> all = new HashSet<>();
    conditions.forEach(c -> all.addAll(c.choices()));
    return all;
  }
}
