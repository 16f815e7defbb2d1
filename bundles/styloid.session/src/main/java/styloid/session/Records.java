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

  static StoreException noStore() {
    return new StoreException(
        StoreException.Cause.OTHER,
        "The store is not running, so nothing can be opened or saved. Restart the suite; if this"
            + " stays, the start report names the part that failed.",
        null);
  }

  /**
   * The store, opened.
   *
   * @param store null while there is none
   */
  static PatientStore opened(PatientStore store) throws StoreException {
    if (store == null) {
      throw noStore();
    }
    store.open();
    return store;
  }

  /** The context of a stored evaluation, with the visits before it. */
  static PatientContext context(EvaluationRecord record, PatientStore from) throws StoreException {
    PatientId id = record.evaluation().patient();
    Patient patient = from.patient(id).orElseThrow(() -> missing("patient"));
    return context(patient, from.precautions(id), record, earlier(from, record.evaluation()));
  }

  private static boolean isBefore(Evaluation other, Evaluation than) {
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
  private static List<EvaluationRecord> earlier(PatientStore from, Evaluation than)
      throws StoreException {
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

  /** A desk for one evaluation of a whole record. */
  static Desk desk(PatientRecord record, EvaluationRecord chosen) {
    return desk(
        context(record.patient(), record.precautions(), chosen, record.evaluations()), chosen);
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
      PatientId patient,
      LocalDate date,
      TherapistId therapist,
      List<TestDefinition> tests,
      Map<String, String> lastChoices) {
    Map<TestId, String> versions = new HashMap<>();
    tests.forEach(test -> versions.put(test.id(), test.version()));
    Map<String, String> choices = new HashMap<>(lastChoices);
    choices.entrySet().removeIf(chosen -> !known(chosen.getKey(), chosen.getValue(), tests));
    return new Evaluation(
        new EvaluationId(UUID.randomUUID()),
        patient,
        date,
        therapist,
        Evaluation.State.DRAFT,
        versions,
        choices);
  }

  /** Refuses what {@link Session#choose} refuses. */
  static void checkChoice(
      Evaluation evaluation, String key, String code, List<TestDefinition> tests) {
    if (evaluation.state() == Evaluation.State.SIGNED) {
      throw new IllegalStateException("a signed evaluation keeps what it was made under");
    }
    if (!known(key, code, tests)) {
      throw new IllegalArgumentException("no test has the setting " + key + " " + code);
    }
  }

  /** Whether a test has this setting and the setting this code. */
  private static boolean known(String key, String code, List<TestDefinition> tests) {
    return tests.stream()
        .flatMap(test -> test.setting(key).stream())
        .anyMatch(setting -> setting.codes().contains(code));
  }
}
