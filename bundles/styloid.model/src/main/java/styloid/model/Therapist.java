package styloid.model;

import java.util.Objects;
import java.util.Optional;

/**
 * Somebody who works with a patient.
 *
 * @param id what entries are signed with: initials or a name
 * @param name the full name where the id is not one already; never blank, at most {@value
 *     #LONGEST_NAME} characters
 * @param capacity as what they work, by their own word; empty while they have not said, which
 *     counts as not licensed
 */
public record Therapist(TherapistId id, Optional<String> name, Optional<Capacity> capacity) {
  public static final int LONGEST_NAME = 200;

  public Therapist {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(capacity, "capacity");
    if (name.filter(n -> n.isBlank() || n.length() > LONGEST_NAME).isPresent()) {
      throw new IllegalArgumentException("a name has 1 to " + LONGEST_NAME + " characters");
    }
  }

  /** Somebody of whom nothing but the signature is known. */
  public static Therapist unsaid(TherapistId id) {
    return new Therapist(id, Optional.empty(), Optional.empty());
  }

  /** Whether they said that they are licensed. */
  public boolean licensed() {
    return capacity.filter(Capacity.LICENSED_THERAPIST::equals).isPresent();
  }
}
