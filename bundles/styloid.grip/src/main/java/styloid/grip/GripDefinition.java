package styloid.grip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import styloid.model.Caution;
import styloid.model.Demand;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Region;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.TestDefinition;
import styloid.spi.Timer;

/** The items of the test, how they are taken, and its cautions. */
final class GripDefinition {
  private static final String VERSION = "1.0";
  private static final int ORDER = 40;
  private static final List<Unit> UNITS =
      List.of(Unit.KILOGRAM_FORCE, Unit.POUND_FORCE, Unit.NEWTON);
  private static final Set<Region> LOADS =
      Set.of(Region.WRIST, Region.FINGERS, Region.THUMB, Region.HAND);
  private static final List<String> CAUTIONS =
      List.of("repair", "pain", "breath", "thumb-joint", "skin", "last");

  /** Usual rest between trials of one hand. */
  private static final int REST_SECONDS = 60;

  private GripDefinition() {}

  static TestDefinition create(NormChoice choice) {
    ArrayList<Group> groups = new ArrayList<>();
    groups.add(instruments());
    groups.add(measured(Measure.POWER, grip(), List.of()));
    groups.add(measured(Measure.TIP, pinch(), List.of("thumb-joint")));
    groups.add(measured(Measure.KEY, pinch(), List.of("thumb-joint")));
    groups.add(measured(Measure.PALMAR, pinch(), List.of("thumb-joint")));
    groups.add(positions());
    groups.add(rapid());
    return new TestDefinition(
            Say.GRIP,
            VERSION,
            ORDER,
            groups,
            CAUTIONS.stream().map(id -> new Caution(id, Source.commonPractice())).toList(),
            List.of("repair", "pain", "breath", "skin"),
            GripResults.all(),
            Set.of(),
            Labels.beside(GripDefinition.class))
        .withTimers(
            List.of(
                Timer.rest(
                    REST_SECONDS,
                    Stream.of(Measure.values()).map(Measure::item).collect(Collectors.toSet()),
                    Sources.REST)))
        .withSettings(Stream.of(Measure.values()).flatMap(choice::setting).toList());
  }

  /** Grip in kilogram-force: over 120 is impossible, under 1 or over 80 is asked about. */
  private static ItemKind grip() {
    return force("120", "1", "80");
  }

  /** Pinch in kilogram-force: over 30 is impossible, under 0.5 or over 18 is asked about. */
  private static ItemKind pinch() {
    return force("30", "0.5", "18");
  }

  private static ItemKind force(String max, String likelyMin, String likelyMax) {
    return new ItemKind.Number(
        UNITS,
        BigDecimal.ZERO,
        new BigDecimal(max),
        new BigDecimal(likelyMin),
        new BigDecimal(likelyMax),
        2);
  }

  private static Group instruments() {
    ItemKind name = new ItemKind.Words(120);
    ItemKind date = new ItemKind.Words(10);
    List<Item> items =
        List.of(
            Item.unsided("grip-instrument", name),
            Item.unsided("grip-calibration-date", date),
            Item.unsided("pinch-instrument", name),
            Item.unsided("pinch-calibration-date", date),
            Item.unsided("handle-position", ItemKind.Choices.of("1", "2", "3", "4", "5")));
    return new Group(
        "instruments",
        Region.HAND,
        Set.of(),
        items,
        Group.Walk.SIDE_BY_SIDE,
        Group.Layout.LIST,
        List.of(),
        Guide.none());
  }

  private static Group measured(Measure measure, ItemKind kind, List<String> cautions) {
    Item force =
        Item.bothSides(measure.code(), kind, Demand.GRIP_OR_PINCH).withTrials(Measure.TRIALS);
    Item pain =
        Item.bothSides(measure.code() + "-pain", ItemKind.Choices.of("no", "yes"), Demand.NONE)
            .asOptional();
    return group(measure.code(), List.of(force, pain), cautions, GripGuides.of(measure));
  }

  private static Group positions() {
    ArrayList<Item> items = new ArrayList<>();
    for (int position = 1; position <= Curves.POSITIONS; position++) {
      items.add(
          Item.bothSides(Curves.position(position).value(), grip(), Demand.GRIP_OR_PINCH)
              .asOptional());
    }
    return group("positions", items, List.of("last"), GripGuides.positions());
  }

  private static Group rapid() {
    Item item =
        Item.bothSides(Curves.RAPID.value(), grip(), Demand.GRIP_OR_PINCH)
            .withTrials(Curves.EXCHANGES)
            .asOptional();
    return group("rapid", List.of(item), List.of("last"), GripGuides.rapid());
  }

  private static Group group(String id, List<Item> items, List<String> cautions, Guide guide) {
    return new Group(
        id,
        Region.HAND,
        LOADS,
        items,
        Group.Walk.ALTERNATING,
        Group.Layout.LEFT_RIGHT_TABLE,
        cautions,
        guide);
  }
}
