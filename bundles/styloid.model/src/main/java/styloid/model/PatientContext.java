package styloid.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * The one patient context every module sees: who is examined, under which limits, what has been
 * recorded and what follows from it, and the visits before.
 *
 * @param snapshot read under the settings chosen for the evaluation, whatever it came with
 * @param past earlier evaluations, newest first
 */
public record PatientContext(
    Patient patient,
    Evaluation evaluation,
    List<Precaution> precautions,
    Snapshot snapshot,
    Results results,
    List<Past> past) {

  /** An earlier evaluation of the same patient. */
  public record Past(Evaluation evaluation, Snapshot snapshot) {
    public Past {
      Objects.requireNonNull(evaluation, "evaluation");
      snapshot = snapshot.under(evaluation.choices());
    }
  }

  public PatientContext {
    Objects.requireNonNull(patient, "patient");
    Objects.requireNonNull(evaluation, "evaluation");
    precautions = List.copyOf(precautions);
    snapshot = snapshot.under(evaluation.choices());
    Objects.requireNonNull(results, "results");
    past = List.copyOf(past);
  }

  /** Completed years on the day of the evaluation; empty when unknown. */
  public Optional<Integer> age() {
    return patient.ageOn(evaluation.date());
  }

  public PatientContext withSnapshot(Snapshot other) {
    return new PatientContext(patient, evaluation, precautions, other, results, past);
  }

  public PatientContext withResults(Results other) {
    return new PatientContext(patient, evaluation, precautions, snapshot, other, past);
  }

  public PatientContext withPast(List<Past> other) {
    return new PatientContext(patient, evaluation, precautions, snapshot, results, other);
  }

  /** The same, with one of the clinic's settings chosen for the evaluation. */
  public PatientContext withChoice(String key, String value) {
    return new PatientContext(
        patient, evaluation.withChoice(key, value), precautions, snapshot, results, past);
  }

  /** The precautions in force on the day of the evaluation. */
  public List<Precaution> inForce() {
    return precautions.stream().filter(p -> p.inForceOn(evaluation.date())).toList();
  }
}
