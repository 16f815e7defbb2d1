package styloid.shell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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

/** A store without a disk, which can be told to refuse. */
final class MemoryStore implements PatientStore {
  private final Map<PatientId, Patient> patients = new LinkedHashMap<>();
  private final Map<PatientId, List<Precaution>> precautions = new HashMap<>();
  private final Map<EvaluationId, EvaluationRecord> evaluations = new LinkedHashMap<>();
  private volatile Optional<StoreException> fault = Optional.empty();
  private final Map<String, String> lastChoices = new HashMap<>();

  void refuse(StoreException why) {
    fault = Optional.ofNullable(why);
  }

  private void check() throws StoreException {
    if (fault.isPresent()) {
      throw fault.get();
    }
  }

  @Override
  public void open() throws StoreException {
    check();
  }

  @Override
  public synchronized List<CaseloadRow> caseload(String search, int limit) throws StoreException {
    check();
    String part = search.toLowerCase(Locale.ROOT);
    return patients.values().stream()
        .filter(p -> text(p).contains(part))
        .map(this::row)
        .sorted(
            Comparator.comparing(
                    (CaseloadRow r) -> r.lastVisit().orElse(LocalDate.MIN),
                    Comparator.naturalOrder())
                .reversed())
        .limit(limit)
        .toList();
  }

  private static String text(Patient p) {
    return (p.name()
            + " "
            + p.recordNumber()
            + " "
            + p.birthDate().map(LocalDate::toString).orElse(""))
        .toLowerCase(Locale.ROOT);
  }

  private CaseloadRow row(Patient patient) {
    List<Evaluation> all = evaluations(patient.id());
    int drafts = (int) all.stream().filter(e -> e.state() == Evaluation.State.DRAFT).count();
    return new CaseloadRow(
        patient, all.size(), all.stream().findFirst().map(Evaluation::date), drafts);
  }

  @Override
  public synchronized Optional<Patient> patient(PatientId id) {
    return Optional.ofNullable(patients.get(id));
  }

  @Override
  public synchronized void savePatient(Patient patient, List<Precaution> limits)
      throws StoreException {
    check();
    patients.put(patient.id(), patient);
    precautions.put(patient.id(), List.copyOf(limits));
  }

  @Override
  public synchronized List<Precaution> precautions(PatientId id) {
    return precautions.getOrDefault(id, List.of());
  }

  @Override
  public synchronized List<Evaluation> evaluations(PatientId id) {
    return evaluations.values().stream()
        .map(EvaluationRecord::evaluation)
        .filter(e -> e.patient().equals(id))
        .sorted(Comparator.comparing(Evaluation::date).reversed())
        .toList();
  }

  @Override
  public synchronized Optional<EvaluationRecord> evaluation(EvaluationId id) {
    return Optional.ofNullable(evaluations.get(id));
  }

  @Override
  public synchronized void begin(Evaluation evaluation, List<DefinitionText> definitions)
      throws StoreException {
    check();
    evaluations.put(
        evaluation.id(), new EvaluationRecord(evaluation, Ledger.empty(), definitions, Map.of()));
  }

  @Override
  public synchronized void addDefinition(EvaluationId id, DefinitionText definition) {
    EvaluationRecord before = evaluations.get(id);
    ArrayList<DefinitionText> all = new ArrayList<>(before.definitions());
    all.add(definition);
    evaluations.put(
        id, new EvaluationRecord(before.evaluation(), before.ledger(), all, before.drafts()));
  }

  @Override
  public synchronized void choose(EvaluationId id, String key, String value) throws StoreException {
    check();
    EvaluationRecord old = evaluations.get(id);
    evaluations.put(
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
    check();
    EvaluationRecord before = evaluations.get(id);
    ArrayList<Entry> all = new ArrayList<>(before.ledger().entries());
    all.addAll(entries);
    HashMap<ItemKey, String> drafts = new HashMap<>(before.drafts());
    entries.forEach(e -> drafts.remove(e.key()));
    evaluations.put(
        id,
        new EvaluationRecord(before.evaluation(), Ledger.of(all), before.definitions(), drafts));
  }

  @Override
  public synchronized void draft(EvaluationId id, ItemKey key, String text) {
    EvaluationRecord before = evaluations.get(id);
    HashMap<ItemKey, String> drafts = new HashMap<>(before.drafts());
    if (text.isBlank()) {
      drafts.remove(key);
    } else {
      drafts.put(key, text);
    }
    evaluations.put(
        id,
        new EvaluationRecord(before.evaluation(), before.ledger(), before.definitions(), drafts));
  }

  @Override
  public synchronized Optional<PatientRecord> record(PatientId id) {
    return patient(id)
        .map(
            p ->
                new PatientRecord(
                    p,
                    precautions(id),
                    evaluations.values().stream()
                        .filter(r -> r.evaluation().patient().equals(id))
                        .toList()));
  }

  @Override
  public int importRecords(List<PatientRecord> records) {
    return 0;
  }

  @Override
  public void close() {
    // nothing is held
  }
}
