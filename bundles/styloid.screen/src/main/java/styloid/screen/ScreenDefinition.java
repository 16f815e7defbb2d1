package styloid.screen;

import static styloid.model.Condition.any;
import static styloid.model.Condition.is;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import styloid.model.Caution;
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
import styloid.spi.Position;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;

/** The screen as data. */
final class ScreenDefinition {
  static final TestId ID = new TestId("screen");
  static final String FULL = "full";
  static final String LIMITED = "limited";
  static final String UNABLE = "unable";
  static final String ADD = "add";
  static final String DROP = "drop";

  private static final List<String> CAUTIONS =
      List.of("precautions-first", "active-only", "stop-at-pain");

  private ScreenDefinition() {}

  static TestDefinition build() {
    return new TestDefinition(
        ID,
        "1.0",
        10,
        Area.all().stream().map(ScreenDefinition::group).toList(),
        CAUTIONS.stream().map(id -> new Caution(id, Source.commonPractice())).toList(),
        CAUTIONS,
        results(),
        Set.of(),
        labels(),
        Optional.of(FULL));
  }

  private static Group group(Area area) {
    ArrayList<Item> items = new ArrayList<>();
    for (String motion : area.motions()) {
      items(motion).forEach(item -> items.add(item.about(area.joint(motion))));
    }
    Position position = new Position(Position.Body.SITTING, area.support(), Position.Rotation.ANY);
    Line how = new Line(Topic.INSTRUCTION, "guide." + area.id());
    Line watch = new Line(Topic.COMPENSATION, "guide." + area.id() + ".compensation");
    return new Group(
        area.id(),
        area.region(),
        area.loads(),
        items,
        Group.Walk.ALTERNATING,
        Group.Layout.LEFT_RIGHT_TABLE,
        List.of(),
        new Guide(
            Optional.of(position),
            Optional.empty(),
            List.of(how, watch),
            MotionPictures.of(area.motions().get(0)),
            area.motions().stream().map(ScreenDefinition::picture).toList(),
            List.of()));
  }

  private static Guide.ItemPicture picture(String motion) {
    Set<ItemId> items = items(motion).stream().map(Item::id).collect(Collectors.toSet());
    return new Guide.ItemPicture(items, false, MotionPictures.of(motion));
  }

  /** A motion costs one answer while it is full; the rest is asked once something is not right. */
  private static List<Item> items(String motion) {
    Condition fallsShort = is(motion, LIMITED, UNABLE);
    Condition painful = is(pain(motion), "yes");
    Condition notable = any(fallsShort, painful);
    return List.of(
        Item.bothSides(motion, ItemKind.Choices.of(FULL, LIMITED, UNABLE), Demand.ACTIVE_MOTION),
        Item.bothSides(pain(motion), ItemKind.Choices.of("no", "yes"), Demand.NONE)
            .askedWhen(fallsShort),
        Item.bothSides(motion + "-pain-site", new ItemKind.Words(200), Demand.NONE)
            .askedWhen(painful),
        Item.bothSides(motion + "-quality", new ItemKind.Words(500), Demand.NONE)
            .askedWhen(notable)
            .asOptional(),
        Item.bothSides(decision(motion), ItemKind.Choices.of(ADD, DROP), Demand.NONE)
            .askedWhen(notable)
            .asOptional());
  }

  static String pain(String motion) {
    return motion + "-pain";
  }

  /** The therapist's own word on whether the motion goes on to goniometry and grading. */
  static String decision(String motion) {
    return motion + "-decision";
  }

  private static List<ResultDefinition> results() {
    ArrayList<ResultDefinition> results = new ArrayList<>();
    for (Area area : Area.all()) {
      results.add(count(area.id() + "-not-full", Optional.of(area.id())));
      results.add(count(area.id() + "-painful", Optional.of(area.id())));
      for (String motion : area.motions()) {
        results.add(
            new ResultDefinition(
                    new ResultId(motion + "-next"),
                    Optional.empty(),
                    0,
                    Item.BOTH,
                    Item.NO_DIGIT,
                    Optional.of(area.id()))
                .notableAt(Set.of("added", "dropped", "put-forward")));
      }
    }
    results.add(count("put-forward", Optional.empty()));
    return results;
  }

  private static ResultDefinition count(String id, Optional<String> group) {
    return new ResultDefinition(
        new ResultId(id), Optional.of(Unit.COUNT), 0, Item.BOTH, Set.of(Digit.NONE), group);
  }

  private static Labels labels() {
    return Words.complete(Labels.beside(ScreenDefinition.class));
  }
}
