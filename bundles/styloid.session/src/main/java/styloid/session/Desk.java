package styloid.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import styloid.exchange.DefinitionFile;
import styloid.model.DefinitionText;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Finding;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Results;
import styloid.model.TestId;
import styloid.plan.StepId;
import styloid.spi.TestDefinition;

/**
 * The one evaluation that is open: the only place where state changes. Every change happens under
 * the desk's own lock and leaves an immutable {@link OpenEvaluation}.
 */
final class Desk {
  private final Map<TestId, TestDefinition> stored = new LinkedHashMap<>();
  private final Set<DefinitionText> storedTexts = new HashSet<>();
  private final Set<TestDefinition> takenUp = Collections.newSetFromMap(new IdentityHashMap<>());
  private final UndoStack undo = new UndoStack();
  private final Map<EntryId, ItemKey> unsaved = new HashMap<>();
  private final Map<ItemKey, String> drafts = new HashMap<>();
  private PatientContext context;
  private Ledger ledger;
  private List<Finding> findings = List.of();
  private List<ModuleFault> faults = List.of();
  private Optional<String> savingFault = Optional.empty();
  private boolean calculating;
  private Optional<StepId> atWork = Optional.empty();
  private Optional<Ordering.Ordered> order = Optional.empty();

  Desk(PatientContext context, Ledger ledger, Map<ItemKey, String> drafts) {
    this.context = context.withSnapshot(ledger.snapshot());
    this.ledger = ledger;
    this.drafts.putAll(drafts);
  }

  /** A test as this evaluation was recorded with it. */
  synchronized void keep(TestDefinition definition, DefinitionText text) {
    stored.put(definition.id(), definition);
    storedTexts.add(text);
  }

  /**
   * The written form of a test the evaluation does not hold yet; it does from now on. Written once
   * a test, not once an entry.
   */
  synchronized Optional<DefinitionText> takeUp(TestDefinition test) {
    if (!takenUp.add(test)) {
      return Optional.empty();
    }
    DefinitionText text = DefinitionFile.write(test);
    return storedTexts.add(text) ? Optional.of(text) : Optional.empty();
  }

  synchronized Optional<TestDefinition> stored(TestId id) {
    return Optional.ofNullable(stored.get(id));
  }

  /** Appends a value of a key and remembers how to take it back. */
  synchronized Entry record(ItemKey key, UndoStack.Content content, Instant now, Duty duty) {
    Optional<Entry> before = context.snapshot().entry(key);
    Entry entry = append(key, content, now, duty);
    undo.recorded(before, entry);
    return entry;
  }

  private Entry append(ItemKey key, UndoStack.Content content, Instant now, Duty duty) {
    Entry entry =
        new Entry(
            new EntryId(UUID.randomUUID()),
            key,
            content.value(),
            now,
            duty.signature(context),
            content.confirmed(),
            content.override());
    ledger = ledger.append(entry);
    context = context.withSnapshot(context.snapshot().with(entry));
    unsaved.put(entry.id(), key);
    drafts.remove(key);
    calculating = true;
    return entry;
  }

  synchronized Optional<Entry> undo(Instant now, Duty duty) {
    return undo.undo(duty::mayRepeat).map(s -> append(s.key(), s.before(), now, duty));
  }

  synchronized Optional<Entry> redo(Instant now, Duty duty) {
    return undo.redo(duty::mayRepeat).map(s -> append(s.key(), s.after(), now, duty));
  }

  synchronized void draft(ItemKey key, String text) {
    if (text.isBlank()) {
      drafts.remove(key);
    } else {
      drafts.put(key, text);
    }
  }

  /** What the saver tells ends up here; {@code told} runs after each. */
  Saver.Watcher watcher(Runnable told) {
    return new Saver.Watcher() {
      @Override
      public void saved(List<Entry> entries) {
        saving(entries, Optional.empty());
        told.run();
      }

      @Override
      public void failed(String reason) {
        saving(List.of(), Optional.of(reason));
        told.run();
      }
    };
  }

  private synchronized void saving(List<Entry> saved, Optional<String> fault) {
    saved.forEach(entry -> unsaved.remove(entry.id()));
    savingFault = fault;
  }

  synchronized void choose(String key, String code) {
    context = context.withChoice(key, code);
    calculating = true;
  }

  synchronized void patient(Patient patient, List<Precaution> precautions) {
    context =
        new PatientContext(
            patient,
            context.evaluation(),
            precautions,
            context.snapshot(),
            context.results(),
            context.past());
    calculating = true;
  }

  synchronized PatientContext context() {
    return context;
  }

  synchronized void calculationBegins() {
    calculating = true;
  }

  /**
   * Takes in what was calculated from {@code basis}.
   *
   * @return whether that is still what is recorded; if not, it must be calculated again
   */
  synchronized boolean calculated(PatientContext basis, Calculator.Calculated result) {
    Results results = result.results();
    context = context.withResults(results);
    findings = result.findings();
    faults = result.faults();
    boolean current =
        context.snapshot() == basis.snapshot()
            && context.patient().equals(basis.patient())
            && context.evaluation().equals(basis.evaluation())
            && context.precautions().equals(basis.precautions());
    calculating = !current;
    return current;
  }

  /** Calculates at once, for a desk nobody works at. */
  Desk calculated(Calculator calculator) {
    PatientContext basis = context();
    calculated(basis, calculator.calculate(basis));
    return this;
  }

  synchronized Optional<StepId> atWork() {
    return atWork;
  }

  /**
   * Says which step is under way.
   *
   * @return whether that is another one than before
   */
  synchronized boolean workOn(Optional<StepId> step) {
    boolean other = !step.equals(atWork);
    atWork = step;
    return other;
  }

  synchronized Optional<Ordering.Ordered> order() {
    return order;
  }

  synchronized void order(Optional<Ordering.Ordered> newer) {
    order = newer;
  }

  /** The evaluation as it stands, with these tests alive. */
  synchronized OpenEvaluation view(List<TestDefinition> live) {
    ArrayList<TestDefinition> tests = new ArrayList<>(live);
    HashSet<TestId> gone = new HashSet<>(stored.keySet());
    live.forEach(definition -> gone.remove(definition.id()));
    gone.removeIf(id -> ledger.entries().stream().noneMatch(e -> e.key().test().equals(id)));
    gone.forEach(id -> tests.add(stored.get(id)));
    tests.sort(Comparator.comparingInt(TestDefinition::order).thenComparing(TestDefinition::id));
    return new OpenEvaluation(
        context,
        ledger,
        tests,
        gone,
        faults,
        findings,
        new HashSet<>(unsaved.values()),
        drafts,
        undo.canUndo(),
        undo.canRedo(),
        calculating,
        savingFault,
        order.map(Ordering.Ordered::plan));
  }
}
