package styloid.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.locks.LockSupport;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import styloid.model.Patient;

/**
 * Opens the window on invented patients; with a folder as argument, writes a picture of each
 * screen.
 */
final class ShellDemo {
  private final Path folder;
  private final Clinic clinic = new Clinic();
  private Stage stage;
  private ShellWindow window;

  private ShellDemo(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] args) throws Exception {
    ShellDemo demo = new ShellDemo(args.length > 0 ? Path.of(args[0]) : null);
    double width = args.length > 1 ? Double.parseDouble(args[1]) : 1366;
    double height = args.length > 2 ? Double.parseDouble(args[2]) : 768;
    demo.run(width, height);
  }

  private void run(double width, double height) throws Exception {
    Patient first = clinic.fill();
    Window.start();
    stage = Window.on(Stage::new);
    Window.run(
        () -> {
          stage.setWidth(width);
          stage.setHeight(height);
          window =
              new ShellWindow(
                  stage,
                  Clinic.CLOCK,
                  clinic.therapists,
                  clinic.lengths,
                  Optional.of("Demo clinic: all patients are invented"),
                  List::of);
          window.open(Optional.of(clinic.session()));
          stage.show();
        });
    if (folder == null) {
      Window.run(() -> stage.setOnHidden(e -> System.exit(0)));
      return;
    }
    pause();
    picture("1-caseload");
    press("New patient");
    picture("2-new-patient");
    press("Add precaution");
    picture("3-precaution");
    press("Save patient");
    picture("4-refused");
    press("Cancel");
    press("New evaluation");
    picture("5-new-evaluation");
    press("Cancel");
    clinic.openFirst(first);
    Window.run(window::evaluation);
    pause();
    picture("6-screen");
    type("2");
    pause();
    type("2");
    picture("7-screen-followers");
    type("*");
    picture("8-absence");
    key(KeyCode.ESCAPE);
    key(KeyCode.F1);
    picture("9-keys");
    key(KeyCode.ESCAPE);
    control(KeyCode.T);
    picture("9-order");
    key(KeyCode.ESCAPE);
    control(KeyCode.I);
    picture("9-who");
    type("1");
    pause();
    for (int page = 0; page < 24; page++) {
      Window.run(
          () ->
              fire(
                  new KeyEvent(
                      KeyEvent.KEY_PRESSED, "", "", KeyCode.PAGE_DOWN, false, true, false, false)));
      pause();
      picture(String.format("page-%02d", page));
    }
    press("Settings");
    picture("e-settings");
    press("Close");
    timers();
    key(KeyCode.F2);
    picture("a-why");
    press("Export");
    picture("b-export");
    press("Cancel");
    clinic.store.refuse(
        new styloid.store.StoreException(
            styloid.store.StoreException.Cause.DISK_FULL,
            "The disk is full: free some space, then try again. Entries are kept until then.",
            null));
    type("9");
    key(KeyCode.ENTER);
    pause();
    picture("c-not-saved");
    Window.run(window::caseload);
    pause();
    picture("d-report");
    System.exit(0);
  }

  /** A hold half way and at its end, and a withheld place that asks why. */
  private void timers() throws InterruptedException {
    for (int page = 0; page < 24; page++) {
      Window.run(
          () ->
              fire(
                  new KeyEvent(
                      KeyEvent.KEY_PRESSED, "", "", KeyCode.PAGE_UP, false, true, false, false)));
      pause();
      type("1");
      pause();
      type("+");
      if (Window.on(() -> stage.getScene().lookup(".hold").isVisible())) {
        LockSupport.parkNanos(1_000_000_000L);
        picture(String.format("f-hold-%02d", page));
        LockSupport.parkNanos(2_500_000_000L);
        picture(String.format("g-held-%02d", page));
        return;
      }
      type("o");
      picture(String.format("h-override-%02d", page));
      key(KeyCode.ESCAPE);
    }
  }

  private static void pause() throws InterruptedException {
    for (int turn = 0; turn < 4; turn++) {
      Window.settle();
      LockSupport.parkNanos(100_000_000L);
    }
  }

  private void picture(String name) throws InterruptedException {
    pause();
    Window.picture(stage, folder.resolve(name + ".png"));
  }

  private void press(String words) {
    Window.run(
        () -> {
          for (Node node : stage.getScene().getRoot().lookupAll(".button")) {
            if (node instanceof Button button
                && button.getText().equals(words)
                && !button.isDisabled()
                && button.isVisible()) {
              button.fire();
              return;
            }
          }
          throw new IllegalStateException("no button " + words);
        });
  }

  private void type(String text) {
    for (char c : text.toCharArray()) {
      Window.run(
          () ->
              fire(
                  new KeyEvent(
                      KeyEvent.KEY_TYPED,
                      String.valueOf(c),
                      "",
                      KeyCode.UNDEFINED,
                      false,
                      false,
                      false,
                      false)));
    }
  }

  private void control(KeyCode code) {
    Window.run(
        () -> fire(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, true, false, false)));
  }

  private void key(KeyCode code) {
    Window.run(
        () -> fire(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false)));
  }

  private void fire(KeyEvent event) {
    Node owner = stage.getScene().getFocusOwner();
    Event.fireEvent(owner == null ? stage.getScene().getRoot() : owner, event);
  }
}
