package styloid.form;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Scrolls so that a part of a page shows with some room around it. */
final class Reveal {
  private static final double ABOVE = 56;
  private static final double ASIDE = 12;

  private Reveal() {}

  /** Scrolls no further than needed; nothing happens where the part is in sight. */
  static void in(ScrollPane scroll, Node node) {
    Node page = scroll.getContent();
    if (page == null || node.getScene() == null) {
      return;
    }
    // Where things stand is known only once what is new has been laid out.
    node.getScene().getRoot().applyCss();
    node.getScene().getRoot().layout();
    Bounds at = page.sceneToLocal(node.localToScene(node.getBoundsInLocal()));
    if (at == null) {
      return;
    }
    Bounds view = scroll.getViewportBounds();
    Bounds all = page.getBoundsInLocal();
    double down = all.getHeight() - view.getHeight();
    double across = all.getWidth() - view.getWidth();
    double top = scroll.getVvalue();
    scroll.setVvalue(value(top, down, view.getHeight(), at.getMinY(), at.getMaxY(), ABOVE));
    double left = scroll.getHvalue();
    scroll.setHvalue(value(left, across, view.getWidth(), at.getMinX(), at.getMaxX(), ASIDE));
  }

  private static double value(
      double now, double spare, double view, double from, double to, double margin) {
    if (spare <= 0) {
      return now;
    }
    double top = now * spare;
    if (from - margin < top) {
      return Math.max(0, from - margin) / spare;
    } else if (to + margin > top + view) {
      return Math.min(spare, to + margin - view) / spare;
    }
    return now;
  }
}
