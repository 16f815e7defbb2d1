package styloid.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;

/**
 * The entries of one evaluation in order. Append only: a later entry of the same key supersedes the
 * earlier one, which stays. Order is the order of appending, never that of the clock.
 */
public final class Ledger {
  private static final Ledger EMPTY = new Ledger(List.of());
  private final List<Entry> entries;

  private Ledger(List<Entry> entries) {
    this.entries = entries;
  }

  public static Ledger empty() {
    return EMPTY;
  }

  /**
   * A ledger of these entries in this order.
   *
   * @throws IllegalArgumentException when two entries share an id
   */
  public static Ledger of(List<Entry> entries) {
    HashSet<EntryId> seen = new HashSet<>();
    for (Entry entry : entries) {
      if (!seen.add(entry.id())) {
        throw new IllegalArgumentException("entry " + entry.id() + " stands twice");
      }
    }
    return new Ledger(List.copyOf(entries));
  }

  /** This ledger with one more entry at its end. */
  public Ledger append(Entry entry) {
    for (Entry earlier : entries) {
      if (earlier.id().equals(entry.id())) {
        throw new IllegalArgumentException("entry " + entry.id() + " stands already");
      }
    }
    ArrayList<Entry> longer = new ArrayList<>(entries.size() + 1);
    longer.addAll(entries);
    longer.add(entry);
    return new Ledger(Collections.unmodifiableList(longer));
  }

  public List<Entry> entries() {
    return entries;
  }

  public int size() {
    return entries.size();
  }

  /** The current values. */
  public Snapshot snapshot() {
    return Snapshot.of(entries);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Ledger that && entries.equals(that.entries);
  }

  @Override
  public int hashCode() {
    return entries.hashCode();
  }
}
