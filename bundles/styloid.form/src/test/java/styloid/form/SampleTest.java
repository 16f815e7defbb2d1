package styloid.form;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import styloid.model.Condition;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;
import styloid.spi.Timer;

/** A made-up test with every kind, layout and walk, and a made-up patient. */
final class SampleTest {
  static final TestId ID = new TestId("sample");
  static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private SampleTest() {}

  static Item angle(String id) {
    return Item.bothSides(
        id, ItemKind.Number.of(Unit.DEGREE, -60, -20, 150, 180, 0), Demand.ACTIVE_MOTION);
  }

  static Item force() {
    ItemKind kind =
        new ItemKind.Number(
            List.of(Unit.KILOGRAM_FORCE, Unit.POUND_FORCE),
            java.math.BigDecimal.ZERO,
            java.math.BigDecimal.valueOf(120),
            java.math.BigDecimal.ONE,
            java.math.BigDecimal.valueOf(80),
            1);
    return Item.bothSides("power", kind, Demand.GRIP_OR_PINCH).withTrials(3);
  }

  static TestDefinition definition() {
    ItemKind motion = ItemKind.Choices.of("full", "limited", "unable");
    Group table =
        group(
            "motions",
            Region.ELBOW,
            Group.Walk.ALTERNATING,
            Group.Layout.LEFT_RIGHT_TABLE,
            Item.bothSides("flexion", motion, Demand.ACTIVE_MOTION),
            Item.bothSides("flexion-pain", ItemKind.Choices.of("no", "yes"), Demand.NONE)
                .askedWhen(Condition.is("flexion", "limited", "unable")),
            Item.bothSides("extension", motion, Demand.ACTIVE_MOTION));
    Group list =
        group(
            "strength",
            Region.WRIST,
            Group.Walk.SIDE_BY_SIDE,
            Group.Layout.LIST,
            Item.bothSides(
                "range",
                ItemKind.Choices.of("full", "more-than-half", "less-than-half", "none"),
                Demand.ACTIVE_MOTION),
            Item.bothSides(
                    "hold",
                    ItemKind.Choices.of(
                        "strong", "moderate", "slight", "gave-way", "not-given", "yielded"),
                    Demand.RESISTANCE)
                .askedWhen(Condition.is("range", "full")),
            Item.bothSides(
                    "hold-time", ItemKind.Number.of(Unit.SECOND, 0, 0, 5, 60, 1), Demand.NONE)
                .askedWhen(Condition.is("hold", "gave-way", "yielded"))
                .asOptional(),
            Item.bothSides(
                    "grade", ItemKind.Choices.of("0", "1", "2", "3", "3+", "4", "5"), Demand.NONE)
                .asOptional(),
            Item.bothSides("remark", new ItemKind.Words(300), Demand.NONE).asOptional());
    Group grid =
        group(
            "fingers",
            Region.FINGERS,
            Group.Walk.SIDE_BY_SIDE,
            Group.Layout.DIGIT_GRID,
            angle("mp").withDigits(Item.FINGERS),
            angle("pip").withDigits(Item.FINGERS));
    Group grip =
        group(
            "grip",
            Region.HAND,
            Group.Walk.ALTERNATING,
            Group.Layout.LEFT_RIGHT_TABLE,
            Item.unsided("instrument", new ItemKind.Words(80)),
            force());
    return new TestDefinition(
            ID,
            "1.0",
            10,
            List.of(table, list, grid, grip),
            List.of(),
            List.of(),
            List.of(),
            Set.of(),
            labels())
        .withTimers(
            List.of(
                Timer.hold(
                    3,
                    new ItemId("hold"),
                    new Timer.LetGo("gave-way", "yielded", Optional.of(new ItemId("hold-time"))),
                    Source.commonPractice()),
                Timer.rest(60, Set.of(new ItemId("power")), Source.commonPractice())));
  }

  static Group group(
      String id, Region region, Group.Walk walk, Group.Layout layout, Item... items) {
    return new Group(
        id, region, Set.of(region), List.of(items), walk, layout, List.of(), Guide.none());
  }

  private static Labels labels() {
    HashMap<String, String> words = new HashMap<>();
    words.put("test.title", "Sample");
    words.put("group.motions", "Elbow");
    words.put("group.strength", "Wrist extension");
    words.put("group.fingers", "Finger flexion");
    words.put("group.grip", "Grip");
    words.put("item.flexion", "Elbow flexion");
    words.put("item.flexion-pain", "Elbow flexion: pain");
    words.put("item.extension", "Elbow extension");
    words.put("item.range", "Range against gravity");
    words.put("item.hold", "Resistance held");
    words.put("item.hold-time", "Held for");
    words.put("choice.yielded", "gave way during the hold");
    words.put("item.grade", "Grade, when typed");
    words.put("item.remark", "Remark");
    words.put("item.mp", "MP active");
    words.put("item.pip", "PIP active");
    words.put("item.instrument", "Instrument");
    words.put("item.power", "Power grip");
    words.put("choice.more-than-half", "more than half");
    words.put("choice.less-than-half", "less than half");
    words.put("choice.gave-way", "gave way at once");
    words.put("choice.not-given", "not given");
    return new Labels(Map.of("en", words));
  }

  static Texts texts() {
    return new Texts(
        Map.of(ID.value(), labels(), FormView.SCOPE, FormView.labels()), java.util.Locale.ENGLISH);
  }

  static PatientContext context(Set<Side> involved, Precaution... precautions) {
    Patient patient =
        new Patient(
            new PatientId(new UUID(1, 1)),
            "0042",
            "Test Person",
            Optional.of(LocalDate.of(1970, 5, 1)),
            Optional.empty(),
            Optional.of(Patient.Dominance.RIGHT),
            involved,
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Evaluation evaluation =
        new Evaluation(
            new EvaluationId(new UUID(2, 2)),
            patient.id(),
            DAY,
            new TherapistId("T. Example"),
            Evaluation.State.DRAFT,
            Map.of(),
            Map.of());
    return new PatientContext(
        patient, evaluation, List.of(precautions), Snapshot.empty(), Results.empty(), List.of());
  }

  static Precaution noResistance(Side side) {
    return new Precaution(
        Precaution.Kind.NO_RESISTANCE,
        Region.WRIST,
        side,
        Digit.NONE,
        Optional.empty(),
        Optional.empty(),
        "Dr Example",
        "");
  }

  static FormState state(PatientContext context) {
    return new FormState(definition(), context, Set.of(), Map.of(), false, false);
  }

  static Group named(String id) {
    return definition().groups().stream().filter(g -> g.id().equals(id)).findFirst().orElseThrow();
  }

  static ItemKey key(String item, Side side) {
    return new ItemKey(ID, new ItemId(item), side, Digit.NONE, 1);
  }
}
