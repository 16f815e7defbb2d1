package styloid.workbook;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Report;
import styloid.spi.TestDefinition;

/**
 * What stands out among the entries in force, judged from the definitions alone: an answer is not
 * the one its test takes for the rest, the answers of the two sides differ, a value is absent for a
 * reason, an unlikely value was confirmed, or a precaution was overridden. Whether numbers differ
 * enough to matter is for the tests' results and findings to say.
 */
final class Unusual {
  /** Why an entry stands out; the words are {@code why.<code>}. */
  enum Why {
    NOT_USUAL,
    SIDES_DIFFER,
    ABSENT,
    CONFIRMED,
    OVERRIDDEN
  }

  /** One item of one digit and trial, with the entries of its sides. */
  record Row(Region region, ItemKey key, Map<Side, Entry> entries, Set<Why> why) {}

  private record Spot(TestId test, ItemId item, Digit digit, int trial) {}

  private Unusual() {}

  /** Proximal regions first; within a region in the order of the tests and of entry. */
  static List<Row> of(Report report) {
    LinkedHashMap<Spot, EnumMap<Side, Entry>> spots = new LinkedHashMap<>();
    for (Entry entry : report.context().snapshot().entries()) {
      ItemKey key = entry.key();
      spots
          .computeIfAbsent(
              new Spot(key.test(), key.item(), key.digit(), key.trial()),
              s -> new EnumMap<>(Side.class))
          .put(key.side(), entry);
    }
    ArrayList<Row> rows = new ArrayList<>();
    spots.forEach(
        (spot, sides) -> {
          Set<Why> why = why(sides, usual(report, spot));
          if (!why.isEmpty()) {
            ItemKey key = sides.values().iterator().next().key();
            rows.add(new Row(region(report, key), key, sides, why));
          }
        });
    rows.sort(Comparator.comparing(Row::region));
    return rows;
  }

  private static Set<Why> why(Map<Side, Entry> sides, Optional<String> usual) {
    LinkedHashSet<Why> why = new LinkedHashSet<>();
    Optional<String> right = choice(sides.get(Side.RIGHT));
    Optional<String> left = choice(sides.get(Side.LEFT));
    boolean other =
        sides.values().stream()
            .map(Unusual::choice)
            .anyMatch(choice -> choice.isPresent() && !choice.equals(usual));
    if (usual.isPresent() && other) {
      why.add(Why.NOT_USUAL);
    } else if (right.isPresent() && left.isPresent() && !right.equals(left)) {
      why.add(Why.SIDES_DIFFER);
    }
    for (Entry entry : sides.values()) {
      if (entry.value().orElse(null) instanceof Absence a
          && a.reason() != Absence.Reason.NOT_DONE) {
        why.add(Why.ABSENT);
      }
      if (entry.confirmed()) {
        why.add(Why.CONFIRMED);
      }
      if (entry.override().isPresent()) {
        why.add(Why.OVERRIDDEN);
      }
    }
    return why;
  }

  /** The answer the item's test takes for the rest, if it is one of the item's. */
  private static Optional<String> usual(Report report, Spot spot) {
    return definition(report, spot.test())
        .flatMap(
            test ->
                test.restAs()
                    .filter(
                        answer ->
                            test.item(spot.item())
                                .filter(
                                    item ->
                                        item.kind() instanceof ItemKind.Choices c
                                            && c.codes().contains(answer))
                                .isPresent()));
  }

  private static Optional<TestDefinition> definition(Report report, TestId id) {
    return report.definitions().stream().filter(test -> test.id().equals(id)).findFirst();
  }

  private static Optional<String> choice(Entry entry) {
    return Optional.ofNullable(entry)
        .flatMap(Entry::value)
        .filter(Choice.class::isInstance)
        .map(value -> ((Choice) value).code());
  }

  private static Region region(Report report, ItemKey key) {
    return definition(report, key.test())
        .flatMap(test -> test.groupOf(key.item()))
        .map(Group::region)
        .orElse(Region.LIMB);
  }
}
