package styloid.goniometry;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.testkit.SampleEvaluations;

/** A made-up visit, built entry by entry. */
final class Visit {
  static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final Goniometry MODULE = new Goniometry();

  private final SampleEvaluations samples = new SampleEvaluations(1);
  private final List<Entry> entries = new ArrayList<>();
  private final Map<String, String> choices = new HashMap<>();
  private final List<PatientContext.Past> past = new ArrayList<>();
  private Optional<Patient.Sex> sex = Optional.empty();
  private Optional<LocalDate> birth = Optional.empty();
  private Set<Side> involved = Set.of();
  private LocalDate day = DAY;
  private TherapistId therapist = new TherapistId("A. Therapist");

  Visit of(Patient.Sex who, int age) {
    sex = Optional.of(who);
    birth = Optional.of(DAY.minusYears(age));
    return this;
  }

  Visit bornOn(LocalDate date) {
    birth = Optional.of(date);
    return this;
  }

  Visit involved(Side... sides) {
    involved = Set.of(sides);
    return this;
  }

  Visit by(String name) {
    therapist = new TherapistId(name);
    return this;
  }

  Visit on(LocalDate date) {
    day = date;
    return this;
  }

  Visit choosing(String setting, String value) {
    choices.put(setting, value);
    return this;
  }

  Visit after(Visit earlier) {
    PatientContext context = earlier.context();
    past.add(new PatientContext.Past(context.evaluation(), context.snapshot()));
    return this;
  }

  static ItemKey key(String item, Side side, Digit digit) {
    return new ItemKey(Goniometry.ID, new ItemId(item), side, digit, 1);
  }

  Visit put(String item, Side side, Digit digit, Value value) {
    entries.add(samples.entry(key(item, side, digit), value));
    return this;
  }

  Visit degrees(String item, Side side, Digit digit, String amount) {
    return put(item, side, digit, new Quantity(new BigDecimal(amount), Unit.DEGREE));
  }

  Visit degrees(String item, Side side, String amount) {
    return degrees(item, side, Digit.NONE, amount);
  }

  Visit absent(String item, Side side, Digit digit) {
    return put(item, side, digit, new Absence(Absence.Reason.PAIN));
  }

  /** Flexion and deficit of MP, PIP and DIP, as printed in tables: deficits are not negative. */
  Visit finger(Side side, Digit digit, String flexions, String deficits) {
    String[] flexion = flexions.split("/");
    String[] deficit = deficits.split("/");
    String[] joints = {"mp", "pip", "dip"};
    for (int i = 0; i < joints.length; i++) {
      degrees(joints[i] + "-flexion-active", side, digit, flexion[i]);
      BigDecimal end = new BigDecimal(deficit[i]).negate();
      degrees(joints[i] + "-extension-active", side, digit, end.toPlainString());
    }
    return this;
  }

  PatientContext context() {
    Patient patient =
        new Patient(
            new PatientId(new UUID(1, 1)),
            "001",
            "Made-up Person",
            birth,
            sex,
            Optional.empty(),
            involved,
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Evaluation head =
        new Evaluation(
            new EvaluationId(new UUID(2, day.toEpochDay())),
            patient.id(),
            day,
            therapist,
            Evaluation.State.DRAFT,
            Map.of(),
            choices);
    return new PatientContext(
        patient, head, List.of(), Snapshot.of(entries), Results.empty(), past);
  }

  Optional<Result> find(String result, Side side, Digit digit) {
    Results results = Results.of(MODULE.results(context()));
    return results.result(new ResultKey(Goniometry.ID, new ResultId(result), side, digit));
  }

  Result result(String result, Side side, Digit digit) {
    return find(result, side, digit).orElseThrow(() -> new AssertionError("no result " + result));
  }

  double number(String result, Side side, Digit digit) {
    return result(result, side, digit).quantity().orElseThrow().amount().doubleValue();
  }

  String choice(String result, Side side, Digit digit) {
    return ((Choice) result(result, side, digit).value().orElseThrow()).code();
  }

  static Goniometry module() {
    return MODULE;
  }
}
