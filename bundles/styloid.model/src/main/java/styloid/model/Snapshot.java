package styloid.model;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The ledger folded to current values, with the settings they are read under. A snapshot handed to
 * a module is limited to the items that module declared; asking it for any other is a bug of the
 * module and throws.
 */
public final class Snapshot {
  private final Map<ItemKey, Entry> current;

  /** Items that may be asked for; null means all. */
  private final Set<ItemRef> readable;

  private final Set<TestId> readableTests;
  private final Map<String, String> choices;

  private Snapshot(
      Map<ItemKey, Entry> current,
      Set<ItemRef> readable,
      Set<TestId> readableTests,
      Map<String, String> choices) {
    this.current = current;
    this.readable = readable;
    this.readableTests = readableTests;
    this.choices = choices;
  }

  public static Snapshot empty() {
    return new Snapshot(Map.of(), null, Set.of(), Map.of());
  }

  public static Snapshot of(List<Entry> entries) {
    LinkedHashMap<ItemKey, Entry> folded = new LinkedHashMap<>();
    for (Entry entry : entries) {
      fold(folded, entry);
    }
    return new Snapshot(folded, null, Set.of(), Map.of());
  }

  private static void fold(Map<ItemKey, Entry> folded, Entry entry) {
    if (entry.value().isPresent()) {
      folded.put(entry.key(), entry);
    } else {
      folded.remove(entry.key());
    }
  }

  /** This snapshot after one more entry. */
  public Snapshot with(Entry entry) {
    LinkedHashMap<ItemKey, Entry> folded = new LinkedHashMap<>(current);
    fold(folded, entry);
    return new Snapshot(folded, readable, readableTests, choices);
  }

  /** The same values, but only these items and all items of these tests may be asked for. */
  public Snapshot limitedTo(Set<ItemRef> items, Set<TestId> tests) {
    LinkedHashMap<ItemKey, Entry> kept = new LinkedHashMap<>();
    Snapshot limited = new Snapshot(kept, Set.copyOf(items), Set.copyOf(tests), choices);
    current.forEach(
        (key, entry) -> {
          if (limited.mayRead(key)) {
            kept.put(key, entry);
          }
        });
    return limited;
  }

  /** The same values under these settings: code chosen, by key of the setting. */
  public Snapshot under(Map<String, String> other) {
    return choices.equals(other)
        ? this
        : new Snapshot(current, readable, readableTests, Map.copyOf(other));
  }

  /** Settings chosen for the evaluation; one not chosen is missing and stands at its preset. */
  public Map<String, String> choices() {
    return choices;
  }

  private boolean mayRead(ItemKey key) {
    return readable == null || readable.contains(key.ref()) || readableTests.contains(key.test());
  }

  /**
   * The entry in force for a key.
   *
   * @throws IllegalArgumentException when the item was not declared to be read
   */
  public Optional<Entry> entry(ItemKey key) {
    if (!mayRead(key)) {
      throw new IllegalArgumentException("item not declared: " + key);
    }
    return Optional.ofNullable(current.get(key));
  }

  public Optional<Value> value(ItemKey key) {
    return entry(key).flatMap(Entry::value);
  }

  /**
   * The quantity in force; empty when nothing, an absence or another kind of value stands there.
   */
  public Optional<Quantity> quantity(ItemKey key) {
    return value(key).filter(Quantity.class::isInstance).map(Quantity.class::cast);
  }

  /** Code of the choice in force; empty when nothing, an absence or another kind stands there. */
  public Optional<String> choice(ItemKey key) {
    return value(key).filter(Choice.class::isInstance).map(v -> ((Choice) v).code());
  }

  /** The absence in force, if one was recorded. */
  public Optional<Absence> absence(ItemKey key) {
    return value(key).filter(Absence.class::isInstance).map(Absence.class::cast);
  }

  /** All entries in force, oldest key first. */
  public Collection<Entry> entries() {
    return Collections.unmodifiableCollection(current.values());
  }

  public boolean isEmpty() {
    return current.isEmpty();
  }
}
