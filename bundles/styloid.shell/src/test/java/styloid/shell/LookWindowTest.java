package styloid.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.form.Pedals;
import styloid.shell.look.Display;
import styloid.store.StoreException;

/** Sizes, keys of the place, pedals and the guide in a real window. */
class LookWindowTest {
  private EveryScreen screens;

  private void show(Display display) throws StoreException {
    screens = new EveryScreen(display, 1366, 768, name -> {});
    EveryScreen.await(() -> screens.has("Facts and precautions") && screens.listed());
  }

  @AfterEach
  void close() {
    screens.close();
  }

  private Node owner() {
    return Window.on(() -> screens.stage.getScene().getFocusOwner());
  }

  private boolean shows(String style, String text) {
    return Window.on(
        () ->
            screens.stage.getScene().getRoot().lookupAll(style).stream()
                .anyMatch(
                    n -> n.isVisible() && n instanceof Labeled l && l.getText().contains(text)));
  }

  @Test
  void keysChangeTheSizeAndItIsRemembered() throws StoreException {
    show(Display.USUAL);
    screens.control(KeyCode.PLUS);
    screens.control(KeyCode.PLUS);
    assertEquals(150, screens.clinic.displays.now().scale());
    screens.control(KeyCode.MINUS);
    assertEquals(125, screens.clinic.displays.now().scale());
    screens.control(KeyCode.DIGIT0);
    assertEquals(100, screens.clinic.displays.now().scale());
  }

  /** At every size the place of entry has the focus and stands in the window. */
  @ParameterizedTest
  @ValueSource(ints = {100, 125, 200, 300})
  void thePlaceOfEntryStandsInTheWindow(int percent) throws StoreException {
    show(Display.USUAL.withScale(percent));
    screens.open();
    for (int page = 0; page < 5; page++) {
      Window.draw();
      Node at = owner();
      assertTrue(String.valueOf(at.getAccessibleText()).startsWith("Right"), at.toString());
      var bounds = Window.on(() -> at.localToScene(at.getLayoutBounds()));
      assertTrue(bounds.getMinX() >= -1 && bounds.getMinY() >= -1, page + ": " + bounds);
      assertTrue(bounds.getMinX() < 1300 && bounds.getMinY() < 700, page + ": " + bounds);
      screens.control(KeyCode.PAGE_DOWN);
    }
  }

  /** Folded or not: to the tests, to what stands beside, and back to the place of entry. */
  @ParameterizedTest
  @ValueSource(ints = {100, 200})
  void oneKeyGoesRoundTheParts(int percent) throws StoreException {
    show(Display.USUAL.withScale(percent));
    screens.open();
    Window.draw();
    Node entry = owner();
    screens.key(KeyCode.F6);
    assertTrue(owner().getStyleClass().contains("nav"), owner().toString());
    screens.key(KeyCode.F6);
    assertTrue(owner() instanceof ScrollPane, owner().toString());
    for (int part = 0; part < 2 && owner() instanceof ScrollPane; part++) {
      screens.key(KeyCode.F6);
    }
    assertEquals(entry, owner());
  }

  @Test
  void theKeysOfThePlaceShowFromAnywhere() throws StoreException {
    show(Display.USUAL);
    screens.key(KeyCode.F1);
    assertTrue(shows(".section-head", "On this screen"));
    assertFalse(shows(".section-head", "Here"));
    screens.key(KeyCode.ESCAPE);
    screens.open();
    screens.type("?");
    assertTrue(shows(".section-head", "Here"));
    screens.key(KeyCode.ESCAPE);
    screens.key(KeyCode.F6);
    screens.type("?");
    assertTrue(shows(".section-head", "On this screen"));
  }

  @Test
  void aPedalRecordsAndGoesOn() throws StoreException {
    show(Display.USUAL.with(new Pedals(Optional.of(KeyCode.F13), Optional.empty())));
    screens.open();
    Node before = owner();
    screens.key(KeyCode.F14);
    assertEquals(before, owner());
    screens.key(KeyCode.F13);
    assertFalse(before.equals(owner()));
  }

  @Test
  void theGuideFollowsWhatIsRecordedAndEscapeEndsIt() throws StoreException {
    show(Display.USUAL);
    assertTrue(shows(".guide-words", "New here?"));
    screens.press("Show me");
    EveryScreen.await(() -> shows(".guide-words", "1 of 6"));
    EveryScreen.await(() -> shows(".banner-name", "Practice Patient"));
    Window.draw();
    screens.type("1");
    EveryScreen.await(() -> shows(".guide-words", "2 of 6"));
    screens.type("1");
    EveryScreen.await(() -> shows(".guide-words", "3 of 6"));
    screens.type("*4");
    EveryScreen.await(() -> shows(".guide-words", "4 of 6"));
    screens.control(KeyCode.Z);
    EveryScreen.await(() -> shows(".guide-words", "5 of 6"));
    screens.key(KeyCode.ESCAPE);
    assertFalse(Window.on(() -> screens.stage.getScene().lookup(".guide-strip").isVisible()));
  }
}
