package styloid.grip;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Outcome;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Text;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.Texts;

/** A made-up visit to try the module on; every fact is said by the test. */
final class Visit {
  static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final GripModule MODULE = new GripModule();
  private static final TherapistId THERAPIST = new TherapistId("A. Therapist");

  private final ArrayList<Entry> entries = new ArrayList<>();
  private final ArrayList<PatientContext.Past> past = new ArrayList<>();
  private LocalDate day = DAY;
  private Optional<LocalDate> birth = Optional.empty();
  private Optional<Patient.Sex> sex = Optional.empty();
  private Optional<Patient.Dominance> dominance = Optional.empty();
  private Optional<BigDecimal> height = Optional.empty();
  private Set<Side> involved = Set.of();
  private Map<String, String> choices = Map.of();

  Visit on(LocalDate when) {
    day = when;
    return this;
  }

  Visit who(Patient.Sex who, int age) {
    sex = Optional.of(who);
    return aged(age);
  }

  Visit sex(Patient.Sex who) {
    sex = Optional.of(who);
    return this;
  }

  Visit aged(int age) {
    birth = Optional.of(DAY.minusYears(age));
    return this;
  }

  Visit handed(Patient.Dominance hand) {
    dominance = Optional.of(hand);
    return this;
  }

  Visit tall(String cm) {
    height = Optional.of(new BigDecimal(cm));
    return this;
  }

  Visit involved(Side... sides) {
    involved = Set.of(sides);
    return this;
  }

  Visit choosing(String key, String table) {
    choices = Map.of(key, table);
    return this;
  }

  Visit after(Visit earlier) {
    PatientContext context = earlier.context();
    past.add(new PatientContext.Past(context.evaluation(), context.snapshot()));
    return this;
  }

  static ItemKey key(String item, Side side, int trial) {
    return new ItemKey(Say.GRIP, new ItemId(item), side, Digit.NONE, trial);
  }

  Visit record(ItemKey key, Value value) {
    EntryId id = new EntryId(new UUID(0, entries.size() + 1L));
    Instant at = Instant.parse("2026-03-02T09:00:00Z");
    entries.add(new Entry(id, key, Optional.of(value), at, THERAPIST, false));
    return this;
  }

  Visit trials(String item, Side side, Unit unit, String... readings) {
    for (int i = 0; i < readings.length; i++) {
      record(key(item, side, i + 1), Quantity.of(readings[i], unit));
    }
    return this;
  }

  Visit absent(String item, Side side, int trial) {
    return record(key(item, side, trial), new Absence(Absence.Reason.PAIN));
  }

  Visit text(String item, String text) {
    return record(key(item, Side.UNSIDED, 1), new Text(text));
  }

  PatientContext context() {
    Patient patient =
        new Patient(
            new PatientId(new UUID(0, 1)),
            "0001",
            "Made-up Person",
            birth,
            sex,
            dominance,
            involved,
            "",
            Optional.empty(),
            Optional.empty(),
            height);
    Evaluation head =
        new Evaluation(
            new EvaluationId(new UUID(0, 2)),
            patient.id(),
            day,
            THERAPIST,
            Evaluation.State.DRAFT,
            Map.of(),
            choices);
    Snapshot snapshot = Snapshot.of(entries).limitedTo(MODULE.definition().refs(), Set.of());
    return new PatientContext(patient, head, List.of(), snapshot, Results.empty(), past);
  }

  Results results() {
    return Results.of(MODULE.results(context()));
  }

  Result result(String id, Side side) {
    ResultKey key = Say.key(id, side);
    return results().result(key).orElseThrow(() -> new AssertionError("no result " + key));
  }

  double number(String id, Side side) {
    Result result = result(id, side);
    return result
        .quantity()
        .orElseThrow(() -> new AssertionError(result.key() + ": " + reason(result)))
        .amount()
        .doubleValue();
  }

  String choice(String id, Side side) {
    Result result = result(id, side);
    return result
        .value()
        .map(v -> ((Choice) v).code())
        .orElseThrow(() -> new AssertionError(result.key() + ": " + reason(result)));
  }

  /** Message key of the reason why there is no value. */
  String reason(String id, Side side) {
    return reason(result(id, side));
  }

  private static String reason(Result result) {
    return result
        .outcome()
        .match(v -> "a value: " + v, i -> i.reason().key(), u -> u.reason().key());
  }

  boolean incomplete(String id, Side side) {
    return result(id, side).outcome() instanceof Outcome.Incomplete;
  }

  static Texts texts() {
    return new Texts(Map.of("grip", MODULE.definition().labels()), Locale.ENGLISH);
  }
}
