package styloid.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Caution;
import styloid.model.Condition;
import styloid.model.DefinitionText;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.DigitJoint;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKind;
import styloid.model.Region;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.Mark;
import styloid.spi.Picture;
import styloid.spi.Pose;
import styloid.spi.Position;
import styloid.spi.ResultDefinition;
import styloid.spi.Setting;
import styloid.spi.Sweep;
import styloid.spi.TestDefinition;
import styloid.spi.Timer;

class DefinitionFileTest {

  /** A definition that uses every part a definition can have. */
  static TestDefinition definition() {
    ItemKind.Number force =
        new ItemKind.Number(
            List.of(Unit.KILOGRAM_FORCE, Unit.POUND_FORCE, Unit.NEWTON),
            new BigDecimal("0"),
            new BigDecimal("120.50"),
            new BigDecimal("0.10"),
            new BigDecimal("90"),
            1);
    Setting norm = new Setting("sample.norm", List.of("one-1999", "two-2001"), "two-2001");
    Condition asked =
        Condition.all(
            Condition.not(norm.is("one-1999")),
            Condition.is("held", "strong", "3+", "slight"),
            Condition.any(
                Condition.recorded("held"), Condition.not(Condition.always()), Condition.any()));
    Item held = Item.bothSides("held", ItemKind.Choices.of("slight", "strong", "3+"), Demand.NONE);
    Item power = Item.bothSides("power", force, Demand.GRIP_OR_PINCH).withTrials(3);
    Item tip =
        Item.bothSides("tip", force, Demand.RESISTANCE)
            .withDigits(Item.FINGERS)
            .about(Optional.of(DigitJoint.PIP))
            .askedWhen(asked)
            .asOptional();
    Item note = Item.unsided("note", new ItemKind.Words(500));
    Item seconds =
        Item.bothSides("seconds", ItemKind.Number.of(Unit.SECOND, 0, 0, 5, 60, 1), Demand.NONE);
    Position sitting =
        new Position(
            Position.Body.SITTING, Position.Support.ELBOW_BENT, Position.Rotation.PALM_DOWN);
    Guide guide =
        new Guide(
            Optional.of(sitting),
            Optional.of(sitting),
            List.of(new Guide.Line(Guide.Topic.RESIST, "guide.power.resist")),
            new Picture(
                new Pose(Map.of(Pose.Joint.WRIST_FLEXION, -15, Pose.Joint.ELBOW_FLEXION, 90))
                    .with(Pose.Joint.FINGER_PIP_FLEXION, Digit.RING, 40),
                List.of(
                    new Mark(Mark.Kind.RESIST, Mark.Segment.HAND, 0.1, Mark.Aspect.VOLAR),
                    new Mark(
                        Mark.Kind.AXIS,
                        Mark.Segment.FOREARM,
                        1,
                        Mark.Aspect.END,
                        Set.of(Digit.RING, Digit.INDEX))),
                Picture.View.PALM),
            List.of(
                new Guide.ItemPicture(
                    Set.of(tip.id()),
                    true,
                    new Picture(Pose.neutral(), List.of(), Picture.View.BEHIND))),
            List.of(
                new Sweep(
                    power.id(),
                    Pose.Joint.WRIST_FLEXION,
                    true,
                    -12,
                    45,
                    Optional.of(result("mean"))),
                new Sweep(tip.id(), Pose.Joint.ELBOW_FLEXION, false, 0, 0, Optional.empty())));
    return new TestDefinition(
        new TestId("sample"),
        "1.2",
        40,
        List.of(
            group("first", List.of(held, power, tip), guide),
            group("second", List.of(note, seconds), Guide.none())),
        List.of(
            new Caution("sore", Source.commonPractice()),
            new Caution("tendon", Source.memory("Someone 1999 \"quoted\""))),
        List.of("sore"),
        List.of(
            new ResultDefinition(
                result("mean"),
                Optional.of(Unit.KILOGRAM_FORCE),
                1,
                Item.BOTH,
                Item.NO_DIGIT,
                Optional.of("first")),
            new ResultDefinition(
                    result("class"),
                    Optional.empty(),
                    0,
                    Item.NO_SIDE,
                    Item.FINGERS,
                    Optional.empty())
                .notableAt(Set.of("poor", "fair"))),
        Set.of(new TestId("goniometry"), new TestId("grading")),
        new Labels(
            Map.of(
                "en", Map.of("test", "Sample", "odd key/.", "\uD83D\uDC4B"),
                "ar", Map.of("test", "عينة"))),
        Optional.empty(),
        List.of(
            Timer.hold(
                3,
                held.id(),
                new Timer.LetGo("slight", "3+", Optional.of(new ItemId("seconds"))),
                Source.commonPractice()),
            Timer.rest(60, Set.of(power.id(), tip.id()), Source.memory("A protocol"))),
        List.of(norm, new Setting("sample.norm.tip", List.of("one-1999", "5"), "5")));
  }

  private static ResultId result(String id) {
    return new ResultId(id);
  }

  private static Group group(String id, List<Item> items, Guide guide) {
    return new Group(
        id,
        Region.HAND,
        Set.of(Region.WRIST, Region.HAND),
        items,
        Group.Walk.ALTERNATING,
        Group.Layout.LEFT_RIGHT_TABLE,
        List.of("tendon"),
        guide);
  }

  @Test
  void aDefinitionWrittenReadsBackEqual() {
    DefinitionText text = DefinitionFile.write(definition());
    DefinitionFile.Read read = DefinitionFile.read(text);
    assertEquals(List.of(), read.problems());
    assertEquals(definition(), read.definition().orElseThrow());
    assertEquals(text, DefinitionFile.write(read.definition().get()));
  }

  @Test
  void setsAreWrittenInAFixedOrder() {
    String text = DefinitionFile.write(definition()).text();
    assertTrue(text.contains("\"loads\": [\"wrist\", \"hand\"]"), text);
    assertTrue(text.contains("\"digits\": [\"index\", \"middle\", \"ring\", \"little\"]"), text);
    assertTrue(text.contains("\"is\": [\"3+\", \"slight\", \"strong\"]"), text);
    assertEquals(Set.of(Side.RIGHT, Side.LEFT), Item.BOTH);
    assertEquals(Set.of(Digit.NONE), Item.NO_DIGIT);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          "words": 500          | "words": 0              | $.groups[1].items[0].words
          "sides": ["unsided"]  | "sides": []             | $.groups[1].items[0]
          "along": 1.0          | "along": 7              | $.groups[0].guide.marks[1]
          "wrist-flexion": -15  | "wrist-flexio": -15     | $.groups[0].guide.pose.wrist-flexio
          "wrist-flexion": -15  | "wrist-flexion": 500    | $.groups[0].guide
          "finger-pip-flexion": 40 | "thumb-ip-flexion": 40 | $.groups[0].guide
          "view": "palm"        | "view": "pal"           | $.groups[0].guide.view
          "reduced": true       | "reduced": 1            | $.groups[0].guide.itemPictures[0].reduced
          "zero": -12           | "zero": "x"             | $.groups[0].guide.sweeps[0].zero
          "max": "120.50"       | "max": "-1"             | $.groups[0].items[1].number
          "item": "held"        | "item": "gone"          | $
          "setting": "sample.n  | "setting": "sample.m    | $
          "chosen": "one-1999"  | "chosen": "three"       | $
          "chosen": "one-1999"  | "recorded": "held"      | $.groups[0].items[2].askWhen.all[0].not.setting
          "en": {               | "xx": {                 | $.labels
          ["wrist", "hand"]     | ["wrist", "wrist"]      | $.groups[0].loads
          """)
  void aFaultIsNamedWithItsPlace(String from, String to, String path) {
    String text = DefinitionFile.write(definition()).text();
    assertTrue(text.contains(from), text);
    DefinitionText broken = new DefinitionText(new TestId("sample"), "1.2", text.replace(from, to));
    DefinitionFile.Read read = DefinitionFile.read(broken);
    assertEquals(Optional.empty(), read.definition());
    assertEquals(path, read.problems().get(0).path(), read.problems().toString());
    assertTrue(read.problems().get(0).line() > 0);
  }

  @Test
  void aTextKeptUnderAnotherVersionIsRefused() {
    String text = DefinitionFile.write(definition()).text();
    DefinitionFile.Read read =
        DefinitionFile.read(new DefinitionText(new TestId("sample"), "1.3", text));
    assertEquals(Optional.empty(), read.definition());
    assertTrue(read.problems().get(0).reason().contains("kept as sample 1.3"));
  }
}
