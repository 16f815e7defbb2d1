package styloid.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.DefinitionText;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.store.CaseloadRow;
import styloid.store.PatientStore;
import styloid.store.StoreException;

/** A store in memory that can be told that the disk is full. */
final class MemoryStore implements PatientStore {
  private final Map<PatientId, Patient> patients = new LinkedHashMap<>();
  private final Map<PatientId, List<Precaution>> precautions = new HashMap<>();
  private final Map<EvaluationId, EvaluationRecord> records = new LinkedHashMap<>();
  private final Map<String, String> lastChoices = new HashMap<>();
  private boolean full;

  synchronized void fill(boolean isFull) {
    full = isFull;
  }

  private void write() throws StoreException {
    if (full) {
      throw new StoreException(StoreException.Cause.DISK_FULL, "The disk is full.", null);
    }
  }

  @Override
  public void open() {
    // always open
  }

  @Override
  public synchronized List<CaseloadRow> caseload(String search, int limit) {
    return patients.values().stream()
        .map(p -> new CaseloadRow(p, evaluations(p.id()).size(), Optional.empty(), 0))
        .limit(limit)
        .toList();
  }

  @Override
  public synchronized Optional<Patient> patient(PatientId id) {
    return Optional.ofNullable(patients.get(id));
  }

  @Override
  public synchronized void savePatient(Patient patient, List<Precaution> limits)
      throws StoreException {
    write();
    patients.put(patient.id(), patient);
    precautions.put(patient.id(), limits);
  }

  @Override
  public synchronized List<Precaution> precautions(PatientId id) {
    return precautions.getOrDefault(id, List.of());
  }

  @Override
  public synchronized List<Evaluation> evaluations(PatientId id) {
    return records.values().stream()
        .map(EvaluationRecord::evaluation)
        .filter(e -> e.patient().equals(id))
        .sorted(Comparator.comparing(Evaluation::date).reversed())
        .toList();
  }

  @Override
  public synchronized Optional<EvaluationRecord> evaluation(EvaluationId id) {
    return Optional.ofNullable(records.get(id));
  }

  @Override
  public synchronized void begin(Evaluation evaluation, List<DefinitionText> definitions)
      throws StoreException {
    write();
    records.put(
        evaluation.id(), new EvaluationRecord(evaluation, Ledger.empty(), definitions, Map.of()));
  }

  @Override
  public synchronized void addDefinition(EvaluationId id, DefinitionText definition)
      throws StoreException {
    write();
    EvaluationRecord old = records.get(id);
    ArrayList<DefinitionText> all = new ArrayList<>(old.definitions());
    all.add(definition);
    records.put(id, new EvaluationRecord(old.evaluation(), old.ledger(), all, old.drafts()));
  }

  @Override
  public synchronized void choose(EvaluationId id, String key, String value) throws StoreException {
    write();
    EvaluationRecord old = records.get(id);
    records.put(
        id,
        new EvaluationRecord(
            old.evaluation().withChoice(key, value),
            old.ledger(),
            old.definitions(),
            old.drafts()));
    lastChoices.put(key, value);
  }

  @Override
  public synchronized Map<String, String> lastChoices() {
    return Map.copyOf(lastChoices);
  }

  @Override
  public synchronized void append(EvaluationId id, List<Entry> entries) throws StoreException {
    write();
    EvaluationRecord old = records.get(id);
    ArrayList<Entry> all = new ArrayList<>(old.ledger().entries());
    all.addAll(entries);
    HashMap<ItemKey, String> drafts = new HashMap<>(old.drafts());
    entries.forEach(e -> drafts.remove(e.key()));
    records.put(
        id, new EvaluationRecord(old.evaluation(), Ledger.of(all), old.definitions(), drafts));
  }

  @Override
  public synchronized void draft(EvaluationId id, ItemKey key, String text) throws StoreException {
    write();
    EvaluationRecord old = records.get(id);
    HashMap<ItemKey, String> drafts = new HashMap<>(old.drafts());
    if (text.isBlank()) {
      drafts.remove(key);
    } else {
      drafts.put(key, text);
    }
    records.put(
        id, new EvaluationRecord(old.evaluation(), old.ledger(), old.definitions(), drafts));
  }

  @Override
  public synchronized Optional<PatientRecord> record(PatientId id) {
    return patient(id)
        .map(
            p ->
                new PatientRecord(
                    p,
                    precautions(id),
                    records.values().stream()
                        .filter(r -> r.evaluation().patient().equals(id))
                        .toList()));
  }

  @Override
  public synchronized int importRecords(List<PatientRecord> imported) throws StoreException {
    write();
    int added = 0;
    for (PatientRecord record : imported) {
      savePatient(record.patient(), record.precautions());
      for (EvaluationRecord evaluation : record.evaluations()) {
        records.put(evaluation.evaluation().id(), evaluation);
        added++;
      }
    }
    return added;
  }

  @Override
  public void close() {
    // nothing to let go of
  }
}
