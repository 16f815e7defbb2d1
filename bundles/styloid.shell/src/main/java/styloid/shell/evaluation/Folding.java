package styloid.shell.evaluation;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import styloid.shell.frame.Make;
import styloid.shell.look.Follow;

/**
 * Where the parts of the work sheet stand. Where there is little width, as in a large text size,
 * the list of tests folds away until it is asked for, and what stands beside entry goes below it.
 */
final class Folding {
  /** Least widths, in logical pixels, for all three side by side, and for two. */
  static final double ALL = 1180;

  static final double TWO = 900;
  private static final double LEAST_ENTRY = 250;
  private static final double LEAST_BELOW = 150;
  private static final double LEAST_SIGHT = 190;

  private final BorderPane view;
  private final Navigation left;
  private final Region right;
  private final VBox below = new VBox();
  private final ScrollPane sight = new ScrollPane(below);
  private final Button button;
  private Region middle = new Region();
  private boolean unfolded;
  private int parts;

  Folding(BorderPane view, Navigation left, Region right, String words) {
    this.view = view;
    this.left = left;
    this.right = right;
    sight.setFitToWidth(true);
    sight.setFitToHeight(true);
    sight.setFocusTraversable(false);
    sight.setMinHeight(LEAST_SIGHT);
    Follow.focus(sight);
    button =
        Make.button(
            words,
            () -> {
              unfold();
              left.focusHere();
            });
    left.addEventHandler(MouseEvent.MOUSE_CLICKED, e -> fold());
  }

  /** Brings the list of tests into sight, where it is folded away. */
  Button button() {
    return button;
  }

  /** Arranges the parts around the form, now and whenever the width changes. */
  void around(Region form) {
    middle = form;
    VBox.setVgrow(middle, Priority.ALWAYS);
    view.widthProperty().addListener((o, was, is) -> arrange());
    arrange(3);
  }

  private void arrange() {
    double width = view.getWidth();
    arrange(width >= ALL ? 3 : width >= TWO ? 2 : 1);
  }

  private void arrange(int now) {
    if (now == parts) {
      return;
    }
    parts = now;
    unfolded = false;
    Node focus = view.getScene() == null ? null : view.getScene().getFocusOwner();
    view.setCenter(null);
    view.setRight(null);
    below.getChildren().clear();
    if (now == 1) {
      middle.setMinHeight(LEAST_ENTRY);
      right.setMinHeight(LEAST_BELOW);
      right.setMaxHeight(LEAST_BELOW * 1.6);
      below.getChildren().setAll(middle, right);
      view.setCenter(sight);
    } else {
      middle.setMinHeight(Region.USE_COMPUTED_SIZE);
      right.setMinHeight(0);
      right.setMaxHeight(Double.MAX_VALUE);
      view.setCenter(middle);
      view.setRight(right);
    }
    view.setLeft(now == 3 ? left : null);
    Make.shown(button, now < 3);
    if (view.getScene() != null) {
      // What a pane scrolls comes into the scene with its skin; focus cannot wait for that.
      view.applyCss();
    }
    if (focus != null && focus.getScene() != null) {
      focus.requestFocus();
    }
  }

  /** Brings the list of tests into sight. */
  void unfold() {
    if (parts < 3 && !unfolded) {
      unfolded = true;
      view.setLeft(left);
    }
  }

  /** Lets it go again, where there is little room. */
  void fold() {
    if (parts < 3 && unfolded) {
      unfolded = false;
      view.setLeft(null);
    }
  }
}
