package styloid.custom;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import styloid.exchange.json.Decoders;
import styloid.exchange.json.Excerpt;
import styloid.exchange.json.Fields;
import styloid.exchange.json.JsonReader;
import styloid.exchange.json.NearMiss;
import styloid.exchange.json.Node;
import styloid.exchange.json.Problems;
import styloid.model.Absence;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.DeclaredTests;
import styloid.spi.EntryCheck;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/**
 * Reads made-up answers: optional facts of a patient, and for each item its value, in an object by
 * side and by digit where it has them, in a list where it has trials.
 */
final class AnswerReader {
  private static final LocalDate DAY = LocalDate.of(2026, 1, 1);
  private static final TherapistId NOBODY = new TherapistId("nobody");

  private final TestDefinition test;
  private final Texts texts;
  private final ArrayList<Entry> entries = new ArrayList<>();

  AnswerReader(TestDefinition test) {
    this.test = test;
    this.texts = new Texts(Map.of(test.id().value(), test.labels()), Locale.ENGLISH);
  }

  DeclaredTests.Tried read(String text) {
    Problems problems = new Problems();
    Optional<PatientContext> context;
    try {
      context =
          JsonReader.read(new StringReader(text), problems)
              .map(Fields.object(this::answers).with(problems));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return new DeclaredTests.Tried(
        problems.count() == 0 ? context : Optional.empty(), problems.list());
  }

  private PatientContext answers(Fields f) {
    Patient patient =
        f.may("patient", Fields.object(AnswerReader::patient))
            .orElseGet(() -> madeUp(Optional.empty(), Optional.empty(), Optional.empty()));
    f.need("answers", this::items);
    return f.make(() -> context(patient));
  }

  private static Patient patient(Fields f) {
    Optional<Patient.Sex> sex = f.may("sex", Decoders.code("sex", Patient.Sex.class));
    Optional<Integer> age = f.may("age", Decoders::whole);
    Optional<Patient.Dominance> hand =
        f.may("dominance", Decoders.code("dominance", Patient.Dominance.class));
    age.filter(a -> a < 0 || a > 130).ifPresent(a -> f.problem("age", "must be 0 to 130 years"));
    return f.make(() -> madeUp(sex, age.map(DAY::minusYears), hand));
  }

  private static Patient madeUp(
      Optional<Patient.Sex> sex, Optional<LocalDate> birth, Optional<Patient.Dominance> hand) {
    return new Patient(
        new PatientId(new UUID(0, 1)),
        "-",
        "-",
        birth,
        sex,
        hand,
        Set.of(),
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private PatientContext context(Patient patient) {
    Evaluation evaluation =
        new Evaluation(
            new EvaluationId(new UUID(0, 2)),
            patient.id(),
            DAY,
            NOBODY,
            Evaluation.State.DRAFT,
            Map.of(test.id(), test.version()),
            Map.of());
    return new PatientContext(
        patient, evaluation, List.of(), Snapshot.of(entries), Results.empty(), List.of());
  }

  private List<Entry> items(Node node, Problems problems) {
    List<String> known = test.items().stream().map(item -> item.id().value()).toList();
    if (!(node instanceof Node.Obj object)) {
      return Decoders.wrong(node, "an object with a value for each item", problems);
    }
    object
        .members()
        .forEach(
            (name, value) -> {
              Optional<Item> item =
                  test.items().stream().filter(i -> i.id().value().equals(name)).findFirst();
              if (item.isEmpty()) {
                problems.add(value.where(), "no item of this test; " + NearMiss.hint(name, known));
              } else {
                sides(item.get(), value, problems);
              }
            });
    return entries;
  }

  private void sides(Item item, Node node, Problems problems) {
    if (item.sides().contains(Side.UNSIDED)) {
      digits(item, Side.UNSIDED, node, problems);
      return;
    }
    each(node, Side.class, item.sides(), problems, (side, v) -> digits(item, side, v, problems));
  }

  private void digits(Item item, Side side, Node node, Problems problems) {
    if (item.digits().contains(Digit.NONE)) {
      trials(item, side, Digit.NONE, node, problems);
      return;
    }
    each(
        node,
        Digit.class,
        item.digits(),
        problems,
        (digit, value) -> trials(item, side, digit, value, problems));
  }

  private static <E extends Enum<E>> void each(
      Node node,
      Class<E> type,
      Set<E> fitting,
      Problems problems,
      java.util.function.BiConsumer<E, Node> to) {
    Function<E, String> code = Codes::of;
    List<String> known = EnumSet.copyOf(fitting).stream().map(code).toList();
    if (!(node instanceof Node.Obj object)) {
      Decoders.wrong(node, "an object with " + String.join(", ", known), problems);
      return;
    }
    object
        .members()
        .forEach(
            (name, value) -> {
              if (known.contains(name)) {
                to.accept(Codes.parse(type, name), value);
              } else {
                problems.add(value.where(), "not of this item; " + NearMiss.hint(name, known));
              }
            });
  }

  private void trials(Item item, Side side, Digit digit, Node node, Problems problems) {
    List<Node> values = node instanceof Node.Arr list ? list.values() : List.of(node);
    if (values.size() > item.trials()) {
      problems.add(node.where(), "the item has " + item.trials() + " trials");
      return;
    }
    for (int trial = 1; trial <= values.size(); trial++) {
      ItemKey key = new ItemKey(test.id(), item.id(), side, digit, trial);
      value(item, values.get(trial - 1), problems).ifPresent(value -> add(key, value));
    }
  }

  private void add(ItemKey key, Value value) {
    EntryId id = new EntryId(new UUID(1, entries.size()));
    entries.add(new Entry(id, key, Optional.of(value), Instant.EPOCH, NOBODY, false));
  }

  private Optional<Value> value(Item item, Node node, Problems problems) {
    if (node instanceof Node.Obj) {
      return Optional.ofNullable(
          Fields.object(
                  f -> {
                    Absence.Reason why =
                        f.need("absent", Decoders.code("reason", Absence.Reason.class));
                    return f.make(() -> (Value) new Absence(why));
                  })
              .decode(node, problems));
    }
    String typed =
        node instanceof Node.Num number ? number.digits() : Decoders.text(node, problems);
    if (typed == null) {
      return Optional.empty();
    }
    Unit unit = item.kind() instanceof ItemKind.Number number ? number.unit() : Unit.NUMBER;
    EntryCheck.Checked checked =
        item.kind() instanceof ItemKind.Choices
            ? EntryCheck.check(item, choice(typed))
            : EntryCheck.parse(typed, item, unit, Locale.ENGLISH);
    if (checked.value().isEmpty()) {
      problems.add(
          node.where(), checked.problem().map(p -> texts.text(p.text())).orElse(Excerpt.of(typed)));
    }
    return checked.value();
  }

  private static Value choice(String typed) {
    try {
      return new styloid.model.Choice(typed);
    } catch (IllegalArgumentException e) {
      // said in the same words as an answer that is no text of a code at all
      return new styloid.model.Text(typed);
    }
  }
}
