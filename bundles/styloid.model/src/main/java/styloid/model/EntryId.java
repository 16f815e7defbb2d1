package styloid.model;

import java.util.Objects;
import java.util.UUID;

/** Identity of one entry, unique without a central counter. */
public record EntryId(UUID value) {
  public EntryId {
    Objects.requireNonNull(value, "value");
  }

  /**
   * Reads the usual written form.
   *
   * @throws IllegalArgumentException when {@code text} is not a UUID
   */
  public static EntryId of(String text) {
    return new EntryId(UUID.fromString(text));
  }

  @Override
  public String toString() {
    return value.toString();
  }
}
