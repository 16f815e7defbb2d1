package styloid.grading;

import static styloid.model.Condition.all;
import static styloid.model.Condition.any;
import static styloid.model.Condition.is;
import static styloid.model.Condition.not;
import static styloid.model.Condition.recorded;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import styloid.grading.Observed.Felt;
import styloid.grading.Observed.Hold;
import styloid.grading.Observed.Observation;
import styloid.grading.Observed.Range;
import styloid.grading.Observed.Reduced;
import styloid.model.Caution;
import styloid.model.Codes;
import styloid.model.Condition;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKind;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Guide.Line;
import styloid.spi.Guide.Topic;
import styloid.spi.Labels;
import styloid.spi.ResultDefinition;
import styloid.spi.Setting;
import styloid.spi.TestDefinition;
import styloid.spi.Timer;

/** Manual grading as data, made from the catalogue. */
final class GradingDefinition {
  static final TestId ID = new TestId("grading");
  static final TestId GONIOMETRY = new TestId("goniometry");
  static final List<String> TEST_CAUTIONS = List.of("tendon-repair", "mid-range", "stop-at-pain");

  /** Where the weight of the part matters; elsewhere they would contradict the criteria shown. */
  private static final List<String> GRAVITY_CAUTIONS = List.of("gravity-first", "reduced-together");

  private static final ItemKind.Choices GRADES =
      new ItemKind.Choices(Grade.rankedGrades().stream().map(Grade::code).toList());

  /** How long it was held before it gave way. */
  private static final ItemKind HOLD_TIME = ItemKind.Number.of(Unit.SECOND, 0, 0, 5, 60, 1);

  /** How long a resisted position is held. */
  private static final int HOLD_SECONDS = 3;

  private static final Setting SCHEME =
      new Setting(
          Scheme.CHOICE,
          Stream.of(Scheme.values()).map(Scheme::code).toList(),
          Scheme.WHOLE.code());

  private GradingDefinition() {}

  static TestDefinition build(List<Motion> catalogue) {
    LinkedHashSet<String> cautions = new LinkedHashSet<>(TEST_CAUTIONS);
    catalogue.forEach(motion -> cautions.addAll(cautions(motion)));
    return new TestDefinition(
        ID,
        "1.1",
        20,
        catalogue.stream().map(GradingDefinition::group).toList(),
        cautions.stream().map(id -> new Caution(id, Source.commonPractice())).toList(),
        TEST_CAUTIONS,
        results(catalogue),
        Set.of(GONIOMETRY),
        Words.complete(Labels.beside(GradingDefinition.class), catalogue),
        Optional.empty(),
        catalogue.stream().map(GradingDefinition::hold).toList(),
        List.of(SCHEME));
  }

  private static Timer hold(Motion motion) {
    Timer.LetGo letGo =
        new Timer.LetGo(
            Codes.of(Hold.GAVE_WAY),
            Codes.of(Hold.YIELDED),
            Optional.of(new ItemId(motion.id() + "-hold-time")));
    ItemId item = new ItemId(motion.id() + "-" + Observation.HOLD.code());
    return Timer.hold(HOLD_SECONDS, item, letGo, Source.commonPractice());
  }

  private static Group group(Motion motion) {
    boolean perDigit = motion.digits().size() > 1;
    return new Group(
        motion.id(),
        motion.region(),
        motion.loads(),
        items(motion).stream()
            .map(item -> item.withDigits(motion.digits()).about(motion.joint()))
            .toList(),
        Group.Walk.SIDE_BY_SIDE,
        perDigit ? Group.Layout.DIGIT_GRID : Group.Layout.LEFT_RIGHT_TABLE,
        cautions(motion),
        guide(motion));
  }

  private static List<String> cautions(Motion motion) {
    ArrayList<String> all = new ArrayList<>(motion.cautions());
    if (motion.criteria() == Criteria.GRAVITY) {
      all.addAll(GRAVITY_CAUTIONS);
    }
    return all;
  }

  /** Each step is asked only while the grade is not decided; an own grade typed ends the asking. */
  private static List<Item> items(Motion motion) {
    String range = motion.id() + "-range";
    String reduced = motion.id() + "-reduced";
    String typed = motion.id() + "-typed";
    ItemKind grades = new ItemKind.Choices(Grade.rankedGrades().stream().map(Grade::code).toList());
    Condition untyped =
        not(is(typed, Grade.rankedGrades().stream().map(Grade::code).toArray(String[]::new)));
    boolean gravity = motion.criteria() == Criteria.GRAVITY;
    // with plus and minus the share of the range against gravity is the grade
    Condition open =
        any(
            is(range, "none"),
            all(
                not(SCHEME.is(Scheme.PLUS_MINUS.code())),
                is(range, "more-than-half", "less-than-half")));
    ArrayList<Item> items = new ArrayList<>();
    items.add(
        Item.bothSides(range, choices(Range.values()), Demand.ACTIVE_MOTION).askedWhen(untyped));
    items.add(
        item(motion, Observation.HOLD, Hold.values(), Demand.RESISTANCE)
            .askedWhen(all(untyped, is(range, "full"))));
    items.add(
        Item.bothSides(motion.id() + "-hold-time", HOLD_TIME, Demand.NONE)
            .askedWhen(all(untyped, is(motion.id() + "-hold", "yielded", "gave-way")))
            .asOptional());
    if (gravity) {
      items.add(
          item(motion, Observation.REDUCED, Reduced.values(), Demand.ACTIVE_MOTION)
              .askedWhen(all(untyped, open)));
    }
    items.add(
        item(motion, Observation.CONTRACTION, Felt.values(), Demand.ACTIVE_MOTION)
            .askedWhen(
                gravity
                    ? all(untyped, is(range, "none"), is(reduced, "none"))
                    : all(untyped, is(range, "none"))));
    items.addAll(remarks(motion, recorded(range)));
    items.add(Item.bothSides(typed, GRADES, Demand.NONE).asOptional());
    return items;
  }

  private static List<Item> remarks(Motion motion, Condition tested) {
    String pain = motion.id() + "-pain";
    String substitution = motion.id() + "-substitution";
    ItemKind yesNo = ItemKind.Choices.of("no", "yes");
    return List.of(
        Item.bothSides(pain, yesNo, Demand.NONE).askedWhen(tested).asOptional(),
        Item.bothSides(substitution, yesNo, Demand.NONE).askedWhen(tested).asOptional(),
        Item.bothSides(motion.id() + "-note", new ItemKind.Words(500), Demand.NONE)
            .askedWhen(any(is(pain, "yes"), is(substitution, "yes")))
            .asOptional());
  }

  private static Item item(Motion motion, Observation what, Enum<?>[] answers, Demand demand) {
    return Item.bothSides(motion.id() + "-" + what.code(), choices(answers), demand);
  }

  private static ItemKind choices(Enum<?>[] answers) {
    return new ItemKind.Choices(Stream.of(answers).map(Codes::of).toList());
  }

  private static Guide guide(Motion motion) {
    ArrayList<Line> lines = new ArrayList<>();
    for (Topic topic :
        List.of(
            Topic.MUSCLES,
            Topic.POSITION,
            Topic.SUPPORT,
            Topic.RESIST,
            Topic.JOINT_ANGLE,
            Topic.PALPATE,
            Topic.SUBSTITUTION,
            Topic.GRAVITY_REDUCED)) {
      lines.add(new Line(topic, "guide." + motion.id() + "." + topic.code()));
    }
    lines.add(new Line(Topic.CRITERIA, "guide.criteria." + Codes.of(motion.criteria())));
    return new Guide(
        Optional.of(motion.position()),
        Optional.of(motion.gravityReduced()),
        lines,
        motion.picture(),
        List.of(new Guide.ItemPicture(reduced(motion), true, motion.reducedPicture())),
        List.of());
  }

  /** Where gravity hardly matters a contraction is felt for in the second position alone. */
  private static Set<ItemId> reduced(Motion motion) {
    ItemId contraction = new ItemId(motion.id() + "-" + Observation.CONTRACTION.code());
    ItemId range = new ItemId(motion.id() + "-" + Observation.REDUCED.code());
    return motion.criteria() == Criteria.GRAVITY ? Set.of(range, contraction) : Set.of(contraction);
  }

  private static List<ResultDefinition> results(List<Motion> catalogue) {
    ArrayList<ResultDefinition> results = new ArrayList<>();
    for (Motion motion : catalogue) {
      motion.names().results().forEach((kind, id) -> results.add(beside(motion, kind, id)));
    }
    for (Supply supply : Supply.all(catalogue)) {
      supply.results().forEach((kind, id) -> results.add(rollUp(kind, id)));
    }
    return results;
  }

  /** Any grade below 5 and any doubt is out of the ordinary; resistance withheld is not. */
  private static ResultDefinition beside(Motion motion, String kind, ResultId id) {
    Set<String> notable =
        kind.equals("grade")
            ? Grade.rankedGrades().stream()
                .filter(grade -> grade != Grade.G5)
                .map(Grade::code)
                .collect(Collectors.toSet())
            : DoubtResult.DOUBTS;
    return new ResultDefinition(
            id, Optional.empty(), 0, Item.BOTH, motion.digits(), Optional.of(motion.id()))
        .notableAt(notable);
  }

  private static ResultDefinition rollUp(String kind, ResultId id) {
    Optional<Unit> unit = kind.equals("count") ? Optional.of(Unit.COUNT) : Optional.empty();
    return new ResultDefinition(id, unit, 0, Item.BOTH, Set.of(Digit.NONE), Optional.empty());
  }
}
