package styloid.model;

import java.util.Collection;
import java.util.Collections;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The ledger folded to current values, with the settings they are read under. A snapshot handed to
 * a module is limited to the items that module declared; asking it for any other is a bug of the
 * module and throws.
 */
public final class Snapshot {
  /** Holds nothing that may not be asked for. */
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

  /** This snapshot after one more entry; a limited one takes in only what it may be asked for. */
  public Snapshot with(Entry entry) {
    if (!mayRead(entry.key())) {
      return this;
    }
    LinkedHashMap<ItemKey, Entry> folded = new LinkedHashMap<>(current);
    fold(folded, entry);
    return new Snapshot(folded, readable, readableTests, choices);
  }

  /** The same values, but only these items and all items of these tests may be asked for. */
  public Snapshot limitedTo(Set<ItemRef> items, Set<TestId> tests) {
    LinkedHashMap<ItemKey, Entry> kept = new LinkedHashMap<>();
    Snapshot limited = new Snapshot(kept, Set.copyOf(items), Set.copyOf(tests), choices);
    ItemKey before = null;
    boolean may = false;
    for (Map.Entry<ItemKey, Entry> one : current.entrySet()) {
      ItemKey key = one.getKey();
      // entries of one item mostly stand together
      if (before == null || before.item() != key.item() || before.test() != key.test()) {
        may = limited.mayRead(key);
      }
      if (may) {
        kept.put(key, one.getValue());
      }
      before = key;
    }
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
    return readable == null || readableTests.contains(key.test()) || readable.contains(key.ref());
  }

  /**
   * The entry in force for a key.
   *
   * @throws IllegalArgumentException when the item was not declared to be read
   */
  public Optional<Entry> entry(ItemKey key) {
    return Optional.ofNullable(found(key));
  }

  private Entry found(ItemKey key) {
    Entry found = current.get(key);
    if (found == null && !mayRead(key)) {
      throw new IllegalArgumentException("item not declared: " + key);
    }
    return found;
  }

  /** The value in force, or null: asked for thousands of times after each entry. */
  private Value recorded(ItemKey key) {
    Entry found = found(key);
    return found == null ? null : found.value().orElse(null);
  }

  public Optional<Value> value(ItemKey key) {
    return entry(key).flatMap(Entry::value);
  }

  /**
   * The quantity in force; empty when nothing, an absence or another kind of value stands there.
   */
  public Optional<Quantity> quantity(ItemKey key) {
    return recorded(key) instanceof Quantity quantity ? Optional.of(quantity) : Optional.empty();
  }

  /** Code of the choice in force; empty when nothing, an absence or another kind stands there. */
  public Optional<String> choice(ItemKey key) {
    return recorded(key) instanceof Choice choice ? Optional.of(choice.code()) : Optional.empty();
  }

  /** The absence in force, if one was recorded. */
  public Optional<Absence> absence(ItemKey key) {
    return recorded(key) instanceof Absence absence ? Optional.of(absence) : Optional.empty();
  }

  /** All entries in force, oldest key first. */
  public Collection<Entry> entries() {
    return Collections.unmodifiableCollection(current.values());
  }

  /**
   * Whether both hold the very same entries in the same order, under the same settings, and may be
   * asked for the same items. Never true of two that differ; entries that are merely equal do not
   * count as the same.
   */
  public boolean sameAs(Snapshot other) {
    if (current.size() != other.current.size()
        || !choices.equals(other.choices)
        || !Objects.equals(readable, other.readable)
        || !readableTests.equals(other.readableTests)) {
      return false;
    }
    Iterator<Entry> theirs = other.current.values().iterator();
    for (Entry mine : current.values()) {
      if (mine != theirs.next()) {
        return false;
      }
    }
    return true;
  }

  public boolean isEmpty() {
    return current.isEmpty();
  }
}
