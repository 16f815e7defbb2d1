package styloid.goniometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import styloid.model.Caution;
import styloid.model.Condition;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Region;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.spi.Group;
import styloid.spi.Labels;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;

/** Goniometry as data: one group a joint plane, then opposition, crease distance and span. */
final class GoniometryDefinition {
  private static final List<String> FOR_ALL =
      List.of("orders-first", "healing-bone", "no-forcing", "stop-at-pain");
  private static final Map<Region, List<String>> BY_REGION =
      Map.of(
          Region.SHOULDER, List.of("shoulder-instability"),
          Region.ELBOW, List.of("stiff-elbow"),
          Region.FOREARM, List.of("forearm-hold"),
          Region.WRIST, List.of("tendon-repair"),
          Region.FINGERS, List.of("tendon-repair", "joint-stability"),
          Region.THUMB, List.of("tendon-repair", "joint-stability"),
          Region.HAND, List.of("tendon-repair"));

  private static final ItemKind.Choices END_FEEL =
      ItemKind.Choices.of("soft", "firm", "hard", "springy", "guarded", "empty");

  private final Guides guides;

  private GoniometryDefinition(Guides guides) {
    this.guides = guides;
  }

  static TestDefinition build(List<ResultDefinition> results) {
    Set<ResultId> ids = results.stream().map(ResultDefinition::id).collect(Collectors.toSet());
    return new GoniometryDefinition(new Guides(ids)).definition(results);
  }

  private TestDefinition definition(List<ResultDefinition> results) {
    ArrayList<Group> groups = new ArrayList<>();
    Planes.ALL.forEach(plane -> groups.add(group(plane)));
    groups.add(
        group(HandItems.OPPOSITION_GROUP, HandItems.kapandji(), Group.Layout.LEFT_RIGHT_TABLE));
    groups.add(group(HandItems.CREASE_GROUP, HandItems.crease(), Group.Layout.DIGIT_GRID));
    groups.add(group(HandItems.SPAN_GROUP, HandItems.span(), Group.Layout.LEFT_RIGHT_TABLE));
    return new TestDefinition(
            Goniometry.ID,
            "1.0",
            30,
            groups,
            cautions(),
            FOR_ALL,
            results,
            Set.of(),
            Labels.beside(Goniometry.class))
        .withSettings(Settings.offered(new References()));
  }

  private static List<Caution> cautions() {
    ArrayList<String> ids = new ArrayList<>(FOR_ALL);
    for (Region region : Region.values()) {
      for (String id : BY_REGION.getOrDefault(region, List.of())) {
        if (!ids.contains(id)) {
          ids.add(id);
        }
      }
    }
    return ids.stream().map(id -> new Caution(id, Source.commonPractice())).toList();
  }

  private Group group(Plane plane) {
    ArrayList<Item> items = new ArrayList<>();
    plane.ends().forEach(motion -> items.add(active(motion)));
    plane.ends().forEach(motion -> items.add(passive(motion)));
    plane.ends().forEach(motion -> items.add(endFeel(motion)));
    Group.Layout layout =
        plane.digits().equals(Item.NO_DIGIT)
            ? Group.Layout.LEFT_RIGHT_TABLE
            : Group.Layout.DIGIT_GRID;
    return group(plane.id(), plane.region(), items, layout);
  }

  private Group group(String id, Item item, Group.Layout layout) {
    return group(id, Region.HAND, List.of(item), layout);
  }

  private Group group(String id, Region region, List<Item> items, Group.Layout layout) {
    return new Group(
        id,
        region,
        Set.of(region),
        items,
        Group.Walk.SIDE_BY_SIDE,
        layout,
        BY_REGION.get(region),
        guides.of(id));
  }

  private static Item active(Motion motion) {
    return Item.bothSides(motion.active().value(), motion.limits(), Mode.ACTIVE.demand())
        .withDigits(motion.digits())
        .about(motion.joint());
  }

  /**
   * Passive motion is the therapist's choice where active motion falls short; it is asked once the
   * active end has a value or the reason why it has none.
   */
  private static Item passive(Motion motion) {
    return Item.bothSides(motion.passive().value(), motion.limits(), Mode.PASSIVE.demand())
        .withDigits(motion.digits())
        .about(motion.joint())
        .askedWhen(new Condition.Recorded(motion.active()))
        .asOptional();
  }

  private static Item endFeel(Motion motion) {
    return Item.bothSides(motion.endFeel().value(), END_FEEL, Mode.PASSIVE.demand())
        .withDigits(motion.digits())
        .about(motion.joint())
        .askedWhen(new Condition.Recorded(motion.passive()))
        .asOptional();
  }
}
