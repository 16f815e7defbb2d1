package styloid.shell;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.text.Text;

/**
 * The contrast of every text on the screen, from the pixels as drawn. Formula: relative luminance
 * and contrast ratio of the Web Content Accessibility Guidelines (WCAG) 2.2, W3C Recommendation of
 * 5 October 2023, definitions "relative luminance" and "contrast ratio".
 */
final class Contrast {
  /**
   * One text and what was measured.
   *
   * @param value whether it says what was recorded or calculated
   */
  record Measured(String text, boolean value, double ratio) {}

  private final WritableImage image;
  private final double factor;

  Contrast(WritableImage image, double factor) {
    this.image = image;
    this.factor = factor;
  }

  /** Of a colour channel, 0 to 255. */
  private static double linear(int channel) {
    double c = channel / 255.0;
    return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
  }

  /** Of a colour without transparency, 0 black to 1 white. */
  static double luminance(int argb) {
    return 0.2126 * linear(argb >> 16 & 0xff)
        + 0.7152 * linear(argb >> 8 & 0xff)
        + 0.0722 * linear(argb & 0xff);
  }

  /** From 1 to 21. */
  static double ratio(int one, int other) {
    double a = luminance(one);
    double b = luminance(other);
    return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
  }

  /** All texts in sight under a node; what a card covers is not looked at. */
  List<Measured> measure(Scene scene) {
    ArrayList<Measured> all = new ArrayList<>();
    Bounds window = new BoundingBox(0, 0, scene.getWidth(), scene.getHeight());
    walk(scene.getRoot(), window, all);
    return all;
  }

  private void walk(Node node, Bounds sight, List<Measured> into) {
    if (!node.isVisible() || covered(node)) {
      return;
    }
    Bounds inSight = node instanceof ScrollPane pane ? cut(sight, pane.lookup(".viewport")) : sight;
    if (node instanceof TextInputControl input) {
      inSight = cut(sight, input);
    }
    if (node instanceof Text text && !text.getText().isBlank()) {
      text(text, inSight, into);
    }
    if (node instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        walk(child, inSight, into);
      }
    }
  }

  private static boolean covered(Node node) {
    return node.getStyleClass().contains("content") && node.isDisabled();
  }

  private static Bounds cut(Bounds sight, Node by) {
    if (by == null) {
      return sight;
    }
    Bounds b = by.localToScene(by.getLayoutBounds());
    double x = Math.max(sight.getMinX(), b.getMinX());
    double y = Math.max(sight.getMinY(), b.getMinY());
    double right = Math.min(sight.getMaxX(), b.getMaxX());
    double below = Math.min(sight.getMaxY(), b.getMaxY());
    return new BoundingBox(x, y, Math.max(0, right - x), Math.max(0, below - y));
  }

  private void text(Text text, Bounds sight, List<Measured> into) {
    Bounds at = cut(sight, text);
    Bounds whole = text.localToScene(text.getLayoutBounds());
    // Of a line that is half scrolled away there may be no full stroke in sight.
    if (at.getHeight() < whole.getHeight() - 0.5 || at.getWidth() < 4) {
      return;
    }
    into.add(new Measured(text.getText(), isValue(text), ratio(at)));
  }

  /** The most frequent colour is what the text stands on; the one farthest from it is its ink. */
  private double ratio(Bounds at) {
    HashMap<Integer, Integer> count = new HashMap<>();
    int left = (int) Math.ceil(at.getMinX() * factor);
    int top = (int) Math.ceil(at.getMinY() * factor);
    int right = (int) Math.min(image.getWidth(), Math.floor(at.getMaxX() * factor));
    int below = (int) Math.min(image.getHeight(), Math.floor(at.getMaxY() * factor));
    int[] row = new int[right - left];
    for (int y = top; y < below; y++) {
      image
          .getPixelReader()
          .getPixels(left, y, row.length, 1, PixelFormat.getIntArgbInstance(), row, 0, row.length);
      for (int pixel : row) {
        count.merge(pixel, 1, Integer::sum);
      }
    }
    int ground = count.entrySet().stream().max(Map.Entry.comparingByValue()).orElseThrow().getKey();
    return count.keySet().stream().mapToDouble(ink -> ratio(ink, ground)).max().orElse(1);
  }

  private static boolean isValue(Node text) {
    for (Node up = text; up != null; up = up.getParent()) {
      List<String> styles = up.getStyleClass();
      if (styles.contains("number")
          || styles.contains("words")
          || styles.contains("chosen-word")
          || styles.contains("chosen")
          || styles.contains("result-value")
          || styles.contains("entry-stands")
          || styles.contains("hold-count")
          || styles.contains("finding")) {
        return true;
      }
    }
    return false;
  }
}
