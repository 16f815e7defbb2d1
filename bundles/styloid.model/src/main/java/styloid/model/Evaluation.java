package styloid.model;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;

/**
 * Head of one visit's tests of one patient by one therapist.
 *
 * @param versions version of each test as first used here; kept for good
 * @param choices the clinic's settings this evaluation was made under, such as a norm table, by key
 */
public record Evaluation(
    EvaluationId id,
    PatientId patient,
    LocalDate date,
    TherapistId therapist,
    State state,
    Map<TestId, String> versions,
    Map<String, String> choices) {

  /** How far the evaluation has come. */
  public enum State {
    DRAFT,
    SIGNED;

    public String code() {
      return Codes.of(this);
    }
  }

  public Evaluation {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(patient, "patient");
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(therapist, "therapist");
    Objects.requireNonNull(state, "state");
    versions = Map.copyOf(versions);
    choices = Map.copyOf(choices);
  }

  /** The same, with one setting chosen. */
  public Evaluation withChoice(String key, String value) {
    HashMap<String, String> all = new HashMap<>(choices);
    all.put(key, value);
    return new Evaluation(id, patient, date, therapist, state, versions, all);
  }
}
