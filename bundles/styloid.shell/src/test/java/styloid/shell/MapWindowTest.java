package styloid.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.store.StoreException;

/** The limb map in the real window, by keys and by clicks. */
class MapWindowTest {
  private Clinic clinic;
  private Stage stage;
  private ShellWindow window;

  @BeforeEach
  void open() throws StoreException {
    clinic = new Clinic();
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
    clinic.session.settle();
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

  private Node focus() {
    return Window.on(() -> stage.getScene().getFocusOwner());
  }

  private String focusWords() {
    return Window.on(() -> String.valueOf(stage.getScene().getFocusOwner().getAccessibleText()));
  }

  private void press(KeyCode code) {
    Window.run(
        () ->
            Event.fireEvent(
                stage.getScene().getFocusOwner(),
                new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false)));
    Window.settle();
  }

  private List<Node> targets(String under) {
    return Window.on(
        () -> List.copyOf(stage.getScene().getRoot().lookup(under).lookupAll(".map-target")));
  }

  private String title() {
    return Window.on(
        () -> ((Label) stage.getScene().getRoot().lookup(".part-card .title")).getText());
  }

  private boolean mapIsOpen() {
    return Window.on(() -> stage.getScene().getRoot().lookup(".map-card") != null);
  }

  @Test
  void oneKeyOpensTheMapWhereEntryIsAndEscGoesBack() {
    Node entry = focus();
    press(KeyCode.F4);
    assertTrue(focusWords().startsWith("Right shoulder, "), focusWords());
    assertEquals("Right shoulder", title());
    press(KeyCode.ESCAPE);
    assertFalse(mapIsOpen());
    assertEquals(entry, focus());
  }

  @Test
  void arrowsMoveFromJointToJointAndTheCardFollows() {
    press(KeyCode.F4);
    press(KeyCode.DOWN);
    press(KeyCode.DOWN);
    assertTrue(focusWords().startsWith("Right elbow, done"), focusWords());
    press(KeyCode.RIGHT);
    assertTrue(focusWords().startsWith("Left elbow, done"), focusWords());
    press(KeyCode.DOWN);
    assertEquals("Left forearm", title());
    assertTrue(focusWords().contains("precaution in force"), focusWords());
    assertTrue(focusWords().contains("out of the ordinary"), focusWords());
  }

  @Test
  void enterGoesToTheFirstStepLeft() {
    press(KeyCode.F4);
    press(KeyCode.DOWN);
    press(KeyCode.DOWN);
    press(KeyCode.DOWN);
    press(KeyCode.ENTER);
    assertFalse(mapIsOpen());
    assertTrue(focusWords().contains("Right, Forearm: Pronation"), focusWords());
  }

  @Test
  void digitPicksAStep() {
    press(KeyCode.F4);
    press(KeyCode.DOWN);
    press(KeyCode.DOWN);
    press(KeyCode.DOWN);
    press(KeyCode.DIGIT2);
    assertFalse(mapIsOpen());
    assertTrue(focusWords().startsWith("Right, "), focusWords());
    assertTrue(focusWords().contains("ronation"), focusWords());
    assertFalse(focusWords().contains("Forearm: Pronation"), focusWords());
  }

  @Test
  void smallMapTakesClicksAndNeverTheFocus() {
    List<Node> small = targets(".navigation");
    assertEquals(42, small.size());
    assertTrue(small.stream().noneMatch(Node::isFocusTraversable));
    Node wrist =
        small.stream()
            .filter(n -> n.getAccessibleText().startsWith("Left wrist, "))
            .findFirst()
            .orElseThrow();
    Window.run(() -> Event.fireEvent(wrist, click()));
    Window.settle();
    assertEquals("Left wrist", title());
    assertTrue(focusWords().startsWith("Left wrist, "), focusWords());
  }

  private static MouseEvent click() {
    return new MouseEvent(
        MouseEvent.MOUSE_CLICKED,
        12,
        12,
        0,
        0,
        MouseButton.PRIMARY,
        1,
        false,
        false,
        false,
        false,
        true,
        false,
        false,
        true,
        false,
        true,
        null);
  }

  @Test
  void everyTargetSaysSideNameAndState() {
    press(KeyCode.F4);
    for (Node target : targets(".map-card")) {
      assertTrue(
          target.getAccessibleText().matches("(Right|Left) [a-zA-Z ]+, .+"),
          target.getAccessibleText());
    }
    assertEquals(
        42,
        targets(".map-card").stream()
            .map(Node::getAccessibleText)
            .map(w -> w.split(",")[0])
            .distinct()
            .count());
  }

  @Test
  void targetsOfTheLargeMapHaveRoomForAFinger() {
    press(KeyCode.F4);
    for (Node target : targets(".map-card")) {
      double across = Window.on(() -> target.localToScene(target.getBoundsInLocal()).getWidth());
      assertTrue(across >= 43.5, target.getAccessibleText() + " " + across);
    }
    for (Node target : targets(".navigation")) {
      double across = Window.on(() -> target.localToScene(target.getLayoutBounds()).getWidth());
      assertTrue(across >= 23.99, target.getAccessibleText() + " " + across);
    }
  }

  @Test
  void mapFollowsEntryAndLeavesTheFocusAlone() {
    Node entry = focus();
    ItemKey key =
        new ItemKey(new TestId("screen"), new ItemId("pip-flexion"), Side.LEFT, Digit.NONE, 1);
    assertTrue(smallWords("Left ring finger PIP joint").contains("untouched"));
    clinic.session.record(key, new Choice("limited"), false);
    clinic.session.settle();
    Window.settle();
    Window.settle();
    String words = smallWords("Left ring finger PIP joint");
    assertTrue(words.contains("in progress") && words.contains("out of the ordinary"), words);
    assertTrue(smallWords("Right ring finger PIP joint").contains("untouched"));
    assertEquals(entry, focus());
  }

  private String smallWords(String name) {
    return targets(".navigation").stream()
        .map(Node::getAccessibleText)
        .filter(w -> w.startsWith(name + ","))
        .findFirst()
        .orElseThrow();
  }
}
