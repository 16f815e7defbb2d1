package styloid.session;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.EvaluationRecord;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemRef;
import styloid.model.Patient;
import styloid.model.PatientRecord;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.Caseload;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/**
 * The rows of a caseload from whole records. Where identity is kept back, a code stands for the
 * record number, a year for the day, {@code 90+} for an age above 89; therapist, diagnosis, every
 * text and every item not declared safe are left out, notes of absences too.
 */
final class Visits {
  private static final int OLDEST_SAID = 89;

  private final List<TestDefinition> tests;
  private final Selection selection;
  private final Optional<Pseudonym> pseudonym;
  private final Set<ItemRef> safe;
  private final Texts texts;

  Visits(
      List<TestDefinition> tests,
      Selection selection,
      Optional<Pseudonym> pseudonym,
      Set<ItemRef> safe,
      Texts texts) {
    this.tests = tests;
    this.selection = selection;
    this.pseudonym = pseudonym;
    this.safe = safe;
    this.texts = texts;
  }

  /** The visits of one patient that are wanted, oldest first. */
  List<Caseload.Visit> of(PatientRecord record) {
    ArrayList<Caseload.Visit> visits = new ArrayList<>();
    Optional<Snapshot> before = Optional.empty();
    for (EvaluationRecord one : record.evaluations()) {
      Snapshot now = one.ledger().snapshot();
      if (selection.has(one.evaluation())) {
        visits.add(visit(record.patient(), one.evaluation(), now, before, visits.size() + 1));
      }
      before = Optional.of(now);
    }
    return visits;
  }

  private Caseload.Visit visit(
      Patient patient, Evaluation head, Snapshot now, Optional<Snapshot> before, int number) {
    boolean known = pseudonym.isEmpty();
    EnumMap<Absence.Reason, Integer> absences = new EnumMap<>(Absence.Reason.class);
    int values = 0;
    for (Entry entry : now.entries()) {
      if (may(entry.key().ref())) {
        Value value = entry.value().orElseThrow();
        if (value instanceof Absence absence) {
          absences.merge(absence.reason(), 1, Integer::sum);
        } else {
          values++;
        }
      }
    }
    return new Caseload.Visit(
        pseudonym.map(p -> p.of(patient.recordNumber())).orElseGet(patient::recordNumber),
        known ? Optional.of(head.date()) : Optional.empty(),
        head.date().getYear(),
        known ? head.therapist().value() : "",
        head.state(),
        number,
        age(patient, head),
        patient.sex().map(texts::word).orElse(""),
        patient.dominance().map(texts::word).orElse(""),
        involved(patient),
        known ? patient.diagnosis().strip() : "",
        values,
        absences,
        measures(now, before));
  }

  private String age(Patient patient, Evaluation head) {
    return patient
        .ageOn(head.date())
        .map(age -> pseudonym.isPresent() && age > OLDEST_SAID ? "90+" : age.toString())
        .orElse("");
  }

  private String involved(Patient patient) {
    ArrayList<String> sides = new ArrayList<>();
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      if (patient.involved().contains(side)) {
        sides.add(texts.word(side));
      }
    }
    return String.join(", ", sides);
  }

  private boolean may(ItemRef item) {
    return pseudonym.isEmpty() || safe.contains(item);
  }

  private List<Caseload.Measure> measures(Snapshot now, Optional<Snapshot> before) {
    ArrayList<Caseload.Measure> measures = new ArrayList<>();
    for (TestDefinition test : tests) {
      for (Item item : test.items()) {
        if (may(new ItemRef(test.id(), item.id()))) {
          for (Digit digit : EnumSet.copyOf(item.digits())) {
            for (Side side : EnumSet.copyOf(item.sides())) {
              measure(test, item, side, digit, now, before).ifPresent(measures::add);
            }
          }
        }
      }
    }
    return measures;
  }

  private Optional<Caseload.Measure> measure(
      TestDefinition test,
      Item item,
      Side side,
      Digit digit,
      Snapshot now,
      Optional<Snapshot> before) {
    List<ItemKey> keys =
        item.keys(test.id(), side).stream().filter(key -> key.digit() == digit).toList();
    List<Value> values = keys.stream().flatMap(key -> now.value(key).stream()).toList();
    if (values.isEmpty()) {
      return Optional.empty();
    }
    Unit unit =
        values.stream()
            .filter(Quantity.class::isInstance)
            .map(value -> ((Quantity) value).unit())
            .findFirst()
            .orElse(Unit.NUMBER);
    OptionalDouble mean = mean(now, keys, unit);
    OptionalDouble earlier =
        before.map(snapshot -> mean(snapshot, keys, unit)).orElse(OptionalDouble.empty());
    OptionalDouble change =
        mean.isPresent() && earlier.isPresent()
            ? OptionalDouble.of(mean.getAsDouble() - earlier.getAsDouble())
            : OptionalDouble.empty();
    return Optional.of(
        new Caseload.Measure(
            texts.label(test.id().value(), "test.title"),
            name(test, item),
            side == Side.UNSIDED ? "" : texts.word(side),
            digit == Digit.NONE ? "" : texts.word(digit),
            values.size(),
            mean,
            unit,
            mean.isPresent() ? "" : word(keys.get(0), values),
            change));
  }

  /** The item's words, after those of its group where they are not said in them. */
  private String name(TestDefinition test, Item item) {
    String scope = test.id().value();
    String own = texts.find(scope, "item." + item.id()).orElse(item.id().value());
    String group =
        test.groupOf(item.id()).map(g -> texts.label(scope, "group." + g.id())).orElse("");
    return own.toLowerCase(Locale.ROOT).startsWith(group.toLowerCase(Locale.ROOT))
        ? own
        : group + ": " + own;
  }

  private static OptionalDouble mean(Snapshot snapshot, List<ItemKey> keys, Unit unit) {
    double sum = 0;
    for (ItemKey key : keys) {
      Optional<Quantity> value = snapshot.quantity(key);
      if (value.isEmpty() || value.get().unit().dimension() != unit.dimension()) {
        return OptionalDouble.empty();
      }
      sum += value.get().doubleIn(unit);
    }
    return OptionalDouble.of(sum / keys.size());
  }

  private String word(ItemKey key, List<Value> values) {
    Value first =
        values.stream()
            .filter(value -> !(value instanceof Quantity))
            .findFirst()
            .orElse(values.get(0));
    return first.match(
        quantity -> texts.word(Absence.Reason.NOT_DONE),
        (Choice choice) -> texts.choice(key, choice.code()),
        text -> text.text(),
        absence -> texts.word(absence.reason()));
  }
}
