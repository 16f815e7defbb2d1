package styloid.session;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import styloid.exchange.DefinitionFile;
import styloid.model.DefinitionText;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.model.Results;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.spi.TestDefinition;
import styloid.store.PatientStore;
import styloid.store.StoreException;

/** From what is kept of a patient to a context and a desk to work at. */
final class Records {
  private Records() {}

  static StoreException missing(String what) {
    return new StoreException(
        StoreException.Cause.NOT_FOUND,
        "The " + what + " is not in this store. It may have been opened from another one.",
        null);
  }

  static boolean isBefore(Evaluation other, Evaluation than) {
    return !other.id().equals(than.id()) && other.date().isBefore(than.date());
  }

  /**
   * One evaluation of a record.
   *
   * @throws IllegalArgumentException when there is none of this id
   */
  static EvaluationRecord chosen(PatientRecord record, EvaluationId which) {
    return record.evaluations().stream()
        .filter(r -> r.evaluation().id().equals(which))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no evaluation " + which));
  }

  /** All evaluations of the same patient before this one. */
  static List<EvaluationRecord> earlier(PatientStore from, Evaluation than) throws StoreException {
    ArrayList<EvaluationRecord> earlier = new ArrayList<>();
    for (Evaluation other : from.evaluations(than.patient())) {
      if (isBefore(other, than)) {
        from.evaluation(other.id()).ifPresent(earlier::add);
      }
    }
    return earlier;
  }

  static PatientContext context(
      Patient patient,
      List<Precaution> precautions,
      EvaluationRecord record,
      List<EvaluationRecord> others) {
    List<PatientContext.Past> past =
        others.stream()
            .filter(other -> isBefore(other.evaluation(), record.evaluation()))
            .sorted(Comparator.comparing((EvaluationRecord r) -> r.evaluation().date()).reversed())
            .map(o -> new PatientContext.Past(o.evaluation(), o.ledger().snapshot()))
            .toList();
    Snapshot snapshot = record.ledger().snapshot();
    return new PatientContext(
        patient, record.evaluation(), precautions, snapshot, Results.empty(), past);
  }

  static Desk desk(PatientContext context, EvaluationRecord record) {
    Desk desk = new Desk(context, record.ledger(), record.drafts());
    for (DefinitionText text : record.definitions()) {
      DefinitionFile.Read read = DefinitionFile.read(text);
      read.definition().ifPresent(definition -> desk.keep(definition, text));
    }
    return desk;
  }

  /** The head of a new evaluation, under the tests as they are now. */
  static Evaluation fresh(
      PatientId patient, LocalDate date, TherapistId therapist, List<TestDefinition> tests) {
    Map<TestId, String> versions = new HashMap<>();
    tests.forEach(test -> versions.put(test.id(), test.version()));
    return new Evaluation(
        new EvaluationId(UUID.randomUUID()),
        patient,
        date,
        therapist,
        Evaluation.State.DRAFT,
        versions,
        Map.of());
  }
}
