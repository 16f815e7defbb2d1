package styloid.shell;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import styloid.model.Patient;
import styloid.store.StoreException;

/** The chart of the visits in the real window, by keys alone. */
class ProgressWindowTest {
  private Stage stage;
  private ShellWindow window;

  @BeforeEach
  void open() throws StoreException {
    Clinic clinic = new Clinic();
    Patient patient = clinic.fill();
    Window.start();
    stage = Window.on(Stage::new);
    Window.run(
        () -> {
          stage.setWidth(1366);
          stage.setHeight(768);
          window =
              new ShellWindow(
                  stage,
                  Clinic.CLOCK,
                  clinic.therapists,
                  clinic.lengths,
                  clinic.displays,
                  Optional.empty(),
                  List::of);
          window.open(Optional.of(clinic.session()));
          stage.show();
        });
    clinic.openFirst(patient);
    Window.run(window::evaluation);
    Window.settle();
  }

  @AfterEach
  void close() {
    Window.run(
        () -> {
          window.dispose();
          stage.hide();
        });
  }

  private void press(KeyCode code) {
    Window.run(
        () -> {
          Node owner = stage.getScene().getFocusOwner();
          Node target = owner == null ? stage.getScene().getRoot() : owner;
          Event.fireEvent(
              target, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
        });
    Window.settle();
  }

  private Node find(String style) {
    return Window.on(() -> stage.getScene().getRoot().lookup(style));
  }

  private Node focused() {
    return Window.on(() -> stage.getScene().getFocusOwner());
  }

  @Test
  void oneKeyShowsTheChartArrowsChooseTheMeasureEscapeGoesBackToTheEntry() {
    Node before = focused();
    press(KeyCode.F3);
    Node chart = find(".chart");
    assertNotNull(chart);
    assertTrue(focused() instanceof ListView<?>, "the list of measures takes the arrows");
    String first = Window.on(chart::getAccessibleText);
    assertTrue(first.contains("ight: ") && first.contains("eft: "), first);
    press(KeyCode.DOWN);
    assertNotEquals(first, Window.on(chart::getAccessibleText));
    press(KeyCode.ESCAPE);
    assertNull(find(".chart"));
    assertSame(before, focused());
  }

  @Test
  void theSameKeyClosesIt() {
    Node before = focused();
    press(KeyCode.F3);
    press(KeyCode.F3);
    assertNull(find(".chart"));
    assertSame(before, focused());
  }
}
