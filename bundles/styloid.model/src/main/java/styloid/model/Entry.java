package styloid.model;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of the ledger: what was recorded for a key, when and by whom. An empty value takes the
 * key back to "nothing recorded" (an undo); the line it replaces stays in the ledger.
 *
 * @param confirmed whether the therapist was asked about an implausible value and kept it
 */
public record Entry(
    EntryId id, ItemKey key, Optional<Value> value, Instant at, TherapistId by, boolean confirmed) {
  public Entry {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(value, "value");
    Objects.requireNonNull(at, "at");
    Objects.requireNonNull(by, "by");
  }
}
