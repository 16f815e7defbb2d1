package styloid.model;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One line of the ledger: what was recorded for a key, when and by whom. An empty value takes the
 * key back to "nothing recorded" (an undo); the line it replaces stays in the ledger.
 *
 * @param confirmed whether the therapist was asked about an implausible value and kept it
 * @param override why it was recorded although a precaution withheld it, as the therapist wrote it,
 *     1 to {@value #LONGEST_REASON} characters; empty where nothing was overridden
 */
public record Entry(
    EntryId id,
    ItemKey key,
    Optional<Value> value,
    Instant at,
    TherapistId by,
    boolean confirmed,
    Optional<String> override) {
  public static final int LONGEST_REASON = 500;

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
    if (override.isPresent()
        && (override.get().isBlank() || override.get().length() > LONGEST_REASON)) {
      throw new IllegalArgumentException(
          "a reason to override has 1 to " + LONGEST_REASON + " characters");
    }
  }
}
