package styloid.model;

import java.util.List;
import java.util.Objects;

/** All that is kept of one patient; evaluations oldest first. */
public record PatientRecord(
    Patient patient, List<Precaution> precautions, List<EvaluationRecord> evaluations) {
  public PatientRecord {
    Objects.requireNonNull(patient, "patient");
    precautions = List.copyOf(precautions);
    evaluations = List.copyOf(evaluations);
    for (EvaluationRecord record : evaluations) {
      if (!record.evaluation().patient().equals(patient.id())) {
        throw new IllegalArgumentException(
            "evaluation " + record.evaluation().id() + " is of another patient");
      }
    }
  }
}
