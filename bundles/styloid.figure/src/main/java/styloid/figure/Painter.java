package styloid.figure;

import java.util.List;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/** Puts inks on a canvas. */
final class Painter {
  private final GraphicsContext graphics;
  private final Palette palette;
  private final double scale;
  private final double left;
  private final double top;

  /**
   * @param scale pixels a metre
   * @param left pixel of x = 0
   * @param top pixel of y = 0
   */
  Painter(GraphicsContext graphics, Palette palette, double scale, double left, double top) {
    this.graphics = graphics;
    this.palette = palette;
    this.scale = scale;
    this.left = left;
    this.top = top;
  }

  double x(Spot spot) {
    return left + spot.x() * scale;
  }

  double y(Spot spot) {
    return top - spot.y() * scale;
  }

  void paint(List<Ink> inks) {
    graphics.setLineCap(StrokeLineCap.ROUND);
    graphics.setLineJoin(StrokeLineJoin.ROUND);
    inks.forEach(this::paint);
  }

  private void paint(Ink ink) {
    int count = ink.points().size();
    double[] xs = new double[count];
    double[] ys = new double[count];
    for (int i = 0; i < count; i++) {
      xs[i] = x(ink.points().get(i));
      ys[i] = y(ink.points().get(i));
    }
    if (ink.filled()) {
      graphics.setFill(palette.of(ink.role()));
      graphics.fillPolygon(xs, ys, count);
      return;
    }
    double width = Math.max(0.7, ink.width() * scale);
    graphics.setStroke(palette.of(ink.role()));
    graphics.setLineWidth(width);
    switch (ink.role()) {
      case HIDDEN_MARK -> graphics.setLineDashes(width * 0.9, width * 1.9);
      case ZERO -> graphics.setLineDashes(0.1, width * 3);
      default -> graphics.setLineDashes();
    }
    if (ink.closed()) {
      graphics.strokePolygon(xs, ys, count);
    } else {
      graphics.strokePolyline(xs, ys, count);
    }
  }
}
