package styloid.shell;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import styloid.model.Patient;
import styloid.model.Side;
import styloid.model.TherapistId;
import styloid.plan.StepId;

/**
 * Writes a picture of the window at every step of one test against gravity, to be looked at;
 * arguments: folder, id of the test, width and height.
 */
final class StepPictures {
  private final Clinic clinic = new Clinic();
  private Stage stage;

  private StepPictures() {}

  public static void main(String[] args) throws Exception {
    new StepPictures()
        .run(Path.of(args[0]), args[1], Double.parseDouble(args[2]), Double.parseDouble(args[3]));
    System.exit(0);
  }

  private void run(Path folder, String test, double width, double height) throws Exception {
    Patient patient =
        clinic.patient(7, "Made Up", "1970-05-05", Set.of(Side.RIGHT, Side.LEFT), "Invented");
    clinic.session.savePatient(patient, List.of());
    clinic.session.begin(patient.id(), LocalDate.of(2026, 3, 2), new TherapistId("A. Therapist"));
    Window.start();
    stage = Window.on(Stage::new);
    Window.run(
        () -> {
          stage.setWidth(width);
          stage.setHeight(height);
          ShellWindow window =
              new ShellWindow(
                  stage,
                  Clinic.CLOCK,
                  clinic.therapists,
                  clinic.lengths,
                  clinic.displays,
                  Optional.empty(),
                  List::of);
          window.open(Optional.of(clinic.session));
          stage.show();
          window.evaluation();
        });
    pause();
    List<StepId> wanted =
        order().stream()
            .filter(id -> id.test().value().equals(test) && id.side() == Side.RIGHT)
            .toList();
    for (StepId step : wanted) {
      press(KeyCode.T, true);
      pause();
      int place = order().indexOf(step);
      Window.run(
          () ->
              ((ListView<?>) stage.getScene().getRoot().lookup(".cover-card .list-view"))
                  .getSelectionModel()
                  .select(place));
      press(KeyCode.ENTER, false);
      pause();
      Window.picture(stage, folder.resolve(step.group() + ".png"), 1);
    }
  }

  private List<StepId> order() {
    clinic.session.settle();
    return clinic.session.current().orElseThrow().order().orElseThrow().steps().stream()
        .map(step -> step.id())
        .toList();
  }

  private void press(KeyCode code, boolean control) {
    Window.run(
        () -> {
          Node owner = stage.getScene().getFocusOwner();
          Event.fireEvent(
              owner == null ? stage.getScene().getRoot() : owner,
              new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, control, false, false));
        });
  }

  private static void pause() {
    for (int turn = 0; turn < 3; turn++) {
      Window.settle();
      LockSupport.parkNanos(50_000_000L);
    }
  }
}
