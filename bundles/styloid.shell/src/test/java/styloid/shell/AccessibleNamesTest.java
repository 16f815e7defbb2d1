package styloid.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.form.Palette;
import styloid.store.StoreException;

/** On every screen, card and state: names for who cannot see, ways for who has no mouse. */
class AccessibleNamesTest {
  @Test
  void everyNodeThatTakesTheFocusHasANameWithItsSide() throws StoreException {
    ScreenWalk walk = ScreenWalk.in(Palette.LIGHT);
    assertEquals(Set.of(), walk.wrongName);
    assertEquals(Set.of("Left", "Right"), walk.sides);
    assertTrue(walk.nodes > 1500, walk.nodes + " nodes");
  }

  @Test
  void tabComesByEverythingOfCardsAndCaseload() throws StoreException {
    assertEquals(Set.of(), ScreenWalk.in(Palette.LIGHT).pastTab);
  }

  @ParameterizedTest
  @EnumSource(Palette.class)
  void theFocusIsAlwaysSeen(Palette palette) throws StoreException {
    ScreenWalk walk = ScreenWalk.in(palette);
    assertEquals(Set.of(), walk.focusUnseen);
    assertTrue(walk.kinds.size() > 15, walk.kinds.toString());
  }

  @Test
  void theWalkStopsAtEveryState() throws StoreException {
    Set<String> states = ScreenWalk.in(Palette.LIGHT).states;
    assertTrue(
        states.containsAll(
            Set.of("caseload", "absence-reasons", "question", "refused", "hold", "withheld")),
        states.toString());
    assertTrue(
        states.containsAll(Set.of("override", "not-saved", "unsaved-question", "guide", "order")),
        states.toString());
  }
}
