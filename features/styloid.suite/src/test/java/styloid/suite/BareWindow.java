package styloid.suite;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintWriter;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.stage.Stage;

/** The least window there is, for comparison. */
public final class BareWindow {
  private BareWindow() {}

  public static void main(String[] args) {
    PrintWriter out = new PrintWriter(new FileOutputStream(FileDescriptor.out), true);
    Platform.startup(
        () -> {
          Stage stage = new Stage();
          Scene scene = new Scene(new Label("bare"), 1366, 768);
          stage.setScene(scene);
          scene.addPostLayoutPulseListener(() -> out.println(StartBench.BARE_OPEN));
          stage.show();
        });
  }
}
