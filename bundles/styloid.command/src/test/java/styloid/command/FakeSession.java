package styloid.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import styloid.model.Digit;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.Explanation;
import styloid.model.Finding;
import styloid.model.ItemKey;
import styloid.model.ItemRef;
import styloid.model.Message;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Source;
import styloid.model.Therapist;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.plan.Plan;
import styloid.plan.PlanWords;
import styloid.session.ModuleFault;
import styloid.session.OpenEvaluation;
import styloid.session.Session;
import styloid.spi.Caseload;
import styloid.spi.Labels;
import styloid.spi.Progress;
import styloid.spi.Report;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;
import styloid.store.CaseloadRow;
import styloid.store.StoreException;

/** A session without store and modules that does what a test told it to. */
final class FakeSession implements Session {
  private final List<TestDefinition> tests;
  final List<PatientRecord> stored = new ArrayList<>();
  final List<ModuleFault> faults = new ArrayList<>();
  Optional<Plan> order = Optional.empty();
  List<String> formats = List.of("xlsx");
  Optional<StoreException> refusal = Optional.empty();
  Optional<IOException> diskFault = Optional.empty();

  FakeSession(List<TestDefinition> tests) {
    this.tests = tests;
  }

  @Override
  public List<TestDefinition> tests() {
    return tests;
  }

  @Override
  public List<ModuleFault> faults() {
    return faults;
  }

  @Override
  public Texts texts(Locale locale) {
    Map<String, Labels> scopes = new HashMap<>();
    tests.forEach(test -> scopes.put(test.id().value(), test.labels()));
    scopes.put(PlanWords.SCOPE, PlanWords.labels());
    return new Texts(scopes, locale);
  }

  @Override
  public List<CaseloadRow> caseload(String search, int limit) throws StoreException {
    refuse();
    return stored.stream()
        .map(r -> new CaseloadRow(r.patient(), 1, Optional.empty(), 0))
        .limit(limit)
        .toList();
  }

  private void refuse() throws StoreException {
    if (refusal.isPresent()) {
      throw refusal.get();
    }
  }

  /** Mean of the first trials of the left; the right is left open. */
  @Override
  public OpenEvaluation calculate(PatientRecord record, EvaluationId which) {
    EvaluationRecord one = record.evaluations().get(0);
    Snapshot snapshot = one.ledger().snapshot();
    TestDefinition test = tests.get(0);
    ItemKey left = test.keys().stream().filter(k -> k.side() == Side.LEFT).findFirst().get();
    Explanation why =
        new Explanation(
            List.of(Message.of(test.id(), "step", snapshot.quantity(left).get())),
            List.of(Source.memory("Made-up 1985"), Source.verified("Made-up 1999")),
            "mean",
            Optional.empty());
    ResultKey key = new ResultKey(test.id(), new ResultId("mean"), Side.LEFT, Digit.NONE);
    ResultKey open = new ResultKey(test.id(), new ResultId("mean"), Side.RIGHT, Digit.NONE);
    Message missing = Message.of(test.id(), "missing", 1);
    Results results =
        Results.of(
            List.of(
                Result.computed(key, Quantity.of("27.4567", Unit.KILOGRAM_FORCE), why),
                Result.incomplete(open, missing, List.of(left.opposite()), why)));
    Finding finding =
        new Finding(
            "weak", Message.verbatim("weak \u2264 left"), Side.LEFT, List.of(left), List.of(key));
    return new OpenEvaluation(
        new PatientContext(
            record.patient(), one.evaluation(), List.of(), snapshot, results, List.of()),
        one.ledger(),
        tests,
        Set.of(),
        faults,
        List.of(finding),
        Set.of(),
        Map.of(),
        false,
        false,
        false,
        Optional.empty(),
        order);
  }

  @Override
  public Report report(OpenEvaluation evaluation, Locale locale) {
    return new Report(
        evaluation.context(),
        evaluation.ledger(),
        tests,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        texts(locale));
  }

  @Override
  public List<String> formats() {
    return formats;
  }

  @Override
  public CompletableFuture<Path> export(
      Report report, String format, Path target, Progress progress) {
    try {
      if (diskFault.isPresent()) {
        throw diskFault.get();
      }
      Files.writeString(target, report.context().patient().recordNumber());
      return CompletableFuture.completedFuture(target);
    } catch (IOException e) {
      return CompletableFuture.failedFuture(e);
    }
  }

  @Override
  public int importRecords(List<PatientRecord> records) throws StoreException {
    refuse();
    stored.addAll(records);
    return records.size();
  }

  @Override
  public void settle() {
    // nothing runs behind
  }

  @Override
  public List<Evaluation> evaluations(PatientId patient) {
    throw new UnsupportedOperationException();
  }

  @Override
  public List<Precaution> precautions(PatientId patient) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void savePatient(Patient patient, List<Precaution> precautions) {
    throw new UnsupportedOperationException();
  }

  @Override
  public OpenEvaluation open(EvaluationId id) {
    throw new UnsupportedOperationException();
  }

  @Override
  public OpenEvaluation begin(PatientId patient, LocalDate date, TherapistId therapist) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void close() {
    throw new UnsupportedOperationException();
  }

  @Override
  public Optional<OpenEvaluation> current() {
    throw new UnsupportedOperationException();
  }

  @Override
  public OpenEvaluation record(
      ItemKey key, Value value, boolean confirmed, Optional<String> reason) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Optional<Therapist> worker() {
    throw new UnsupportedOperationException();
  }

  @Override
  public void workAs(Therapist who) {
    throw new UnsupportedOperationException();
  }

  @Override
  public OpenEvaluation choose(String key, String code) {
    throw new UnsupportedOperationException();
  }

  @Override
  public Optional<ItemKey> undo() {
    throw new UnsupportedOperationException();
  }

  @Override
  public Optional<ItemKey> redo() {
    throw new UnsupportedOperationException();
  }

  @Override
  public void draft(ItemKey key, String text) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void workOn(Optional<ItemKey> key) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void retrySaving() {
    throw new UnsupportedOperationException();
  }

  @Override
  public void mute(ModuleFault fault) {
    throw new UnsupportedOperationException();
  }

  @Override
  public void tryAgain(ModuleFault fault) {
    throw new UnsupportedOperationException();
  }

  @Override
  public AutoCloseable listen(Consumer<Change> listener) {
    throw new UnsupportedOperationException();
  }

  @Override
  public CompletableFuture<Path> export(
      Caseload caseload, String format, Path target, Progress progress) {
    try (var out = Files.newBufferedWriter(target)) {
      caseload.visits().to(visit -> out.append(visit.patient() + " " + visit.year() + "\n"));
      return CompletableFuture.completedFuture(target);
    } catch (IOException e) {
      return CompletableFuture.failedFuture(e);
    }
  }

  @Override
  public Set<ItemRef> safeItems() {
    return Set.of();
  }

  @Override
  public Optional<PatientRecord> patientRecord(PatientId id) {
    return stored.stream().filter(r -> r.patient().id().equals(id)).findFirst();
  }
}
