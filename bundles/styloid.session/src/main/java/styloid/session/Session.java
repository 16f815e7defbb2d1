package styloid.session;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import org.osgi.annotation.versioning.ProviderType;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.ItemKey;
import styloid.model.ItemRef;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.model.Therapist;
import styloid.model.TherapistId;
import styloid.model.Value;
import styloid.spi.Caseload;
import styloid.spi.Progress;
import styloid.spi.Report;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;
import styloid.store.CaseloadRow;
import styloid.store.StoreException;

/**
 * The service every window and command works through. Calls that open, begin or close are made by
 * one thread (the window's); {@link #record}, {@link #undo} and {@link #redo} return at once, with
 * storing and calculating done on workers. Listeners are called on any thread.
 */
@ProviderType
public interface Session {

  /** The tests of all modules that work, in order. */
  List<TestDefinition> tests();

  /** What is wrong with modules now, outside of any evaluation. */
  List<ModuleFault> faults();

  /** Words of all tests and of the common scope, for readers of {@code locale}. */
  Texts texts(Locale locale);

  /** Opens the store if need be. */
  List<CaseloadRow> caseload(String search, int limit) throws StoreException;

  List<Evaluation> evaluations(PatientId patient) throws StoreException;

  List<Precaution> precautions(PatientId patient) throws StoreException;

  /** Stores a patient's facts; an open evaluation of that patient shows them at once. */
  void savePatient(Patient patient, List<Precaution> precautions) throws StoreException;

  /** Opens an evaluation, once the one that is open is stored and closed. */
  OpenEvaluation open(EvaluationId id) throws StoreException;

  /** Begins an evaluation and opens it. */
  OpenEvaluation begin(PatientId patient, LocalDate date, TherapistId therapist)
      throws StoreException;

  /**
   * Waits until all is stored, then closes what is open.
   *
   * @throws StoreException when entries cannot be stored; the evaluation then stays open, the
   *     entries are kept and tried again
   */
  void close() throws StoreException;

  Optional<OpenEvaluation> current();

  /**
   * Records a value and returns the evaluation with it; what was recorded is held by the session
   * from then on, and by the disk once it is no longer {@link OpenEvaluation#unsaved()}.
   *
   * @throws IllegalStateException when no evaluation is open
   * @throws IllegalArgumentException when no test has this key, the value is impossible for it, or
   *     it is no absence and a precaution in force withholds the item
   */
  default OpenEvaluation record(ItemKey key, Value value, boolean confirmed) {
    return record(key, value, confirmed, Optional.empty());
  }

  /**
   * Records a value that precautions withhold, like {@link #record}, with the reason why and those
   * precautions as they are now. Where none withholds it, it is recorded without a reason.
   *
   * @param reason what the therapist wrote, 1 to {@value styloid.model.InSpite#LONGEST_REASON}
   *     characters
   * @throws IllegalArgumentException also when the reason is blank or too long
   * @throws IllegalStateException also when who works has not said that they are licensed
   */
  default OpenEvaluation recordInSpite(ItemKey key, Value value, boolean confirmed, String reason) {
    return record(key, value, confirmed, Optional.of(reason));
  }

  /** One of the two before: with a reason in spite of precautions, or without one. */
  OpenEvaluation record(ItemKey key, Value value, boolean confirmed, Optional<String> reason);

  /**
   * Chooses a setting for the open evaluation, and for those begun from now on. Stored and
   * calculated on workers, like an entry.
   *
   * @throws IllegalStateException when no evaluation is open, or a signed one
   * @throws IllegalArgumentException when no test has this setting or the setting has no such code
   */
  OpenEvaluation choose(String key, String code);

  /**
   * Who works, by their own word; empty while nobody has said. Holds for all evaluations until
   * somebody else works. Who has not said is not licensed.
   */
  Optional<Therapist> worker();

  /** Says who works from now on: entries are signed with their id. */
  void workAs(Therapist who);

  /**
   * Takes back the latest recording not yet taken back; empty when there is none, or when a value
   * under an override would come back that who works may not record.
   */
  Optional<ItemKey> undo();

  /** Brings back what was taken back last; empty when there is none, or as in {@link #undo}. */
  Optional<ItemKey> redo();

  /** Keeps text under way in a field; blank drops it. */
  void draft(ItemKey key, String text);

  /**
   * Says which item has the therapist's attention, so that the step it belongs to keeps its place
   * in {@link OpenEvaluation#order()}. Nothing happens when no evaluation is open.
   */
  void workOn(Optional<ItemKey> key);

  /** Tries again to store what could not be stored. */
  void retrySaving();

  /** Sets a module aside: it is no longer called until someone tries again. Entries stay. */
  void mute(ModuleFault fault);

  /** Puts a muted module back to work. */
  void tryAgain(ModuleFault fault);

  /** Calls the listener at every change, from now until the handle is closed. */
  AutoCloseable listen(Consumer<Change> listener);

  /** What may have changed. */
  enum Change {
    /** The open evaluation: another one, an entry, results, what is saved. */
    EVALUATION,
    /** Modules came, went or failed. */
    MODULES,
    /** Patients or precautions. */
    PATIENTS
  }

  /**
   * Waits until everything recorded is stored, calculated and put in order; for closing, commands
   * and tests.
   */
  void settle();

  /**
   * A record's evaluation with its results, calculated now by the modules at hand, without store.
   * Earlier evaluations of the record are its past.
   */
  OpenEvaluation calculate(PatientRecord record, EvaluationId which);

  /** All that an exporter needs of an evaluation. */
  Report report(OpenEvaluation evaluation, Locale locale);

  /** Formats that can be written now, such as {@code xlsx}. */
  List<String> formats();

  /**
   * Writes a report on the export worker.
   *
   * @return completes with the file, or exceptionally with {@link java.io.IOException} or {@link
   *     java.util.concurrent.CancellationException}
   */
  CompletableFuture<Path> export(Report report, String format, Path target, Progress progress);

  /** Writes a caseload on an export worker, like a report. */
  CompletableFuture<Path> export(Caseload caseload, String format, Path target, Progress progress);

  /** Items of all tests that may leave in a de-identified export. */
  Set<ItemRef> safeItems();

  /** All that is kept of a patient, for a file. */
  Optional<PatientRecord> patientRecord(PatientId id) throws StoreException;

  /** Stores whole records: all or none. */
  int importRecords(List<PatientRecord> records) throws StoreException;
}
