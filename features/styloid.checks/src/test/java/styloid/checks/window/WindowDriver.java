package styloid.checks.window;

import java.awt.image.BufferedImage;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.locks.LockSupport;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;
import javax.imageio.ImageIO;

/**
 * Runs in the same process as the suite: reads one request a line from standard input, does it on
 * the window's thread as a person at the keyboard would, and answers with one line that begins with
 * {@code @}.
 */
public final class WindowDriver {
  private static final long PATIENCE_NANOS = 60_000_000_000L;
  private static final long LOOK_AGAIN_NANOS = 20_000_000L;

  /** Kept from the start: the suite turns standard output over to its commands. */
  private static final PrintStream ANSWERS = System.out;

  private WindowDriver() {}

  /** Starts the suite with these arguments and listens for requests. */
  public static void main(String... args) throws Exception {
    Thread listener = new Thread(WindowDriver::listen, "window-driver");
    listener.setDaemon(true);
    listener.start();
    Class.forName("styloid.launcher.Main")
        .getMethod("main", String[].class)
        .invoke(null, (Object) args);
  }

  private static void listen() {
    try (BufferedReader in =
        new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8))) {
      for (String line = in.readLine(); line != null; line = in.readLine()) {
        answer(doIt(line));
      }
    } catch (IOException e) {
      answer("broken " + e);
    }
  }

  private static void answer(String text) {
    ANSWERS.println("@" + text.replace('\n', ' '));
    ANSWERS.flush();
  }

  private static String doIt(String line) {
    String word = line.split(" ", 2)[0];
    String rest = line.length() > word.length() ? line.substring(word.length() + 1) : "";
    try {
      return switch (word) {
        case "see" -> String.valueOf(until(() -> shows(rest)));
        case "gone" -> String.valueOf(until(() -> !shows(rest)));
        case "key" -> onWindow(() -> key(rest));
        case "type" -> onWindow(() -> type(rest));
        case "focus" -> onWindow(WindowDriver::focus);
        case "nameless" -> onWindow(WindowDriver::nameless);
        case "size" -> onWindow(() -> size(rest));
        case "picture" -> onWindow(() -> picture(rest));
        default -> "unknown " + word;
      };
    } catch (ExecutionException | InterruptedException e) {
      return "failed " + e;
    }
  }

  private static String onWindow(Callable<String> work)
      throws ExecutionException, InterruptedException {
    FutureTask<String> task = new FutureTask<>(work);
    Platform.runLater(task);
    return task.get();
  }

  private static boolean until(Callable<Boolean> condition)
      throws ExecutionException, InterruptedException {
    long end = System.nanoTime() + PATIENCE_NANOS;
    while (System.nanoTime() < end) {
      try {
        FutureTask<Boolean> look = new FutureTask<>(condition);
        Platform.runLater(look);
        if (look.get()) {
          return true;
        }
      } catch (IllegalStateException e) {
        // the toolkit is not up yet
        LockSupport.parkNanos(LOOK_AGAIN_NANOS);
      }
      LockSupport.parkNanos(LOOK_AGAIN_NANOS);
    }
    return false;
  }

  private static Scene scene() {
    for (Window window : Window.getWindows()) {
      if (window instanceof Stage && window.isShowing()) {
        return window.getScene();
      }
    }
    throw new IllegalStateException("no window");
  }

  private static boolean shows(String text) {
    return Window.getWindows().stream()
        .anyMatch(
            w -> w.isShowing() && w.getScene() != null && shows(w.getScene().getRoot(), text));
  }

  private static boolean shows(Node node, String text) {
    if (!node.isVisible()) {
      return false;
    }
    boolean here =
        node instanceof Labeled l && l.getText() != null && l.getText().contains(text)
            || node instanceof Text t && t.getText().contains(text);
    if (here) {
      return true;
    }
    return node instanceof Parent parent
        && parent.getChildrenUnmodifiable().stream().anyMatch(child -> shows(child, text));
  }

  /** A key by its code, with {@code ctrl+} or {@code shift+} before it. */
  private static String key(String name) {
    boolean ctrl = name.contains("ctrl+");
    boolean shift = name.contains("shift+");
    KeyCode code = KeyCode.valueOf(name.substring(name.lastIndexOf('+') + 1));
    press(code, "", ctrl, shift);
    return "ok";
  }

  private static String type(String text) {
    for (char c : text.toCharArray()) {
      press(code(c), String.valueOf(c), false, false);
    }
    return "ok";
  }

  private static KeyCode code(char c) {
    KeyCode code = KeyCode.getKeyCode(String.valueOf(Character.toUpperCase(c)));
    return code == null ? KeyCode.UNDEFINED : code;
  }

  private static void press(KeyCode code, String text, boolean ctrl, boolean shift) {
    Node target = scene().getFocusOwner();
    if (target == null) {
      target = scene().getRoot();
    }
    Event.fireEvent(target, event(KeyEvent.KEY_PRESSED, "", text, code, ctrl, shift));
    if (!text.isEmpty()) {
      Event.fireEvent(target, event(KeyEvent.KEY_TYPED, text, "", KeyCode.UNDEFINED, ctrl, shift));
    }
    Event.fireEvent(target, event(KeyEvent.KEY_RELEASED, "", text, code, ctrl, shift));
  }

  private static KeyEvent event(
      EventType<KeyEvent> type,
      String character,
      String text,
      KeyCode code,
      boolean ctrl,
      boolean shift) {
    return new KeyEvent(type, character, text, code, shift, ctrl, false, false);
  }

  private static String focus() {
    Node owner = scene().getFocusOwner();
    return owner == null ? "nobody" : owner.getTypeSelector() + " " + name(owner);
  }

  private static String name(Node node) {
    String name = node.getAccessibleText();
    if (name == null || name.isBlank()) {
      name = node instanceof Labeled labeled ? labeled.getText() : "";
    }
    if ((name == null || name.isBlank()) && node instanceof TextInputControl input) {
      name = input.getPromptText();
    }
    return name == null ? "" : name;
  }

  /** Nodes that take the focus but could not be told apart by someone who cannot see them. */
  private static String nameless() {
    ArrayList<String> found = new ArrayList<>();
    nameless(scene().getRoot(), found);
    return found.isEmpty() ? "none" : String.join("; ", found);
  }

  private static void nameless(Node node, List<String> found) {
    if (!node.isVisible()) {
      return;
    }
    if (node.isFocusTraversable() && name(node).isBlank()) {
      found.add(node.getTypeSelector() + node.getStyleClass());
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> nameless(child, found));
    }
  }

  private static String size(String widthByHeight) {
    String[] sides = widthByHeight.split("x");
    Stage stage = (Stage) scene().getWindow();
    stage.setWidth(Double.parseDouble(sides[0]));
    stage.setHeight(Double.parseDouble(sides[1]));
    return "ok";
  }

  private static String picture(String file) throws IOException {
    WritableImage image = scene().snapshot(null);
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        copy.setRGB(x, y, image.getPixelReader().getArgb(x, y));
      }
    }
    ImageIO.write(copy, "png", new File(file));
    return "ok";
  }
}
