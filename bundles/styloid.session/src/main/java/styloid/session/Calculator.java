package styloid.session;

import java.util.ArrayList;
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

  Calculator(ModuleBook book, ModuleGuard guard) {
    this.book = book;
    this.guard = guard;
  }

  /** What came of it, and which modules failed. */
  record Calculated(Results results, List<Finding> findings, List<ModuleFault> faults) {}

  Calculated calculate(PatientContext context) {
    ArrayList<ModuleFault> faults = new ArrayList<>();
    Results results = Results.empty();
    for (TestDefinition definition : book.calculationOrder()) {
      Optional<TestModule> module = book.find(definition.id());
      if (module.isPresent()) {
        PatientContext limited = limited(definition, context, results);
        results = results.and(ask(definition, module.get(), limited, faults));
      }
    }
    return new Calculated(results, findings(context.withResults(results), faults), faults);
  }

  private List<Result> ask(
      TestDefinition definition,
      TestModule module,
      PatientContext limited,
      List<ModuleFault> faults) {
    String id = definition.id().value();
    ModuleGuard.Answer<List<Result>> answer =
        guard.call(id, "results", () -> checked(definition, module.results(limited)));
    if (answer.failed()) {
      faults.add(answer.fault());
      return List.of();
    }
    return answer.value();
  }

  /** Runs on the module's thread, so that a list that misbehaves is the module's fault too. */
  private static List<Result> checked(TestDefinition definition, List<Result> given) {
    if (given.size() > MOST_RESULTS) {
      throw new IllegalStateException("more than " + MOST_RESULTS + " results");
    }
    List<Result> results = List.copyOf(given);
    for (Result result : results) {
      if (!result.key().test().equals(definition.id())) {
        throw new IllegalStateException("a result of another test: " + result.key());
      }
    }
    Results.of(results);
    return results;
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
    return context
        .withSnapshot(context.snapshot().limitedTo(definition.refs(), definition.reads()))
        .withResults(results.ofTests(definition.reads()))
        .withPast(
            context.past().stream()
                .map(
                    past ->
                        new PatientContext.Past(
                            past.evaluation(),
                            past.snapshot().limitedTo(definition.refs(), definition.reads())))
                .toList());
  }

  private static PatientContext limited(Set<TestId> reads, PatientContext context) {
    return context
        .withSnapshot(context.snapshot().limitedTo(Set.of(), reads))
        .withResults(context.results().ofTests(reads));
  }
}
