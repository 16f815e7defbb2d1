package styloid.finding;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import styloid.goniometry.Goniometry;
import styloid.grading.Grading;
import styloid.grip.GripModule;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.Finding;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Quantity;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.screen.Screen;
import styloid.spi.FindingRule;
import styloid.spi.Labels;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.spi.Texts;
import styloid.testkit.SampleEvaluations;

/** An evaluation in the making, calculated by the shipped tests as in a session. */
final class Examined {
  /** Each after those it reads. */
  static final List<TestModule> MODULES =
      List.of(new Screen(), new Goniometry(), new Grading(), new GripModule());

  static final List<FindingRule> RULES =
      List.of(
          new JointLimit(),
          new FullButShort(),
          new GradedButUnable(),
          new WeakPattern(),
          new GripLow(),
          new PainNotMeasured());

  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private final SampleEvaluations samples = new SampleEvaluations(1);
  private final List<Entry> entries = new ArrayList<>();
  private final Map<String, String> choices = new HashMap<>();
  private Set<Side> involved = Set.of();

  Examined involved(Side... sides) {
    involved = Set.of(sides);
    return this;
  }

  Examined choosing(String setting, String code) {
    choices.put(setting, code);
    return this;
  }

  private Examined put(TestId test, String item, Side side, Digit digit, int trial, Value value) {
    entries.add(samples.entry(new ItemKey(test, new ItemId(item), side, digit, trial), value));
    return this;
  }

  Examined screen(String item, Side side, String answer) {
    return put(Visit.SCREEN, item, side, Digit.NONE, 1, new Choice(answer));
  }

  Examined degrees(String item, Side side, Digit digit, String amount) {
    Quantity angle = Quantity.of(amount, Unit.DEGREE);
    return put(Visit.GONIOMETRY, item, side, digit, 1, angle);
  }

  Examined absent(String item, Side side, Digit digit) {
    return put(Visit.GONIOMETRY, item, side, digit, 1, new Absence(Absence.Reason.PAIN));
  }

  Examined grade(String motion, Side side, Digit digit, String grade) {
    return put(Visit.GRADING, motion + "-typed", side, digit, 1, new Choice(grade));
  }

  Examined grip(Side side, String kilograms) {
    for (int trial = 1; trial <= 3; trial++) {
      Quantity force = Quantity.of(kilograms, Unit.KILOGRAM_FORCE);
      put(Visit.GRIP, "power", side, Digit.NONE, trial, force);
    }
    return this;
  }

  PatientContext context() {
    Patient patient =
        new Patient(
            new PatientId(new UUID(1, 1)),
            "001",
            "Made-up Person",
            Optional.of(DAY.minusYears(40)),
            Optional.of(Patient.Sex.MALE),
            Optional.of(Patient.Dominance.RIGHT),
            involved,
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Evaluation head =
        new Evaluation(
            new EvaluationId(new UUID(2, 2)),
            patient.id(),
            DAY,
            new TherapistId("A. Therapist"),
            Evaluation.State.DRAFT,
            Map.of(),
            choices);
    return calculated(
        new PatientContext(
            patient, head, List.of(), Snapshot.of(entries), Results.empty(), List.of()));
  }

  /** The context with the results of every shipped test. */
  static PatientContext calculated(PatientContext context) {
    Results results = Results.empty();
    for (TestModule module : MODULES) {
      TestDefinition test = module.definition();
      PatientContext limited =
          context
              .withSnapshot(context.snapshot().limitedTo(test.refs(), test.reads()))
              .withResults(results.ofTests(test.reads()));
      results = results.and(module.results(limited));
    }
    return context.withResults(results);
  }

  /** What a rule finds, seeing only what it reads, as in a session. */
  static List<Finding> found(FindingRule rule, PatientContext context) {
    return rule.findings(
        context
            .withSnapshot(context.snapshot().limitedTo(Set.of(), rule.reads()))
            .withResults(context.results().ofTests(rule.reads())));
  }

  List<Finding> found(FindingRule rule) {
    return found(rule, context());
  }

  /** Side and words of what a rule finds. */
  List<String> words(FindingRule rule) {
    Texts texts = texts();
    return found(rule).stream().map(f -> f.side().code() + ": " + texts.text(f.text())).toList();
  }

  static Texts texts() {
    HashMap<String, Labels> scopes = new HashMap<>();
    RULES.forEach(rule -> scopes.put(rule.id(), rule.labels()));
    MODULES.forEach(m -> scopes.put(m.definition().id().value(), m.definition().labels()));
    return new Texts(scopes, Locale.ENGLISH);
  }
}
