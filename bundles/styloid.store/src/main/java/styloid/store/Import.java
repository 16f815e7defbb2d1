package styloid.store;

import java.sql.SQLException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.Evaluation;
import styloid.model.EvaluationRecord;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.PatientRecord;

/** Takes in whole records beside those there. */
final class Import {
  private final Patients patients;
  private final Evaluations evaluations;
  private final Entries entries;

  Import(Sql sql) {
    patients = new Patients(sql);
    evaluations = new Evaluations(sql);
    entries = new Entries(sql);
  }

  /** Gives how many evaluations were new. */
  int take(List<PatientRecord> records) throws SQLException, StoreException {
    int added = 0;
    for (PatientRecord record : records) {
      patient(record);
      for (EvaluationRecord evaluation : record.evaluations()) {
        added += evaluation(evaluation) ? 1 : 0;
      }
    }
    return added;
  }

  private void patient(PatientRecord record) throws SQLException, StoreException {
    Patient patient = record.patient();
    Optional<Patient> known = patients.find(patient.id());
    if (known.isEmpty()) {
      patients.save(patient, record.precautions());
    } else if (!known.get().equals(patient)) {
      throw conflict("Patient " + named(patient) + " is known here with other facts");
    } else if (!patients.precautions(patient.id()).equals(record.precautions())) {
      throw conflict("Patient " + named(patient) + " is known here with other precautions");
    }
  }

  private static String named(Patient patient) {
    return patient.name() + " (" + patient.recordNumber() + ")";
  }

  /** Whether it was new; what a known one lacks in entries is appended. */
  private boolean evaluation(EvaluationRecord record) throws SQLException, StoreException {
    Evaluation evaluation = record.evaluation();
    Optional<Evaluation> known = evaluations.find(evaluation.id());
    if (known.isEmpty()) {
      evaluations.insert(evaluation, record.definitions());
    } else if (!same(known.get(), evaluation)) {
      throw conflict(
          "Evaluation "
              + evaluation.id()
              + " is known here with another patient, date or therapist");
    }
    entries.append(evaluation.id(), record.ledger().entries());
    if (known.isEmpty()) {
      for (Map.Entry<ItemKey, String> draft : record.drafts().entrySet()) {
        entries.insertDraft(evaluation.id(), draft.getKey(), draft.getValue());
      }
    }
    return known.isEmpty();
  }

  private static boolean same(Evaluation known, Evaluation other) {
    return known.patient().equals(other.patient())
        && known.date().equals(other.date())
        && known.therapist().equals(other.therapist());
  }

  private static StoreException conflict(String what) {
    return new StoreException(
        StoreException.Cause.CONFLICT,
        what + ". Nothing was imported. Make them agree, then import again.",
        null);
  }
}
