package styloid.shell.map;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import styloid.model.DigitJoint;
import styloid.model.Finding;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemRef;
import styloid.model.LimbPart;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;

/**
 * Which items and results are about which part of which limb. Read from the definitions alone:
 * region of the group, digits and joint of the item. What belongs to no limb is about no part.
 */
final class LimbIndex {
  private final Map<TestId, TestDefinition> tests = new HashMap<>();
  private final Map<SidedPart, List<Slot>> slots = new HashMap<>();
  private final Map<ResultKey, Set<LimbPart>> ofResults = new HashMap<>();
  private final Map<TestId, Map<ResultId, ResultDefinition>> definitions = new HashMap<>();

  /** Parts whose state an entry of the item may change: its own, and those of who asks after it. */
  private final Map<ItemRef, Set<LimbPart>> touched = new HashMap<>();

  private LimbIndex() {}

  static LimbIndex of(List<TestDefinition> tests) {
    LimbIndex index = new LimbIndex();
    SidedPart.all().forEach(part -> index.slots.put(part, new ArrayList<>()));
    for (TestDefinition test : tests) {
      index.tests.put(test.id(), test);
      HashMap<ResultId, ResultDefinition> results = new HashMap<>();
      test.results().forEach(result -> results.put(result.id(), result));
      index.definitions.put(test.id(), results);
      for (Group group : test.groups()) {
        group.items().forEach(item -> index.add(test, group, item));
      }
    }
    return index;
  }

  private void add(TestDefinition test, Group group, Item item) {
    for (Side side : item.sides()) {
      if (side == Side.UNSIDED) {
        continue;
      }
      Map<LimbPart, List<ItemKey>> keys = new HashMap<>();
      for (ItemKey key : item.keys(test.id(), side)) {
        LimbPart.of(group.region(), key.digit(), item.joint())
            .forEach(part -> keys.computeIfAbsent(part, p -> new ArrayList<>()).add(key));
      }
      touch(test.id(), item, keys.keySet());
      keys.forEach(
          (part, own) ->
              slots.get(new SidedPart(part, side)).add(new Slot(test, group, item, own)));
    }
  }

  private void touch(TestId test, Item item, Set<LimbPart> parts) {
    Stream.concat(Stream.of(item.id()), item.askWhen().reads().stream())
        .map(id -> new ItemRef(test, id))
        .forEach(ref -> touched.computeIfAbsent(ref, r -> new HashSet<>()).addAll(parts));
  }

  /** The parts of its limb whose state an entry may change. */
  Set<SidedPart> touchedBy(ItemKey key) {
    return key.side() == Side.UNSIDED
        ? Set.of()
        : sided(touched.getOrDefault(key.ref(), Set.of()), key.side());
  }

  /** In the order of the tests and of their items. */
  List<Slot> slots(SidedPart part) {
    return slots.get(part);
  }

  /** The parts of its limb an entry is about; none for what belongs to no limb. */
  Set<LimbPart> partsOf(ItemKey key) {
    TestDefinition test = tests.get(key.test());
    if (test == null || key.side() == Side.UNSIDED) {
      return Set.of();
    }
    Optional<DigitJoint> joint = test.item(key.item()).flatMap(Item::joint);
    return test.groupOf(key.item())
        .map(group -> LimbPart.of(group.region(), key.digit(), joint))
        .orElse(Set.of());
  }

  /** The parts of its limb a result is about; none for what is of no limb or of a whole test. */
  Set<LimbPart> partsOf(ResultKey key) {
    return ofResults.computeIfAbsent(key, this::find);
  }

  private Set<LimbPart> find(ResultKey key) {
    TestDefinition test = tests.get(key.test());
    if (test == null || key.side() == Side.UNSIDED) {
      return Set.of();
    }
    return test.result(key)
        .flatMap(ResultDefinition::group)
        .flatMap(id -> test.groups().stream().filter(g -> g.id().equals(id)).findFirst())
        .map(group -> partsIn(group, key))
        .orElse(Set.of());
  }

  /** A result named after an item is about what the item is about, else about the whole group. */
  private static Set<LimbPart> partsIn(Group group, ResultKey key) {
    Optional<Item> named =
        group.items().stream()
            .filter(item -> (key.result() + "-").startsWith(item.id() + "-"))
            .max(Comparator.comparingInt(item -> item.id().value().length()));
    List<Item> meant = named.map(List::of).orElse(group.items());
    EnumSet<LimbPart> parts = EnumSet.noneOf(LimbPart.class);
    meant.forEach(item -> parts.addAll(LimbPart.of(group.region(), key.digit(), item.joint())));
    return parts;
  }

  Optional<ResultDefinition> definition(ResultKey key) {
    return Optional.ofNullable(definitions.getOrDefault(key.test(), Map.of()).get(key.result()));
  }

  Set<SidedPart> sidedPartsOf(ResultKey key) {
    return sided(partsOf(key), key.side());
  }

  /** The parts whose entries or results a finding rests on, on its side if it has one. */
  Set<SidedPart> sidedPartsOf(Finding finding) {
    HashSet<SidedPart> found = new HashSet<>();
    finding.entries().forEach(key -> found.addAll(sided(partsOf(key), key.side())));
    finding.results().forEach(key -> found.addAll(sidedPartsOf(key)));
    found.removeIf(at -> finding.side() != Side.UNSIDED && finding.side() != at.side());
    return found;
  }

  private static Set<SidedPart> sided(Set<LimbPart> parts, Side side) {
    return parts.stream().map(part -> new SidedPart(part, side)).collect(Collectors.toSet());
  }
}
