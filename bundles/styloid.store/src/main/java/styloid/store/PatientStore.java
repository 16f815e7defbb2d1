package styloid.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.annotation.versioning.ProviderType;
import styloid.model.DefinitionText;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;

/**
 * Patients and their evaluations, durable: when a call that changes something returns, the change
 * survives a kill and a power cut; when it throws, nothing of it was stored. Safe for use from
 * several threads.
 */
@ProviderType
public interface PatientStore extends AutoCloseable {

  /**
   * Opens the store, creating or migrating it as needed. Must be called before anything else; once
   * open it does nothing.
   *
   * @throws StoreException in use by another program, of a newer version, damaged, read-only
   */
  void open() throws StoreException;

  /**
   * One row a patient, those seen last first.
   *
   * @param search words, each a part of name, record number or birth date (ISO), without regard to
   *     case and accents; blank for all
   * @param limit most rows given
   */
  List<CaseloadRow> caseload(String search, int limit) throws StoreException;

  Optional<Patient> patient(PatientId id) throws StoreException;

  /**
   * Stores a new patient or the new facts of a known one, and their precautions.
   *
   * @throws StoreException also when another patient has the same record number
   */
  void savePatient(Patient patient, List<Precaution> precautions) throws StoreException;

  List<Precaution> precautions(PatientId id) throws StoreException;

  /** Heads of a patient's evaluations, newest first. */
  List<Evaluation> evaluations(PatientId id) throws StoreException;

  Optional<EvaluationRecord> evaluation(EvaluationId id) throws StoreException;

  /** Stores the head of a new evaluation, with the tests as they are defined now. */
  void begin(Evaluation evaluation, List<DefinitionText> definitions) throws StoreException;

  /**
   * Adds a test that came to a running evaluation, with its version, or leaves it as it is when it
   * is there.
   */
  void addDefinition(EvaluationId id, DefinitionText definition) throws StoreException;

  /**
   * Keeps what was chosen for a setting with the evaluation, and as the choice made last.
   *
   * @throws StoreException also when there is no such evaluation or it is signed
   */
  void choose(EvaluationId id, String key, String value) throws StoreException;

  /** What was chosen last by {@link #choose} for each setting, by its key. */
  Map<String, String> lastChoices() throws StoreException;

  /**
   * Appends to an evaluation's ledger, after all that is there. An entry whose id is there already
   * is not stored twice; with other content it is a conflict. The draft text of the same key is
   * dropped in the same step.
   */
  void append(EvaluationId id, List<Entry> entries) throws StoreException;

  /** Keeps text under way in a field; blank drops it. */
  void draft(EvaluationId id, ItemKey key, String text) throws StoreException;

  /** All that is kept of a patient. */
  Optional<PatientRecord> record(PatientId id) throws StoreException;

  /**
   * Stores whole records in one step: all of them or, when one fails, none. A record whose patient
   * is known must agree with it in facts and precautions; evaluations and entries already there are
   * left as they are, entries a known evaluation lacks are appended.
   *
   * @return how many evaluations were new
   */
  int importRecords(List<PatientRecord> records) throws StoreException;

  @Override
  void close();
}
