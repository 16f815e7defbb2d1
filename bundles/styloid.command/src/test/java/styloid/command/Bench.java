package styloid.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Condition;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKind;
import styloid.model.Region;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;

/** Runs commands on a made-up session and keeps what they said. */
final class Bench {
  static final TestId HOLD = new TestId("hold");

  final FakeSession session = new FakeSession(List.of(test()));
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();
  private final CommandService commands =
      new CommandService(session, new PrintWriter(out), new PrintWriter(err));

  int run(Object... words) {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    String[] args = new String[words.length];
    for (int i = 0; i < words.length; i++) {
      args[i] = words[i].toString();
    }
    return commands.applyAsInt(args);
  }

  String out() {
    return out.toString().replace(System.lineSeparator(), "\n");
  }

  String err() {
    return err.toString().replace(System.lineSeparator(), "\n");
  }

  /** A test of one number, one choice and one text. */
  static TestDefinition test() {
    ItemKind force =
        new ItemKind.Number(
            List.of(Unit.KILOGRAM_FORCE, Unit.POUND_FORCE),
            BigDecimal.ZERO,
            new BigDecimal("100"),
            BigDecimal.ONE,
            new BigDecimal("60"),
            1);
    Item pip =
        new Item(
            new ItemId("end-feel"),
            ItemKind.Choices.of("soft", "firm"),
            Item.BOTH,
            Set.of(Digit.RING, Digit.INDEX),
            1,
            Condition.always(),
            Demand.PASSIVE_MOTION,
            false);
    Group group =
        new Group(
            "all",
            Region.HAND,
            Set.of(Region.HAND),
            List.of(
                Item.bothSides("force", force, Demand.GRIP_OR_PINCH).withTrials(3),
                pip,
                Item.unsided("device", new ItemKind.Words(20))),
            Group.Walk.ALTERNATING,
            Group.Layout.LIST,
            List.of(),
            Guide.none());
    ResultDefinition mean =
        new ResultDefinition(
            new ResultId("mean"),
            Optional.of(Unit.KILOGRAM_FORCE),
            1,
            Item.BOTH,
            Item.NO_DIGIT,
            Optional.of("all"));
    Map<String, String> words =
        Map.of(
            "test.title", "Hold",
            "group.all", "All",
            "item.force", "Force",
            "item.end-feel", "End feel",
            "item.device", "Device",
            "result.mean", "Mean",
            "step", "Mean is {0}",
            "missing", "Trial {0} is missing");
    return new TestDefinition(
        HOLD,
        "1.0",
        10,
        List.of(group),
        List.of(),
        List.of(),
        List.of(mean),
        Set.of(),
        new Labels(Map.of("en", words)));
  }

  /** An evaluation file with these entries, each on its line from 12 on. */
  static Path file(Path folder, String name, String recordNumber, String... entries)
      throws IOException {
    String text =
        """
        {
          "format": 1,
          "patient": {
            "id": "3f0c8a52-6a57-4e0e-9d51-0f8d2a8f7a01",
            "recordNumber": "%s", "name": "Invented Person"},
          "evaluations": [{
            "id": "b6a1c6de-51f3-4b5b-8a0b-8c1f3f3f9d10",
            "date": "2026-03-02",
            "therapist": "A. Example",
            "state": "draft",
            "entries": [
        %s
            ]
          }]
        }
        """
            .formatted(recordNumber, String.join(",\n", entries));
    return Files.writeString(folder.resolve(name), text);
  }

  /** One entry as it stands in a file. */
  static String entry(String item, Side side, String more) {
    return "{\"item\": \"%s\", \"side\": \"%s\", %s, \"at\": \"2026-03-02T09:15:00Z\"}"
        .formatted(item, side.code(), more);
  }

  /** A force of the first trial. */
  static String force(Side side, String kilograms) {
    return entry(
        "hold/force",
        side,
        "\"value\": {\"amount\": \"%s\", \"unit\": \"kgf\"}".formatted(kilograms));
  }
}
