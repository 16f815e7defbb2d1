package styloid.figure;

import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import styloid.goniometry.Goniometry;
import styloid.grading.Grading;
import styloid.grip.GripModule;
import styloid.model.Item;
import styloid.screen.Screen;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.TestDefinition;

/** The built-in tests, and of their items those with a picture of their own. */
final class Suite {
  private Suite() {}

  static List<TestDefinition> definitions() {
    return List.of(
        new Screen().definition(),
        new Grading().definition(),
        new Goniometry().definition(),
        new GripModule().definition());
  }

  static Stream<Group> groups() {
    return definitions().stream().flatMap(test -> test.groups().stream());
  }

  /** The group of the item with this id. */
  static Group groupWith(String item) {
    return groups()
        .filter(group -> group.items().stream().anyMatch(i -> i.id().value().equals(item)))
        .findFirst()
        .orElseThrow();
  }

  /** The first item, and every other one that is drawn another way. */
  static List<Item> pictured(Group group) {
    Guide guide = group.guide();
    HashSet<Object> seen = new HashSet<>();
    return group.items().stream()
        .filter(item -> !item.id().value().endsWith("-passive"))
        .filter(
            item ->
                seen.add(
                    List.of(
                        guide.picture(item.id()),
                        guide.isReduced(item.id()),
                        guide.sweep(item.id()).isPresent() ? item.id() : "")))
        .toList();
  }
}
