package styloid.session;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import styloid.exchange.DefinitionFile;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.ItemKey;
import styloid.model.ItemRef;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.model.Therapist;
import styloid.model.TherapistId;
import styloid.model.Value;
import styloid.spi.Caseload;
import styloid.spi.Exporter;
import styloid.spi.FindingRule;
import styloid.spi.ModuleNotice;
import styloid.spi.Progress;
import styloid.spi.Report;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.spi.Texts;
import styloid.store.PatientStore;
import styloid.store.StoreException;

/** The session on its workers: one calculates, one plans, one stores, one exports. */
@Component(service = Session.class)
public final class SessionService extends Reading {
  private static final long MODULE_LIMIT_MILLIS = 1000;

  private final Clock clock;
  private final ModuleGuard guard = new ModuleGuard(MODULE_LIMIT_MILLIS);
  private final ModuleBook book = new ModuleBook(guard);
  private final Calculator calculator = new Calculator(book, guard);
  private final Reports reports = new Reports(book, guard);
  private final Ordering ordering = new Ordering(book);
  private final Workers workers = new Workers();
  private final Duty duty = new Duty();
  private final List<Exporter> exporters = new CopyOnWriteArrayList<>();
  private final Listeners listeners = new Listeners();
  private volatile Sitting sitting;

  @Activate
  public SessionService() {
    this(Clock.systemUTC());
  }

  SessionService(Clock clock) {
    this.clock = clock;
  }

  @Deactivate
  void deactivate() {
    retrySaving();
    settle();
    workers.close();
    guard.close();
  }

  @Reference(
      cardinality = ReferenceCardinality.OPTIONAL,
      policy = ReferencePolicy.DYNAMIC,
      policyOption = ReferencePolicyOption.GREEDY)
  void setStore(PatientStore bound) {
    store = bound;
    listeners.tell(Change.PATIENTS);
  }

  void unsetStore(PatientStore unbound) {
    if (store == unbound) {
      store = null;
    }
  }

  @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
  void addModule(TestModule module) {
    change(() -> book.add(module));
  }

  void removeModule(TestModule module) {
    change(() -> book.remove(module));
  }

  private void change(Runnable modules) {
    workers.calculate(modules);
    workers.calculate(this::modulesChanged);
  }

  @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
  void addRule(FindingRule rule) {
    book.add(rule);
    modulesChanged();
  }

  void removeRule(FindingRule rule) {
    book.remove(rule);
    modulesChanged();
  }

  @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
  void addExporter(Exporter exporter) {
    exporters.add(exporter);
  }

  void removeExporter(Exporter exporter) {
    exporters.remove(exporter);
  }

  @Reference(cardinality = ReferenceCardinality.MULTIPLE, policy = ReferencePolicy.DYNAMIC)
  void addNotice(ModuleNotice notice) {
    book.add(notice, listeners);
  }

  void removeNotice(ModuleNotice notice) {
    book.remove(notice, listeners);
  }

  private void modulesChanged() {
    listeners.tell(Change.MODULES);
    recalculate();
  }

  @Override
  public List<TestDefinition> tests() {
    return book.definitions();
  }

  @Override
  public List<ModuleFault> faults() {
    return book.faults();
  }

  @Override
  public Texts texts(Locale locale) {
    return reports.texts(current().map(OpenEvaluation::tests).orElseGet(this::tests), locale);
  }

  @Override
  public void savePatient(Patient patient, List<Precaution> precautions) throws StoreException {
    Records.opened(store).savePatient(patient, precautions);
    Sitting open = sitting;
    if (open != null && open.desk().context().patient().id().equals(patient.id())) {
      open.desk().patient(patient, precautions);
      recalculate();
    }
    listeners.tell(Change.PATIENTS);
  }

  @Override
  public OpenEvaluation open(EvaluationId id) throws StoreException {
    PatientStore from = Records.opened(store);
    EvaluationRecord record = from.evaluation(id).orElseThrow(() -> Records.missing("evaluation"));
    return seat(Records.context(record, from), record, from);
  }

  @Override
  public OpenEvaluation begin(PatientId patient, LocalDate date, TherapistId therapist)
      throws StoreException {
    Evaluation evaluation =
        Records.fresh(patient, date, therapist, tests(), Records.opened(store).lastChoices());
    Records.opened(store).begin(evaluation, tests().stream().map(DefinitionFile::write).toList());
    listeners.tell(Change.PATIENTS);
    return open(evaluation.id());
  }

  private OpenEvaluation seat(PatientContext context, EvaluationRecord record, PatientStore into)
      throws StoreException {
    close();
    sitting = Sitting.at(context, record, into, workers.storing(), listeners);
    recalculate();
    workers.warmUpOnce(exporters);
    return view(sitting);
  }

  @Override
  public void close() throws StoreException {
    Sitting open = sitting;
    if (open != null) {
      open.saver().retry();
      settle();
      open.saver().requireStored();
      sitting = null;
      listeners.tell(Change.EVALUATION);
    }
  }

  @Override
  public Optional<Therapist> worker() {
    return duty.worker();
  }

  @Override
  public void workAs(Therapist who) {
    duty.workAs(who);
    listeners.tell(Change.EVALUATION);
  }

  @Override
  public Optional<OpenEvaluation> current() {
    return Optional.ofNullable(sitting).map(this::view);
  }

  private OpenEvaluation view(Sitting open) {
    return open.desk().view(tests());
  }

  @Override
  public OpenEvaluation record(
      ItemKey key, Value value, boolean confirmed, Optional<String> reason) {
    Sitting open = seated();
    TestDefinition test = Definitions.taking(tests(), key, value);
    UndoStack.Content content =
        duty.content(test, open.desk().context(), key, value, confirmed, reason);
    open.desk().takeUp(test).ifPresent(open.saver()::add);
    keep(open, open.desk().record(key, content, clock.instant(), duty));
    return view(open);
  }

  @Override
  public OpenEvaluation choose(String key, String code) {
    Sitting open = seated();
    Records.checkChoice(open.desk().context().evaluation(), key, code, tests());
    open.desk().choose(key, code);
    open.saver().choose(key, code);
    listeners.tell(Change.EVALUATION);
    recalculate();
    return view(open);
  }

  private Sitting seated() {
    return Optional.ofNullable(sitting)
        .orElseThrow(() -> new IllegalStateException("no evaluation is open"));
  }

  private void keep(Sitting open, Entry entry) {
    open.saver().add(entry);
    listeners.tell(Change.EVALUATION);
    recalculate();
  }

  @Override
  public Optional<ItemKey> undo() {
    return kept(seated().desk().undo(clock.instant(), duty));
  }

  @Override
  public Optional<ItemKey> redo() {
    return kept(seated().desk().redo(clock.instant(), duty));
  }

  private Optional<ItemKey> kept(Optional<Entry> entry) {
    entry.ifPresent(e -> keep(seated(), e));
    return entry.map(Entry::key);
  }

  @Override
  public void draft(ItemKey key, String text) {
    Sitting open = seated();
    open.desk().draft(key, text);
    open.saver().draft(key, text);
  }

  @Override
  public void workOn(Optional<ItemKey> key) {
    Sitting open = sitting;
    if (open != null && open.desk().workOn(ordering.stepOf(key))) {
      orderAnew(open);
    }
  }

  @Override
  public void retrySaving() {
    Optional.ofNullable(sitting).ifPresent(open -> open.saver().retry());
  }

  @Override
  public void mute(ModuleFault fault) {
    guard.mute(fault.module());
    modulesChanged();
  }

  @Override
  public void tryAgain(ModuleFault fault) {
    guard.forgive(fault.module());
    modulesChanged();
  }

  @Override
  public AutoCloseable listen(Consumer<Change> listener) {
    return listeners.add(listener);
  }

  private void recalculate() {
    Sitting open = sitting;
    if (open != null) {
      open.desk().calculationBegins();
      workers.calculateSoon(() -> calculate(open));
    }
  }

  private void calculate(Sitting open) {
    PatientContext basis = open.desk().context();
    boolean current = open.desk().calculated(basis, calculator.calculate(basis));
    if (!current) {
      workers.calculateSoon(() -> calculate(open));
    }
    listeners.tell(Change.EVALUATION);
    if (current) {
      orderAnew(open);
    }
  }

  /** After the results, which do not wait for it. */
  private void orderAnew(Sitting open) {
    workers.planSoon(
        () -> {
          if (ordering.update(open.desk())) {
            listeners.tell(Change.EVALUATION);
          }
        });
  }

  @Override
  public void settle() {
    workers.settle(() -> Optional.ofNullable(sitting).map(Sitting::atRest).orElse(true));
  }

  @Override
  public OpenEvaluation calculate(PatientRecord record, EvaluationId which) {
    workers.settle(() -> true);
    Desk desk = Records.desk(record, Records.chosen(record, which));
    ordering.update(desk.calculated(calculator));
    return desk.view(tests());
  }

  @Override
  public Report report(OpenEvaluation evaluation, Locale locale) {
    return reports.report(evaluation, locale);
  }

  @Override
  public List<String> formats() {
    return exporters.stream().map(Exporter::format).sorted().toList();
  }

  @Override
  public CompletableFuture<Path> export(
      Report report, String format, Path target, Progress progress) {
    return workers.export(exporters, format, target, e -> e.write(report, target, progress));
  }

  @Override
  public CompletableFuture<Path> export(
      Caseload caseload, String format, Path target, Progress progress) {
    return workers.export(exporters, format, target, e -> e.write(caseload, target, progress));
  }

  @Override
  public Set<ItemRef> safeItems() {
    return book.safeItems();
  }

  @Override
  public int importRecords(List<PatientRecord> records) throws StoreException {
    settle();
    int added = Records.opened(store).importRecords(Definitions.complete(records, tests()));
    listeners.tell(Change.PATIENTS);
    return added;
  }
}
