package styloid.shell.evaluation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import styloid.model.ItemKey;
import styloid.model.Region;
import styloid.session.OpenEvaluation;
import styloid.shell.Clinic;

class PageTest {
  private static final OpenEvaluation OPEN = Clinic.opened();
  private final Stand stand = Stand.of(OPEN);

  @Test
  void theScreenIsOnePageAndLongTestsAPageARegion() {
    List<String> pages =
        stand.pages().stream()
            .map(p -> p.test().id() + p.region().map(r -> " " + r.code()).orElse(""))
            .toList();
    assertEquals("screen", pages.get(0));
    assertTrue(pages.contains("goniometry wrist"), pages.toString());
    assertEquals(pages.stream().distinct().toList(), pages);
  }

  @Test
  void regionsOfATestRunFromProximalToDistal() {
    List<Region> regions =
        stand.pages().stream()
            .filter(p -> p.test().id().value().equals("goniometry"))
            .flatMap(p -> p.region().stream())
            .toList();
    assertEquals(regions.stream().sorted().toList(), regions);
  }

  @Test
  void everyKeyIsOnExactlyOnePage() {
    for (var test : OPEN.tests()) {
      for (ItemKey key : test.keys()) {
        assertEquals(1, stand.pages().stream().filter(p -> p.has(key)).count(), key.toString());
      }
    }
  }

  @Test
  void pagesFollowEachOtherAndEnd() {
    Page page = stand.pages().get(0);
    assertEquals(Optional.empty(), stand.beside(page, false));
    int seen = 1;
    Optional<Page> next = stand.beside(page, true);
    for (; next.isPresent(); seen++) {
      assertEquals(Optional.of(page), stand.beside(next.get(), false));
      page = next.get();
      next = stand.beside(page, true);
    }
    assertEquals(stand.pages().size(), seen);
  }
}
