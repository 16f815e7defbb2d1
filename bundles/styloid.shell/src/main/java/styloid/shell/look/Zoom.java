package styloid.shell.look;

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

  private final Scaled scaled;

  public Zoom(Region content) {
    scaled = new Scaled(content);
    getStyleClass().add("zoom");
    setContent(scaled);
    setFitToWidth(true);
    setFitToHeight(true);
    setFocusTraversable(false);
    Follow.focus(this);
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
