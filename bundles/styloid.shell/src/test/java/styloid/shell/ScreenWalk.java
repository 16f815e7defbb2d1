package styloid.shell;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Labeled;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import styloid.form.Palette;
import styloid.shell.look.Display;
import styloid.store.StoreException;

/**
 * One walk through all screens in one palette, and what was found at each: the walk is long, so
 * tests share it. Writes a picture of each state to {@code target/screens}.
 */
final class ScreenWalk {
  private static final double FACTOR = 2;
  private static final double TEXT = 4.5;
  private static final double VALUE = 7;
  private static final int LEAST_CHANGE = 60;
  private static final Map<Palette, ScreenWalk> WALKS = new EnumMap<>(Palette.class);

  final Set<String> poorContrast = new LinkedHashSet<>();
  final Set<String> wrongName = new LinkedHashSet<>();
  final Set<String> pastTab = new LinkedHashSet<>();
  final Set<String> focusUnseen = new LinkedHashSet<>();
  final Set<String> sides = new TreeSet<>();
  final Set<String> kinds = new HashSet<>();
  final Set<String> states = new LinkedHashSet<>();
  int texts;
  int values;
  int nodes;
  private final Palette palette;
  private EveryScreen screens;

  private ScreenWalk(Palette palette) {
    this.palette = palette;
  }

  /** The walk in this palette, made once. */
  static synchronized ScreenWalk in(Palette palette) throws StoreException {
    ScreenWalk walk = WALKS.get(palette);
    if (walk == null) {
      walk = new ScreenWalk(palette);
      walk.screens = new EveryScreen(Display.USUAL.with(palette), 1366, 768, walk::at);
      try (EveryScreen walked = walk.screens) {
        walked.visit();
      }
      WALKS.put(palette, walk);
    }
    return walk;
  }

  private void at(String state) {
    states.add(state);
    contrast(state);
    names(state);
    seeFocus(state);
    tabThrough(state);
  }

  private void contrast(String state) {
    WritableImage image = Window.image(screens.stage, FACTOR);
    String folder = palette.name().toLowerCase(Locale.ROOT);
    Window.write(image, Path.of("target/screens", folder, state + ".png"));
    Contrast contrast = new Contrast(image, FACTOR);
    for (Contrast.Measured text : Window.on(() -> contrast.measure(screens.stage.getScene()))) {
      texts++;
      values += text.value() ? 1 : 0;
      if (text.ratio() < (text.value() ? VALUE : TEXT)) {
        poorContrast.add(
            String.format(Locale.ROOT, "%s: %s %.2f", state, text.text(), text.ratio()));
      }
    }
  }

  private void names(String state) {
    for (Node node : focusable()) {
      nodes++;
      String name = name(node);
      if (name.isBlank()) {
        wrongName.add(state + ": no name: " + node.getTypeSelector() + node.getStyleClass());
      }
      sideBeside(node)
          .ifPresent(
              side -> {
                sides.add(side);
                if (!name.startsWith(side)) {
                  wrongName.add(state + ": " + name + " does not say " + side);
                }
              });
    }
  }

  /** Each kind of node once: the pixels on and around it change with the focus. */
  private void seeFocus(String state) {
    for (Node node : focusable()) {
      String kind = node.getTypeSelector() + new TreeSet<>(node.getStyleClass());
      if (inWindow(node) && kinds.add(kind)) {
        int changed = changed(node);
        if (changed < LEAST_CHANGE) {
          focusUnseen.add(state + ": " + kind + " " + name(node) + " changes " + changed);
        }
      }
    }
  }

  /** On cards and the caseload; the work sheet has a walk of its own. */
  private void tabThrough(String state) {
    boolean sheet = Window.on(() -> screens.stage.getScene().lookup(".evaluation") != null);
    boolean card = Window.on(() -> screens.stage.getScene().lookup(".cover-card") != null);
    if (sheet && !card) {
      return;
    }
    List<Node> all = new ArrayList<>(focusable());
    int turns = all.size() + 2;
    for (int turn = 0; turn < turns && !all.isEmpty(); turn++) {
      Node owner = Window.on(() -> screens.stage.getScene().getFocusOwner());
      all.remove(owner);
      tab(owner);
    }
    // Of answers of which exactly one holds, arrows go from one to the next.
    all.removeIf(
        node ->
            node.getStyleClass().contains("toggle-button")
                || node.getStyleClass().contains("radio-button"));
    all.forEach(node -> pastTab.add(state + ": Tab does not come by " + name(node)));
  }

  private List<Node> focusable() {
    return Window.on(
        () -> {
          ArrayList<Node> all = new ArrayList<>();
          collect(screens.stage.getScene().getRoot(), all);
          return all;
        });
  }

  private static void collect(Node node, List<Node> into) {
    if (!node.isVisible() || node.isDisabled()) {
      return;
    }
    if (node.isFocusTraversable()) {
      into.add(node);
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, into));
    }
  }

  private static String name(Node node) {
    String name = node.getAccessibleText();
    if ((name == null || name.isBlank()) && node instanceof Labeled labeled) {
      name = labeled.getText();
    }
    return name == null ? "" : name;
  }

  /** The side a place of entry belongs to, as its words beside it say. */
  private static Optional<String> sideBeside(Node node) {
    for (Node up = node; up != null; up = up.getParent()) {
      if (up.getStyleClass().contains("side-cell") || up.getStyleClass().contains("list-cell")) {
        return up.lookupAll(".side-word").stream()
            .map(word -> ((Labeled) word).getText())
            .filter(text -> !text.isEmpty())
            .findFirst();
      }
    }
    return Optional.empty();
  }

  private void tab(Node owner) {
    Window.run(
        () ->
            Event.fireEvent(
                owner == null ? screens.stage.getScene().getRoot() : owner,
                new KeyEvent(
                    KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, false, false, false, false)));
    Window.settle();
  }

  private boolean inWindow(Node node) {
    return Window.on(
        () -> {
          Bounds at = node.localToScene(node.getLayoutBounds());
          return at.getWidth() > 0
              && at.getMinY() > 130
              && at.getMaxY() < screens.stage.getScene().getHeight() - 90;
        });
  }

  private int changed(Node node) {
    Node before = Window.on(() -> screens.stage.getScene().getFocusOwner());
    WritableImage with = focused(node, node);
    Node other = focusable().stream().filter(n -> n != node).findFirst().orElseThrow();
    WritableImage without = focused(other, node);
    Window.run(
        () -> {
          if (before != null) {
            before.requestFocus();
          }
        });
    int changed = 0;
    for (int y = 0; y < with.getHeight(); y++) {
      for (int x = 0; x < with.getWidth(); x++) {
        int one = with.getPixelReader().getArgb(x, y);
        if (one != without.getPixelReader().getArgb(x, y)) {
          changed++;
        }
      }
    }
    return changed;
  }

  private WritableImage focused(Node focus, Node around) {
    Window.run(focus::requestFocus);
    Window.settle();
    return Window.on(
        () -> {
          Bounds at = around.localToScene(around.getLayoutBounds());
          SnapshotParameters parameters = new SnapshotParameters();
          parameters.setViewport(
              new Rectangle2D(
                  at.getMinX() - 5, at.getMinY() - 5, at.getWidth() + 10, at.getHeight() + 10));
          return screens.stage.getScene().getRoot().snapshot(parameters, null);
        });
  }
}
