package styloid.launcher;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.control.TextArea;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** The window from the first moment on: a ring while parts start, then whatever the shell shows. */
final class StartWindow {
  private static final double WIDTH = 1366;
  private static final double HEIGHT = 768;

  private final Words words;
  private final CompletableFuture<Stage> shown = new CompletableFuture<>();
  private final CompletableFuture<Void> taken = new CompletableFuture<>();
  private final CompletableFuture<Void> closed = new CompletableFuture<>();

  StartWindow(Words words) {
    this.words = words;
  }

  /** Starts the window toolkit and shows the window; returns at once. */
  void open() {
    Thread starter = new Thread(this::startToolkit, "styloid-window");
    starter.setDaemon(true);
    starter.start();
  }

  private void startToolkit() {
    try {
      Platform.startup(this::showRing);
    } catch (RuntimeException | LinkageError e) {
      shown.completeExceptionally(e);
    }
  }

  private void showRing() {
    // Closing the window must not end the toolkit before all is saved.
    Platform.setImplicitExit(false);
    Stage stage = new Stage();
    VBox ring = new VBox(16, new ProgressIndicator(), new Label(words.text("window.starting")));
    ring.setAlignment(Pos.CENTER);
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    double width = Math.min(WIDTH, screen.getWidth());
    double height = Math.min(HEIGHT, screen.getHeight());
    Scene scene = new Scene(ring, width, height);
    scene.rootProperty().addListener((property, before, root) -> look(stage, ring));
    stage.sceneProperty().addListener((property, before, now) -> look(stage, ring));
    stage.showingProperty().addListener((property, before, showing) -> closeWhenHidden(showing));
    stage.setTitle(words.text("window.title"));
    stage.setScene(scene);
    stage.show();
    shown.complete(stage);
  }

  private void look(Stage stage, Parent ring) {
    Scene scene = stage.getScene();
    if (scene != null && scene.getRoot() != ring && !taken.isDone()) {
      // Taken once it has been laid out, so that "open" means there is something to see.
      scene.addPostLayoutPulseListener(() -> taken.complete(null));
      Platform.requestNextPulse();
    }
  }

  private void closeWhenHidden(boolean showing) {
    if (!showing) {
      closed.complete(null);
    }
  }

  /** The window once it shows; exceptionally when it cannot. */
  CompletableFuture<Stage> shown() {
    return shown;
  }

  /** Completes when something else than the ring is in the window. */
  CompletableFuture<Void> taken() {
    return taken;
  }

  /** Completes when the user has closed the window. */
  CompletableFuture<Void> closed() {
    return closed;
  }

  /** Says in the window what did not start. */
  void report(Stage stage, List<String> lines) {
    Label heading = new Label(words.text("report.heading"));
    heading.setStyle("-fx-font-size: 1.5em");
    Label advice = new Label(words.text("report.advice"));
    advice.setWrapText(true);
    TextArea text = new TextArea(String.join("\n", lines));
    text.setEditable(false);
    text.setWrapText(true);
    text.setAccessibleText(words.text("report.details"));
    VBox.setVgrow(text, Priority.ALWAYS);
    Button copy = new Button(words.text("report.copy"));
    copy.setOnAction(event -> copy(text.getText()));
    Button close = new Button(words.text("report.close"));
    close.setOnAction(event -> stage.close());
    VBox all = new VBox(12, heading, advice, text, new HBox(12, copy, close));
    all.setPadding(new Insets(24));
    stage.setScene(new Scene(all, stage.getScene().getWidth(), stage.getScene().getHeight()));
    copy.requestFocus();
  }

  private static void copy(String text) {
    ClipboardContent content = new ClipboardContent();
    content.putString(text);
    Clipboard.getSystemClipboard().setContent(content);
  }
}
