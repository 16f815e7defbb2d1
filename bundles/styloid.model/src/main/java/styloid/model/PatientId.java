package styloid.model;

import java.util.Objects;
import java.util.UUID;

/** Identity of one patient, unique without a central counter. */
public record PatientId(UUID value) {
  public PatientId {
    Objects.requireNonNull(value, "value");
  }

  /**
   * Reads the usual written form.
   *
   * @throws IllegalArgumentException when {@code text} is not a UUID
   */
  public static PatientId of(String text) {
    return new PatientId(UUID.fromString(text));
  }

  @Override
  public String toString() {
    return value.toString();
  }
}
