package styloid.shell.look;

import javafx.application.Platform;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.transform.Scale;

/**
 * Shows everything larger. What then has no room is scrolled to, and follows the focus, so that
 * nothing is out of reach of the keys.
 */
public final class Zoom extends ScrollPane {
  private static final double LEAST_WIDTH = 440;
  private static final double LEAST_HEIGHT = 250;
  private static final double MARGIN = 24;

  private final Scaled scaled;
  private final ChangeListener<Node> follow = (o, was, is) -> Platform.runLater(this::reveal);

  public Zoom(Region content) {
    scaled = new Scaled(content);
    getStyleClass().add("zoom");
    setContent(scaled);
    setFitToWidth(true);
    setFitToHeight(true);
    setFocusTraversable(false);
    sceneProperty().addListener((o, was, is) -> watch(was, is));
  }

  private void watch(Scene was, Scene is) {
    if (was != null) {
      was.focusOwnerProperty().removeListener(follow);
    }
    if (is != null) {
      is.focusOwnerProperty().addListener(follow);
    }
  }

  /** A click beside everything must not take the focus from the place of entry. */
  @Override
  public void requestFocus() {
    // never the focus itself
  }

  /** Sets the size in percent. */
  public void scale(int percent) {
    scaled.to(percent / 100.0);
  }

  private void reveal() {
    Node owner = getScene() == null ? null : getScene().getFocusOwner();
    if (owner == null || owner == this || !inside(owner)) {
      return;
    }
    Bounds at = scaled.sceneToLocal(owner.localToScene(owner.getLayoutBounds()));
    Bounds view = getViewportBounds();
    double spareX = scaled.getWidth() - view.getWidth();
    double spareY = scaled.getHeight() - view.getHeight();
    setHvalue(value(getHvalue(), spareX, view.getWidth(), at.getMinX(), at.getMaxX()));
    setVvalue(value(getVvalue(), spareY, view.getHeight(), at.getMinY(), at.getMaxY()));
  }

  private boolean inside(Node node) {
    Node up = node;
    while (up != null && up != scaled) {
      up = up.getParent();
    }
    return up != null;
  }

  /** Where to scroll so that a stretch shows; its beginning where it is too long. */
  static double value(double now, double spare, double view, double from, double to) {
    if (spare <= 0) {
      return 0;
    }
    double top = now * spare;
    double wanted = top;
    if (to + MARGIN > top + view) {
      wanted = to + MARGIN - view;
    }
    if (from - MARGIN < wanted) {
      wanted = from - MARGIN;
    }
    return Math.max(0, Math.min(1, wanted / spare));
  }

  /** The content at its size: laid out smaller, then drawn larger. */
  private static final class Scaled extends Region {
    private final Region content;
    private final Scale scale = new Scale(1, 1);

    Scaled(Region content) {
      this.content = content;
      content.getTransforms().add(scale);
      getChildren().add(content);
    }

    void to(double factor) {
      scale.setX(factor);
      scale.setY(factor);
      requestLayout();
    }

    @Override
    protected double computeMinWidth(double height) {
      return LEAST_WIDTH * scale.getX();
    }

    @Override
    protected double computeMinHeight(double width) {
      return Math.max(LEAST_HEIGHT, content.minHeight(-1)) * scale.getY();
    }

    @Override
    protected void layoutChildren() {
      content.resizeRelocate(0, 0, getWidth() / scale.getX(), getHeight() / scale.getY());
    }
  }
}
