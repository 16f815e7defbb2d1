package styloid.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import styloid.model.Digit;
import styloid.model.Patient;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TherapistId;

/** Writes pictures of the limb map: folder, width, height and scale as arguments. */
final class MapDemo {
  private final Clinic clinic = new Clinic();
  private final Path folder;
  private final double scale;
  private Stage stage;
  private ShellWindow window;

  private MapDemo(Path folder, double scale) {
    this.folder = folder;
    this.scale = scale;
    clinic.displays.firstTime();
  }

  public static void main(String[] args) throws Exception {
    new MapDemo(Path.of(args[0]), Double.parseDouble(args[3]))
        .run(Double.parseDouble(args[1]), Double.parseDouble(args[2]));
    System.exit(0);
  }

  private void run(double width, double height) throws Exception {
    Patient first = clinic.fill();
    Patient fresh = clinic.patient(5, "Fenja Fictional", "1951-06-30", Set.of(), "Weak grip");
    Patient repair =
        clinic.patient(87, "Moritz Madeup", "1990-11-02", Set.of(Side.RIGHT), "Tendon repair");
    clinic.session.savePatient(
        repair,
        List.of(
            limit(Precaution.Kind.NO_ACTIVE_MOTION, Region.FINGERS, Digit.INDEX),
            limit(Precaution.Kind.NO_ACTIVE_MOTION, Region.WRIST, Digit.NONE),
            limit(Precaution.Kind.NO_GRIP_OR_PINCH, Region.HAND, Digit.NONE)));
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
                  clinic.displays,
                  Optional.of("Demo clinic: all patients are invented"),
                  List::of);
          window.open(Optional.of(clinic.session()));
          stage.show();
        });
    clinic.session.begin(fresh.id(), Clinic.DAY, new TherapistId("A. Therapist"));
    visit("fresh", 0);
    clinic.session.begin(repair.id(), Clinic.DAY, new TherapistId("A. Therapist"));
    visit("limits", 5);
    clinic.openFirst(first);
    visit("half", 3);
    key(KeyCode.ESCAPE);
    for (int page = 0; page < 9; page++) {
      key(KeyCode.PAGE_DOWN, true);
    }
    picture("half-page");
    key(KeyCode.F4);
    picture("half-page-map");
  }

  private void visit(String name, int down) throws Exception {
    clinic.session.settle();
    Window.run(window::evaluation);
    picture(name);
    key(KeyCode.F4);
    for (int i = 0; i < down; i++) {
      key(KeyCode.DOWN);
    }
    picture(name + "-map");
    key(KeyCode.ESCAPE);
  }

  private static Precaution limit(Precaution.Kind kind, Region region, Digit digit) {
    return new Precaution(
        kind, region, Side.RIGHT, digit, Optional.empty(), Optional.empty(), "Dr Example", "");
  }

  private void picture(String name) throws InterruptedException {
    for (int turn = 0; turn < 4; turn++) {
      Window.settle();
      LockSupport.parkNanos(100_000_000L);
    }
    Window.picture(stage, folder.resolve(name + ".png"), scale);
  }

  private void key(KeyCode code) {
    key(code, false);
  }

  private void key(KeyCode code, boolean control) {
    Window.settle();
    Window.run(
        () -> {
          Node owner = stage.getScene().getFocusOwner();
          Event.fireEvent(
              owner == null ? stage.getScene().getRoot() : owner,
              new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, control, false, false));
        });
    Window.settle();
  }
}
