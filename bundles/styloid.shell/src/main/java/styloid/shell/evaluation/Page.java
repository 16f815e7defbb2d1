package styloid.shell.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.form.Sections;
import styloid.model.ItemKey;
import styloid.model.Region;
import styloid.spi.Group;
import styloid.spi.TestDefinition;

/**
 * What the form shows at a time: the groups of one region of a test, or of all of it.
 *
 * @param region empty when the page is the whole test
 */
record Page(TestDefinition test, Optional<Region> region, List<Group> groups) {

  /** All pages, tests in their order, regions from proximal to distal. */
  static List<Page> of(List<TestDefinition> tests) {
    ArrayList<Page> pages = new ArrayList<>();
    for (TestDefinition test : tests) {
      if (Sections.onePage(test)) {
        pages.add(new Page(test, Optional.empty(), test.groups()));
        continue;
      }
      for (Region region : Region.values()) {
        List<Group> groups = test.groups().stream().filter(g -> g.region() == region).toList();
        if (!groups.isEmpty()) {
          pages.add(new Page(test, Optional.of(region), groups));
        }
      }
    }
    return pages;
  }

  boolean has(ItemKey key) {
    return test.id().equals(key.test())
        && test.groupOf(key.item()).filter(groups::contains).isPresent();
  }

  /** Whether this is the same place, even where the test was defined anew. */
  boolean isPlaceOf(Page other) {
    return test.id().equals(other.test().id()) && region.equals(other.region());
  }
}
