package styloid.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Caution;
import styloid.model.ItemRef;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.plan.PlanWords;
import styloid.spi.Group;
import styloid.spi.Labels;
import styloid.spi.Report;
import styloid.spi.Sheet;
import styloid.spi.Sheets;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.spi.Texts;

/** Gathers what an exporter needs: every test's sheets, the cautions that applied, the faults. */
final class Reports {
  private final ModuleBook book;
  private final ModuleGuard guard;

  Reports(ModuleBook book, ModuleGuard guard) {
    this.book = book;
    this.guard = guard;
  }

  /** Words of these tests, of all finding rules and of the test order. */
  Texts texts(List<TestDefinition> tests, Locale locale) {
    Map<String, Labels> scopes = new HashMap<>();
    book.rules().forEach(rule -> scopes.put(rule.id(), rule.labels()));
    tests.forEach(test -> scopes.put(test.id().value(), test.labels()));
    scopes.put(PlanWords.SCOPE, PlanWords.labels());
    return new Texts(scopes, locale);
  }

  Report report(OpenEvaluation evaluation, Locale locale) {
    Texts texts = texts(evaluation.tests(), locale);
    ArrayList<String> faults = new ArrayList<>();
    evaluation.faults().forEach(fault -> faults.add(inWords(fault)));
    ArrayList<Report.Part> parts = new ArrayList<>();
    ArrayList<Report.Caution> cautions = new ArrayList<>();
    for (TestDefinition test : evaluation.tests()) {
      Set<ItemRef> used = used(test, evaluation.context());
      if (!used.isEmpty()) {
        parts.add(new Report.Part(test, sheets(test, evaluation, faults)));
        cautions.addAll(cautions(test, used, texts));
      }
      if (evaluation.withoutModule().contains(test.id())) {
        faults.add(
            texts.label(test.id().value(), "test.title")
                + ": the module is not installed; entries are shown as recorded, without results.");
      }
    }
    return new Report(
        evaluation.context(),
        evaluation.ledger(),
        evaluation.tests(),
        parts,
        evaluation.findings(),
        cautions,
        faults,
        texts);
  }

  static String inWords(ModuleFault fault) {
    return fault.module()
        + ": "
        + fault.reason()
        + " when asked for its "
        + fault.stage()
        + " (code "
        + fault.code()
        + ").";
  }

  private static Set<ItemRef> used(TestDefinition test, PatientContext context) {
    HashSet<ItemRef> used = new HashSet<>();
    context.snapshot().entries().stream()
        .filter(entry -> entry.key().test().equals(test.id()))
        .forEach(entry -> used.add(entry.key().ref()));
    return used;
  }

  private List<Sheet> sheets(TestDefinition test, OpenEvaluation evaluation, List<String> faults) {
    PatientContext context = evaluation.context();
    List<Result> results = context.results().of(test.id());
    Optional<TestModule> module = book.find(test.id());
    if (module.isPresent()) {
      PatientContext limited = Calculator.limited(test, context, context.results());
      ModuleGuard.Answer<List<Sheet>> answer =
          guard.call(
              test.id().value(),
              "sheets",
              () -> List.copyOf(module.get().sheets(limited, results)));
      if (!answer.failed()) {
        return answer.value();
      }
      faults.add(inWords(answer.fault()));
    }
    return Sheets.fromItems(test, context, results);
  }

  private static List<Report.Caution> cautions(
      TestDefinition test, Set<ItemRef> used, Texts texts) {
    ArrayList<Report.Caution> cautions = new ArrayList<>();
    test.testCautions().forEach(id -> add(cautions, test, Optional.empty(), id, texts));
    for (Group group : test.groups()) {
      boolean done =
          group.items().stream().anyMatch(i -> used.contains(new ItemRef(test.id(), i.id())));
      if (done) {
        group.cautions().forEach(id -> add(cautions, test, Optional.of(group), id, texts));
      }
    }
    return cautions;
  }

  private static void add(
      List<Report.Caution> cautions,
      TestDefinition test,
      Optional<Group> group,
      String id,
      Texts texts) {
    String scope = test.id().value();
    Optional<Caution> caution = test.caution(id);
    caution.ifPresent(
        c ->
            cautions.add(
                new Report.Caution(
                    texts.label(scope, "test.title"),
                    group.map(g -> texts.label(scope, "group." + g.id())).orElse(""),
                    texts.label(scope, "caution." + id),
                    c.source())));
  }
}
