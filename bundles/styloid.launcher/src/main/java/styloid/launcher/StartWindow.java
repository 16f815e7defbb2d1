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

  /** What the launcher itself shows at the moment; used on the window's thread. */
  private Parent own;

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
    stage.sceneProperty().addListener((property, before, scene) -> look(scene));
    stage.showingProperty().addListener((property, before, showing) -> closeWhenHidden(showing));
    stage.setTitle(words.text("window.title"));
    show(stage, ring, width, height);
    stage.show();
    shown.complete(stage);
  }

  private void show(Stage stage, Parent content, double width, double height) {
    own = content;
    Scene scene = new Scene(content, width, height);
    scene.rootProperty().addListener((property, before, root) -> look(scene));
    stage.setScene(scene);
  }

  private void look(Scene scene) {
    if (scene != null && scene.getRoot() != own && !taken.isDone()) {
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

  /** Completes when something that is not of the launcher is in the window. */
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
    show(stage, all, stage.getScene().getWidth(), stage.getScene().getHeight());
    copy.requestFocus();
  }

  private static void copy(String text) {
    ClipboardContent content = new ClipboardContent();
    content.putString(text);
    Clipboard.getSystemClipboard().setContent(content);
  }
}
