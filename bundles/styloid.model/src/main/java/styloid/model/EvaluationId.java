package styloid.model;

import java.util.Objects;
import java.util.UUID;

/** Identity of one evaluation, unique without a central counter. */
public record EvaluationId(UUID value) {
  public EvaluationId {
    Objects.requireNonNull(value, "value");
  }

  /**
   * Reads the usual written form.
   *
   * @throws IllegalArgumentException when {@code text} is not a UUID
   */
  public static EvaluationId of(String text) {
    return new EvaluationId(UUID.fromString(text));
  }

  @Override
  public String toString() {
    return value.toString();
  }
}
