package styloid.model;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of the ledger: what was recorded for a key, when and by whom. An empty value takes the
 * key back to "nothing recorded" (an undo); the line it replaces stays in the ledger.
 *
 * @param confirmed whether the therapist was asked about an implausible value and kept it
 * @param override why it was recorded although precautions withheld it, and which; empty where
 *     nothing was overridden
 */
public record Entry(
    EntryId id,
    ItemKey key,
    Optional<Value> value,
    Instant at,
    TherapistId by,
    boolean confirmed,
    Optional<InSpite> override) {

  /** An entry that overrides no precaution. */
  public Entry(
      EntryId id,
      ItemKey key,
      Optional<Value> value,
      Instant at,
      TherapistId by,
      boolean confirmed) {
    this(id, key, value, at, by, confirmed, Optional.empty());
  }

  public Entry {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(by, "by");
    Objects.requireNonNull(override, "override");
  }
}
