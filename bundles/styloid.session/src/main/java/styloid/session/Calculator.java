package styloid.session;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Finding;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.Results;
import styloid.model.TestId;
import styloid.spi.FindingRule;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/** Draws results and findings from a context by way of the modules at hand. */
final class Calculator {
  /** More than any test can sensibly give; a module beyond it is at fault. */
  static final int MOST_RESULTS = 20_000;

  private final ModuleBook book;
  private final ModuleGuard guard;
  private final Kept kept = new Kept();

  Calculator(ModuleBook book, ModuleGuard guard) {
    this.book = book;
    this.guard = guard;
  }

  /** What came of it, and which modules failed. */
  record Calculated(Results results, List<Finding> findings, List<ModuleFault> faults) {}

  /** Asks each module whose view of the evaluation has changed since it was last asked. */
  synchronized Calculated calculate(PatientContext context) {
    ArrayList<ModuleFault> faults = new ArrayList<>();
    Set<TestModule> asked = Collections.newSetFromMap(new IdentityHashMap<>());
    Results results = Results.empty();
    for (TestDefinition definition : book.calculationOrder()) {
      Optional<TestModule> module = book.find(definition.id());
      if (module.isPresent()) {
        asked.add(module.get());
        results = results.and(answer(definition, module.get(), context, results, faults));
      }
    }
    kept.only(asked);
    return new Calculated(results, findings(context.withResults(results), faults), faults);
  }

  private Results answer(
      TestDefinition definition,
      TestModule module,
      PatientContext context,
      Results before,
      List<ModuleFault> faults) {
    PatientContext question =
        kept.past(module, context)
            .map(past -> limitedNow(definition, context, before).withPast(past))
            .orElseGet(() -> limited(definition, context, before));
    String id = definition.id().value();
    Optional<Results> same = kept.answer(module, question);
    if (same.isPresent() && !guard.muted(id)) {
      return same.get();
    }
    ModuleGuard.Answer<Results> answer =
        guard.call(id, "results", () -> checked(definition, module.results(question)));
    if (answer.failed()) {
      kept.forget(module);
      faults.add(answer.fault());
      return Results.empty();
    }
    kept.keep(module, question, context, answer.value());
    return answer.value();
  }

  /** Runs on the module's thread, so that a list that misbehaves is the module's fault too. */
  private static Results checked(TestDefinition definition, List<Result> given) {
    if (given.size() > MOST_RESULTS) {
      throw new IllegalStateException("more than " + MOST_RESULTS + " results");
    }
    List<Result> results = List.copyOf(given);
    for (Result result : results) {
      if (!result.key().test().equals(definition.id())) {
        throw new IllegalStateException("a result of another test: " + result.key());
      }
    }
    return Results.of(results);
  }

  private List<Finding> findings(PatientContext context, List<ModuleFault> faults) {
    ArrayList<Finding> findings = new ArrayList<>();
    for (FindingRule rule : book.rules()) {
      ModuleGuard.Answer<List<Finding>> answer =
          guard.call(
              rule.getClass().getName(),
              "findings",
              () -> List.copyOf(rule.findings(limited(rule.reads(), context))));
      if (answer.failed()) {
        faults.add(answer.fault());
      } else {
        findings.addAll(answer.value());
      }
    }
    return findings;
  }

  /** What a module may see: its own items, the items and results of the tests it reads. */
  static PatientContext limited(
      TestDefinition definition, PatientContext context, Results results) {
    return limitedNow(definition, context, results)
        .withPast(
            context.past().stream()
                .map(
                    past ->
                        new PatientContext.Past(
                            past.evaluation(),
                            past.snapshot().limitedTo(definition.refs(), definition.reads())))
                .toList());
  }

  /** The same, earlier visits as they are. */
  private static PatientContext limitedNow(
      TestDefinition definition, PatientContext context, Results results) {
    return context
        .withSnapshot(context.snapshot().limitedTo(definition.refs(), definition.reads()))
        .withResults(results.ofTests(definition.reads()));
  }

  private static PatientContext limited(Set<TestId> reads, PatientContext context) {
    return context
        .withSnapshot(context.snapshot().limitedTo(Set.of(), reads))
        .withResults(context.results().ofTests(reads));
  }
}
