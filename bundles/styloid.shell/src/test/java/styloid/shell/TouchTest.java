package styloid.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashSet;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import styloid.shell.look.Display;
import styloid.store.StoreException;

/**
 * In the density for touch whatever is pressed is large enough, and a step still stands at once.
 */
class TouchTest {
  /**
   * Least size of a target in pixels: WCAG 2.2, success criterion 2.5.5, Target Size (Enhanced).
   */
  private static final double LEAST = 44;

  private static final Set<String> PRESSED =
      Set.of("chip", "button", "toggle-button", "combo-box", "text-field");

  private final Set<String> small = new LinkedHashSet<>();
  private int targets;

  @Test
  void whateverIsPressedHasRoomForAFinger() throws StoreException {
    Display touch = Display.USUAL.with(Display.Density.TOUCH);
    try (EveryScreen screens = new EveryScreen(touch, 1366, 768, name -> {})) {
      screens.open();
      for (int page = 0; page < 24; page++) {
        Window.draw();
        Window.run(() -> look(screens.stage.getScene().getRoot()));
        screens.control(KeyCode.PAGE_DOWN);
      }
      screens.control(KeyCode.D);
      Window.draw();
      Window.run(() -> look(screens.stage.getScene().getRoot()));
    }
    assertEquals(Set.of(), small);
    assertTrue(targets > 500, targets + " targets");
  }

  private void look(Node node) {
    if (!node.isVisible() || node.isDisabled()) {
      return;
    }
    if (node.getStyleClass().stream().anyMatch(PRESSED::contains)) {
      targets++;
      Bounds at = node.getLayoutBounds();
      if (at.getHeight() < LEAST || at.getWidth() < LEAST) {
        small.add(node.getStyleClass() + " " + at.getWidth() + " x " + at.getHeight());
      }
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(this::look);
    }
  }

  /** The first group of each page with its heading: no scrolling within a step that begins. */
  @Test
  void aWholeStepStandsOnTheSmallScreen() throws StoreException {
    Display touch = Display.USUAL.with(Display.Density.TOUCH);
    Set<String> cut = new LinkedHashSet<>();
    try (EveryScreen screens = new EveryScreen(touch, 1366, 768, name -> {})) {
      screens.open();
      for (int page = 0; page < 24; page++) {
        Window.draw();
        String wrong = Window.on(() -> cutOff(screens));
        if (!wrong.isEmpty()) {
          cut.add(page + ": " + wrong);
        }
        screens.control(KeyCode.PAGE_DOWN);
      }
    }
    assertEquals(Set.of(), cut);
  }

  /** From the place of entry to the end of its row on the page, and across. */
  private static String cutOff(EveryScreen screens) {
    ScrollPane pane = (ScrollPane) screens.stage.getScene().lookup(".form-scroll");
    Node owner = screens.stage.getScene().getFocusOwner();
    Bounds view = pane.localToScene(pane.getLayoutBounds());
    Bounds at = owner.localToScene(owner.getLayoutBounds());
    boolean inSight = at.getMinY() >= view.getMinY() && at.getMaxY() <= view.getMaxY();
    double wide = pane.getContent().getLayoutBounds().getWidth();
    boolean across = wide <= pane.getViewportBounds().getWidth() + 1;
    boolean room = view.getHeight() >= 440;
    return inSight && across && room
        ? ""
        : owner.getAccessibleText() + " " + wide + " " + pane.getViewportBounds();
  }
}
