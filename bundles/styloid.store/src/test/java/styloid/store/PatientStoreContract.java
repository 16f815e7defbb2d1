package styloid.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.DefinitionText;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.Patient;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Text;
import styloid.model.TherapistId;

/** What every engine behind {@link PatientStore} must do. */
abstract class PatientStoreContract {
  @TempDir Path folder;
  final Samples samples = new Samples(11);
  PatientStore store;

  /** A store over the same data at every call, not open yet. */
  abstract PatientStore newStore(Path folder);

  @BeforeEach
  void openStore() throws StoreException {
    store = newStore(folder);
    store.open();
  }

  @AfterEach
  void closeStore() {
    store.close();
  }

  void reopen() throws StoreException {
    store.close();
    store = newStore(folder);
    store.open();
  }

  static StoreException refused(StoreException.Cause why, Executable call) {
    StoreException e = assertThrows(StoreException.class, call);
    assertEquals(why, e.why(), e.getMessage());
    assertTrue(e.getMessage().length() > 20);
    return e;
  }

  Evaluation begun() throws StoreException {
    Patient patient = samples.patient();
    store.savePatient(patient, List.of());
    Evaluation evaluation = samples.evaluation(patient.id(), "2026-03-02");
    store.begin(evaluation, List.of());
    return evaluation;
  }

  List<Entry> ledger(EvaluationId id) throws StoreException {
    return store.evaluation(id).orElseThrow().ledger().entries();
  }

  @Test
  void wholeRecordsOfAnyContentComeBackEqualAfterReopening() throws StoreException {
    ArrayList<PatientRecord> records = new ArrayList<>();
    for (int i = 0; i < 60; i++) {
      records.add(samples.oddRecord());
    }
    int evaluations = records.stream().mapToInt(r -> r.evaluations().size()).sum();
    assertEquals(evaluations, store.importRecords(records));
    reopen();
    for (PatientRecord record : records) {
      assertEquals(Optional.of(record), store.record(record.patient().id()));
    }
  }

  @Test
  void newFactsOfAPatientReplaceTheOldOnes() throws StoreException {
    Patient old = samples.patient("7", "Old Name", "1950-01-01");
    Precaution precaution =
        new Precaution(
            Precaution.Kind.NO_RESISTANCE,
            Region.WRIST,
            Side.LEFT,
            Digit.NONE,
            Optional.empty(),
            Optional.of(LocalDate.of(2026, 4, 1)),
            "surgeon",
            "");
    store.savePatient(old, List.of(precaution, precaution));
    Patient changed =
        new Patient(
            old.id(),
            "8",
            "New Name",
            Optional.empty(),
            Optional.empty(),
            Optional.of(Patient.Dominance.LEFT),
            Set.of(),
            "text",
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    store.savePatient(changed, List.of(precaution));
    reopen();
    assertEquals(Optional.of(changed), store.patient(old.id()));
    assertEquals(List.of(precaution), store.precautions(old.id()));
    assertEquals(1, store.caseload("new", 10).size());
    assertEquals(0, store.caseload("old", 10).size());
  }

  @Test
  void twoPatientsCannotHaveOneRecordNumber() throws StoreException {
    store.savePatient(samples.patient("007", "First", null), List.of());
    Patient second = samples.patient("007", "Second", null);
    StoreException e =
        refused(StoreException.Cause.CONFLICT, () -> store.savePatient(second, List.of()));
    assertTrue(e.getMessage().contains("007") && e.getMessage().contains("First"));
    assertEquals(Optional.empty(), store.patient(second.id()));
  }

  @Test
  void anEvaluationNeedsAKnownPatient() {
    Evaluation evaluation = samples.evaluation(samples.patient().id(), "2026-01-01");
    refused(StoreException.Cause.NOT_FOUND, () -> store.begin(evaluation, List.of()));
  }

  @Test
  void anEvaluationIsBegunOnce() throws StoreException {
    Evaluation evaluation = begun();
    refused(StoreException.Cause.CONFLICT, () -> store.begin(evaluation, List.of()));
  }

  @Test
  void nothingIsAppendedToAnUnknownEvaluation() {
    EvaluationId unknown = samples.evaluation(samples.patient().id(), "2026-01-01").id();
    Entry entry = samples.entry("1");
    refused(StoreException.Cause.NOT_FOUND, () -> store.append(unknown, List.of(entry)));
    refused(StoreException.Cause.NOT_FOUND, () -> store.draft(unknown, entry.key(), "1"));
    DefinitionText text = new DefinitionText(new TestId("grip"), "1", "{}");
    refused(StoreException.Cause.NOT_FOUND, () -> store.addDefinition(unknown, text));
    refused(StoreException.Cause.NOT_FOUND, () -> store.choose(unknown, "grip.norm", "a"));
  }

  @Test
  void entriesKeepTheOrderOfAppendingWhateverTheirClock() throws StoreException {
    Evaluation evaluation = begun();
    Entry late = samples.entry("1");
    Entry early = samples.entry("2");
    store.append(evaluation.id(), List.of(early));
    store.append(evaluation.id(), List.of(late, samples.entry("3.50")));
    reopen();
    List<Entry> entries = ledger(evaluation.id());
    assertEquals(List.of(early, late), entries.subList(0, 2));
    assertEquals(3, entries.size());
  }

  @Test
  void anEntryAppendedTwiceIsStoredOnce() throws StoreException {
    Evaluation evaluation = begun();
    Entry entry = samples.entry("1");
    Entry next = samples.entry("2");
    store.append(evaluation.id(), List.of(entry));
    store.append(evaluation.id(), List.of(entry, next));
    assertEquals(List.of(entry, next), ledger(evaluation.id()));
  }

  @Test
  void anEntryIsNeverAlteredAndAFailingBatchLeavesNoTrace() throws StoreException {
    Evaluation evaluation = begun();
    Entry entry = samples.entry("1");
    store.append(evaluation.id(), List.of(entry));
    Entry altered =
        new Entry(
            entry.id(),
            entry.key(),
            Optional.of(new Text("other")),
            entry.at(),
            entry.by(),
            entry.confirmed());
    refused(
        StoreException.Cause.CONFLICT,
        () -> store.append(evaluation.id(), List.of(samples.entry("2"), altered)));
    assertEquals(List.of(entry), ledger(evaluation.id()));
  }

  @Test
  void anEntryOfAnotherEvaluationIsRefused() throws StoreException {
    Evaluation one = begun();
    Evaluation other = begun();
    Entry entry = samples.entry("1");
    store.append(one.id(), List.of(entry));
    refused(StoreException.Cause.CONFLICT, () -> store.append(other.id(), List.of(entry)));
  }

  @Test
  void appendingDropsTheDraftOfThatKeyOnly() throws StoreException {
    Evaluation evaluation = begun();
    ItemKey other = Samples.key("tip");
    Entry entry = samples.entry("38.5");
    store.draft(evaluation.id(), entry.key(), "38.");
    store.draft(evaluation.id(), other, "4");
    store.append(evaluation.id(), List.of(entry));
    reopen();
    assertEquals(Map.of(other, "4"), store.evaluation(evaluation.id()).orElseThrow().drafts());
  }

  @Test
  void aDraftIsReplacedAndABlankOneDropsIt() throws StoreException {
    Evaluation evaluation = begun();
    ItemKey key = Samples.key("tip");
    store.draft(evaluation.id(), key, "4");
    store.draft(evaluation.id(), key, "4. ");
    assertEquals(Map.of(key, "4. "), store.evaluation(evaluation.id()).orElseThrow().drafts());
    store.draft(evaluation.id(), key, " ");
    assertEquals(Map.of(), store.evaluation(evaluation.id()).orElseThrow().drafts());
  }

  @Test
  void aTestThatComesLaterIsAddedWithItsVersionAndThenLeftAlone() throws StoreException {
    Evaluation evaluation = begun();
    DefinitionText first = new DefinitionText(new TestId("grip"), "1", "{\"a\": 1}\r\n");
    store.addDefinition(evaluation.id(), first);
    store.addDefinition(evaluation.id(), new DefinitionText(new TestId("grip"), "2", "{\"a\": 2}"));
    reopen();
    EvaluationRecord record = store.evaluation(evaluation.id()).orElseThrow();
    assertEquals(List.of(first), record.definitions());
    assertEquals(Map.of(new TestId("grip"), "1"), record.evaluation().versions());
  }

  @Test
  void aChoiceIsKeptWithItsEvaluationAndAsTheLastOne() throws StoreException {
    Evaluation one = begun();
    Evaluation other = begun();
    store.choose(one.id(), "grip.norm", "a");
    store.choose(one.id(), "grip.norm", "b");
    store.choose(other.id(), "grading.scheme", "whole");
    reopen();
    assertEquals(
        Map.of("grip.norm", "b"), store.evaluation(one.id()).orElseThrow().evaluation().choices());
    assertEquals(
        Map.of("grading.scheme", "whole"),
        store.evaluation(other.id()).orElseThrow().evaluation().choices());
    assertEquals(Map.of("grip.norm", "b", "grading.scheme", "whole"), store.lastChoices());
  }

  @Test
  void whatIsImportedIsNoChoiceMadeHere() throws StoreException {
    store.importRecords(List.of(recordWithEvaluation()));
    assertEquals(Map.of(), store.lastChoices());
  }

  @Test
  void aSignedEvaluationKeepsWhatItWasMadeUnder() throws StoreException {
    Evaluation draft = samples.evaluation(samples.patient().id(), "2026-01-01");
    Patient patient = samples.patient();
    store.savePatient(patient, List.of());
    Evaluation signed =
        new Evaluation(
            draft.id(),
            patient.id(),
            draft.date(),
            draft.therapist(),
            Evaluation.State.SIGNED,
            Map.of(),
            Map.of("grip.norm", "a"));
    store.begin(signed, List.of());
    refused(StoreException.Cause.CONFLICT, () -> store.choose(signed.id(), "grip.norm", "b"));
    assertEquals(
        signed.choices(), store.evaluation(signed.id()).orElseThrow().evaluation().choices());
    assertEquals(Map.of(), store.lastChoices());
  }

  @Test
  void headsAreGivenNewestFirst() throws StoreException {
    Patient patient = samples.patient();
    store.savePatient(patient, List.of());
    for (String date : List.of("2026-02-01", "2026-03-01", "2025-12-31")) {
      store.begin(samples.evaluation(patient.id(), date), List.of());
    }
    assertEquals(
        List.of("2026-03-01", "2026-02-01", "2025-12-31"),
        store.evaluations(patient.id()).stream().map(e -> e.date().toString()).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          ''           | 100% Real, Zoë Ångström, Bob_Bee
          zoe          | Zoë Ångström
          ÅNGST        | Zoë Ångström
          ngström zo   | Zoë Ångström
          000          | 100% Real, Zoë Ångström, Bob_Bee
          0002         | Zoë Ångström
          1950-02      | Bob_Bee
          %            | 100% Real
          _            | Bob_Bee
          \\           |
          o'           |
          bee 1950     | Bob_Bee
          bee zoe      |
          """)
  void theCaseloadIsSearchedByPartsOfNameNumberAndBirthDate(String search, String found)
      throws StoreException {
    store.savePatient(samples.patient("0001", "100% Real", "1931-07-08"), List.of());
    store.savePatient(samples.patient("0002", "Zoë Ångström", "1985-12-01"), List.of());
    store.savePatient(samples.patient("0003", "Bob_Bee", "1950-02-03"), List.of());
    List<String> names =
        store.caseload(search, 10).stream().map(r -> r.patient().name()).sorted().toList();
    List<String> expected = found == null ? List.of() : List.of(found.split(", "));
    assertEquals(expected.stream().sorted().toList(), names);
  }

  @Test
  void thoseSeenLastStandFirstWithTheirCounts() throws StoreException {
    Patient never = samples.patient("1", "Aa", null);
    Patient longAgo = samples.patient("2", "Bb", null);
    Patient lately = samples.patient("3", "Cc", null);
    for (Patient patient : List.of(never, longAgo, lately)) {
      store.savePatient(patient, List.of());
    }
    store.begin(samples.evaluation(longAgo.id(), "2020-01-01"), List.of());
    store.begin(samples.evaluation(lately.id(), "2019-01-01"), List.of());
    Evaluation draft = samples.evaluation(lately.id(), "2026-01-01");
    store.importRecords(
        List.of(
            new PatientRecord(
                lately,
                List.of(),
                List.of(
                    new EvaluationRecord(
                        new Evaluation(
                            draft.id(),
                            lately.id(),
                            draft.date(),
                            draft.therapist(),
                            Evaluation.State.SIGNED,
                            Map.of(),
                            Map.of()),
                        Ledger.empty(),
                        List.of(),
                        Map.of())))));
    assertEquals(
        List.of(
            new CaseloadRow(lately, 2, Optional.of(LocalDate.of(2026, 1, 1)), 1),
            new CaseloadRow(longAgo, 1, Optional.of(LocalDate.of(2020, 1, 1)), 1),
            new CaseloadRow(never, 0, Optional.empty(), 0)),
        store.caseload("", 10));
    assertEquals(2, store.caseload("", 2).size());
  }

  @Test
  void importingAgainChangesNothing() throws StoreException {
    PatientRecord record = recordWithEvaluation();
    assertEquals(1, store.importRecords(List.of(record)));
    assertEquals(0, store.importRecords(List.of(record, record)));
    assertEquals(Optional.of(record), store.record(record.patient().id()));
  }

  @Test
  void importingTakesInEntriesThatAKnownEvaluationLacks() throws StoreException {
    PatientRecord record = recordWithEvaluation();
    store.importRecords(List.of(record));
    EvaluationRecord evaluation = record.evaluations().get(0);
    Entry more = samples.entry("9");
    PatientRecord longer =
        new PatientRecord(
            record.patient(),
            record.precautions(),
            List.of(
                new EvaluationRecord(
                    evaluation.evaluation(),
                    evaluation.ledger().append(more),
                    evaluation.definitions(),
                    evaluation.drafts())));
    assertEquals(0, store.importRecords(List.of(longer)));
    assertEquals(Optional.of(longer), store.record(record.patient().id()));
  }

  @Test
  void anImportIsAllOrNothing() throws StoreException {
    PatientRecord good = recordWithEvaluation();
    Patient known = samples.patient("55", "Known", null);
    store.savePatient(known, List.of());
    Patient renamed = samples.patient("55", "Known", null);
    PatientRecord bad = new PatientRecord(renamed, List.of(), List.of());
    refused(StoreException.Cause.CONFLICT, () -> store.importRecords(List.of(good, bad)));
    assertEquals(Optional.empty(), store.record(good.patient().id()));
    assertEquals(1, store.caseload("", 10).size());
  }

  @Test
  void anImportThatContradictsAKnownEvaluationIsRefused() throws StoreException {
    PatientRecord record = recordWithEvaluation();
    store.importRecords(List.of(record));
    Evaluation head = record.evaluations().get(0).evaluation();
    Evaluation other =
        new Evaluation(
            head.id(),
            head.patient(),
            head.date(),
            new TherapistId("Someone Else"),
            head.state(),
            head.versions(),
            head.choices());
    PatientRecord bad =
        new PatientRecord(
            record.patient(),
            record.precautions(),
            List.of(new EvaluationRecord(other, Ledger.empty(), List.of(), Map.of())));
    refused(StoreException.Cause.CONFLICT, () -> store.importRecords(List.of(bad)));
  }

  private PatientRecord recordWithEvaluation() {
    PatientRecord record = samples.oddRecord();
    while (record.evaluations().size() != 1) {
      record = samples.oddRecord();
    }
    return record;
  }

  @Test
  void severalThreadsAppendWithoutLoss() throws Exception {
    Evaluation evaluation = begun();
    List<List<Entry>> parts = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      ArrayList<Entry> part = new ArrayList<>();
      for (int j = 0; j < 25; j++) {
        part.add(samples.entry("1." + j));
      }
      parts.add(part);
    }
    ExecutorService pool = Executors.newFixedThreadPool(4);
    ArrayList<Future<?>> running = new ArrayList<>();
    for (List<Entry> part : parts) {
      running.add(pool.submit(() -> appendEach(evaluation.id(), part)));
    }
    for (Future<?> one : running) {
      one.get();
    }
    pool.shutdown();
    List<Entry> ledger = ledger(evaluation.id());
    assertEquals(100, ledger.size());
    for (List<Entry> part : parts) {
      assertEquals(part, ledger.stream().filter(part::contains).toList());
    }
  }

  private Void appendEach(EvaluationId id, List<Entry> entries) throws StoreException {
    for (Entry entry : entries) {
      store.append(id, List.of(entry));
      store.evaluation(id);
    }
    return null;
  }

  @Test
  void openingTwiceDoesNothing() throws StoreException {
    begun();
    store.open();
    assertEquals(1, store.caseload("", 10).size());
  }

  @Test
  void aStoreThatIsNotOpenSaysSo() {
    store.close();
    refused(StoreException.Cause.OTHER, () -> store.caseload("", 10));
    store.close();
  }

  @Test
  void whatIsUnknownIsEmpty() throws StoreException {
    Patient patient = samples.patient();
    assertEquals(Optional.empty(), store.patient(patient.id()));
    assertEquals(Optional.empty(), store.record(patient.id()));
    assertEquals(List.of(), store.evaluations(patient.id()));
    assertEquals(List.of(), store.precautions(patient.id()));
    assertEquals(
        Optional.empty(), store.evaluation(samples.evaluation(patient.id(), "2026-01-01").id()));
  }
}
