package styloid.shell.look;

import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;

/** Scrolls a pane so that whatever has the focus in it is in sight. */
public final class Follow {
  private static final double MARGIN = 24;

  private final ScrollPane pane;

  /** After panes within have scrolled, which they too put off once. */
  private final ChangeListener<Node> follow = (o, was, is) -> revealSoon();

  /** What comes or goes above the focus moves it. */
  private final ChangeListener<Bounds> moved = (o, was, is) -> revealSoon();

  private Follow(ScrollPane pane) {
    this.pane = pane;
  }

  /** From now on the pane follows the focus. */
  public static void focus(ScrollPane pane) {
    Follow follow = new Follow(pane);
    pane.sceneProperty().addListener((o, was, is) -> follow.watch(was, is));
    pane.viewportBoundsProperty().addListener(follow.moved);
    pane.contentProperty().addListener((o, was, is) -> follow.size(was, is));
    follow.size(null, pane.getContent());
  }

  private void size(Node was, Node is) {
    if (was != null) {
      was.layoutBoundsProperty().removeListener(moved);
    }
    if (is != null) {
      is.layoutBoundsProperty().addListener(moved);
    }
  }

  private void revealSoon() {
    Platform.runLater(() -> Platform.runLater(this::reveal));
  }

  private void watch(Scene was, Scene is) {
    if (was != null) {
      was.focusOwnerProperty().removeListener(follow);
    }
    if (is != null) {
      is.focusOwnerProperty().addListener(follow);
    }
  }

  private void reveal() {
    Node owner = pane.getScene() == null ? null : pane.getScene().getFocusOwner();
    Node content = pane.getContent();
    if (owner == null || content == null || !inside(owner, content)) {
      return;
    }
    Bounds at = content.sceneToLocal(owner.localToScene(owner.getLayoutBounds()));
    Bounds view = pane.getViewportBounds();
    Bounds all = content.getLayoutBounds();
    double spareX = all.getWidth() - view.getWidth();
    double spareY = all.getHeight() - view.getHeight();
    pane.setHvalue(value(pane.getHvalue(), spareX, view.getWidth(), at.getMinX(), at.getMaxX()));
    pane.setVvalue(value(pane.getVvalue(), spareY, view.getHeight(), at.getMinY(), at.getMaxY()));
  }

  private static boolean inside(Node node, Node content) {
    Node up = node;
    while (up != null && up != content) {
      up = up.getParent();
    }
    return up != null;
  }

  /** Where to scroll so that a stretch shows; its beginning where it is too long. */
  static double value(double now, double spare, double view, double from, double to) {
    if (spare <= 0) {
      return 0;
    }
    double wanted = now * spare;
    if (to + MARGIN > wanted + view) {
      wanted = to + MARGIN - view;
    }
    if (from - MARGIN < wanted) {
      wanted = from - MARGIN;
    }
    return Math.max(0, Math.min(1, wanted / spare));
  }
}
