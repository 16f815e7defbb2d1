package styloid.shell;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import styloid.model.Patient;
import styloid.shell.look.Display;
import styloid.store.StoreException;

/** Goes through every screen, card and state of the window by keys, and stops at each. */
final class EveryScreen implements AutoCloseable {
  private static final int PAGES = 24;
  private static final long PATIENCE_NANOS = 30_000_000_000L;

  final Clinic clinic = new Clinic();
  final Stage stage;
  private final Patient first;
  private final ShellWindow window;
  private final Consumer<String> stop;

  /**
   * @param stop told the name of each state, with the window showing it
   */
  EveryScreen(Display display, double width, double height, Consumer<String> stop)
      throws StoreException {
    this.stop = stop;
    first = clinic.fill();
    clinic.displays.set(display);
    clinic.displays.firstTime();
    Window.start();
    stage = Window.on(Stage::new);
    window =
        Window.on(
            () -> {
              stage.setWidth(width);
              stage.setHeight(height);
              return new ShellWindow(
                  stage,
                  Clinic.CLOCK,
                  clinic.therapists,
                  clinic.lengths,
                  clinic.displays,
                  Optional.of("Demo clinic: all patients are invented"),
                  List::of);
            });
    Window.run(
        () -> {
          window.open(Optional.of(clinic.session()));
          stage.show();
        });
  }

  /** All of them; the store breaks at the end. */
  void visit() throws StoreException {
    caseload();
    open();
    screenAndNotes();
    cards();
    guide();
    open();
    pages();
    strength();
    broken();
  }

  private void caseload() {
    await(() -> has("Facts and precautions") && listed());
    at("caseload");
    key(KeyCode.F1);
    at("caseload-keys");
    key(KeyCode.ESCAPE);
    press("Not now (Esc)");
    control(KeyCode.D);
    at("display");
    key(KeyCode.ESCAPE);
    press("Export");
    at("caseload-export");
    press("Cancel");
    press("New patient");
    at("new-patient");
    press("Add precaution");
    press("Save patient");
    at("new-patient-refused");
    press("Cancel");
    press("New evaluation");
    at("new-evaluation");
    press("Cancel");
  }

  void open() throws StoreException {
    clinic.openFirst(first);
    Window.run(window::evaluation);
    at("screen");
  }

  private void screenAndNotes() {
    type("2");
    type("2");
    at("screen-followers");
    type("*");
    at("absence-reasons");
    key(KeyCode.ESCAPE);
  }

  private void cards() {
    key(KeyCode.F1);
    at("keys");
    key(KeyCode.ESCAPE);
    control(KeyCode.T);
    at("order");
    key(KeyCode.ESCAPE);
    key(KeyCode.F4);
    key(KeyCode.DOWN);
    at("limb-map");
    key(KeyCode.ESCAPE);
    control(KeyCode.I);
    at("who");
    key(KeyCode.ESCAPE);
    control(KeyCode.R);
    at("rest-question");
    key(KeyCode.ESCAPE);
    press("Export");
    at("export");
    press("Cancel");
    key(KeyCode.F6);
    at("focus-in-tests");
    key(KeyCode.F6);
    at("focus-beside");
    key(KeyCode.F6);
    key(KeyCode.F6);
  }

  private void guide() {
    Window.run(window::guide);
    await(() -> has("End the guide (Esc)"));
    type("1");
    at("guide");
  }

  private void pages() {
    for (int page = 1; page < PAGES; page++) {
      control(KeyCode.PAGE_DOWN);
      at(String.format(Locale.ROOT, "page-%02d", page));
    }
    key(KeyCode.F2);
    at("why");
    type("9999");
    key(KeyCode.ENTER);
    at("refused");
    key(KeyCode.ESCAPE);
    key(KeyCode.ESCAPE);
    type("25");
    key(KeyCode.ENTER);
    at("question");
    key(KeyCode.ESCAPE);
    key(KeyCode.ESCAPE);
    press("Settings");
    at("settings");
    press("Close");
    type("/");
    at("withheld");
    type("o");
    at("override");
    key(KeyCode.ESCAPE);
  }

  /** Back to where strength is graded: a hold under way. */
  private void strength() {
    for (int page = 0; page < PAGES; page++) {
      control(KeyCode.PAGE_UP);
      type("1");
      type("+");
      if (Window.on(() -> stage.getScene().lookup(".hold").isVisible())) {
        at("hold");
        key(KeyCode.ESCAPE);
        break;
      }
    }
  }

  private void broken() {
    clinic.store.refuse(
        new StoreException(
            StoreException.Cause.DISK_FULL,
            "The disk is full: free some space, then try again. Entries are kept until then.",
            null));
    control(KeyCode.Z);
    at("not-saved");
    Window.run(window::caseload);
    await(() -> has("Stay"));
    at("unsaved-question");
    clinic.store.refuse(null);
  }

  private void at(String name) {
    clinic.session.settle();
    Window.settle();
    Window.draw();
    stop.accept(name);
  }

  /** Whether the caseload has been read; its rows would else come while the screen is looked at. */
  boolean listed() {
    return Window.on(
        () ->
            stage.getScene().getRoot().lookupAll(".label").stream()
                .anyMatch(n -> n instanceof Label l && l.getText().endsWith(" found")));
  }

  boolean has(String button) {
    return Window.on(
        () ->
            stage.getScene().getRoot().lookupAll(".button").stream()
                .anyMatch(n -> n instanceof Button b && b.getText().equals(button)));
  }

  static void await(BooleanSupplier there) {
    long end = System.nanoTime() + PATIENCE_NANOS;
    while (!there.getAsBoolean()) {
      if (System.nanoTime() > end) {
        throw new AssertionError("it never came");
      }
      LockSupport.parkNanos(5_000_000L);
    }
  }

  void press(String words) {
    Window.run(
        () ->
            stage.getScene().getRoot().lookupAll(".button").stream()
                .filter(n -> n instanceof Button b && words.equals(b.getText()) && shown(b))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no button " + words))
                .fire());
    Window.settle();
  }

  private static boolean shown(Button button) {
    return button.isVisible() && !button.isDisabled();
  }

  void type(String text) {
    for (char c : text.toCharArray()) {
      fire(
          new KeyEvent(
              KeyEvent.KEY_TYPED,
              String.valueOf(c),
              "",
              KeyCode.UNDEFINED,
              false,
              false,
              false,
              false));
    }
    Window.run(
        () ->
            target()
                .ifPresent(
                    at ->
                        Event.fireEvent(
                            at,
                            new KeyEvent(
                                KeyEvent.KEY_RELEASED,
                                "",
                                "",
                                KeyCode.UNDEFINED,
                                false,
                                false,
                                false,
                                false))));
  }

  void key(KeyCode code) {
    fire(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
  }

  void control(KeyCode code) {
    fire(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, true, false, false));
  }

  private Optional<Node> target() {
    Node owner = stage.getScene().getFocusOwner();
    return Optional.of(owner == null ? stage.getScene().getRoot() : owner);
  }

  private void fire(KeyEvent event) {
    Window.run(() -> target().ifPresent(at -> Event.fireEvent(at, event)));
    Window.settle();
  }

  @Override
  public void close() {
    Window.run(
        () -> {
          window.dispose();
          stage.hide();
        });
  }
}
