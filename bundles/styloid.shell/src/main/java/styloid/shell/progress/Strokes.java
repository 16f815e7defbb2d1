package styloid.shell.progress;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import styloid.model.Side;

/**
 * The two limbs told apart without colour: right a full line with round filled marks, left a broken
 * line with open square ones.
 */
final class Strokes {
  private Strokes() {}

  /** Lines and marks of a side; a gap stays a gap. */
  static List<Node> of(Course course, Side side, Plot plot, double mark) {
    ArrayList<Node> lines = new ArrayList<>();
    ArrayList<Node> marks = new ArrayList<>();
    for (List<Course.Point> run : course.runs(side)) {
      Polyline line = line(side);
      for (Course.Point point : run) {
        double x = plot.x(point.visit().date());
        double y = plot.y(point.value());
        line.getPoints().addAll(x, y);
        marks.add(mark(side, x, y, mark));
      }
      lines.add(line);
    }
    lines.addAll(marks);
    return lines;
  }

  static Polyline line(Side side, double... points) {
    Polyline line = new Polyline(points);
    line.getStyleClass().addAll("course-line", side == Side.LEFT ? "course-left" : "course-right");
    if (side == Side.LEFT) {
      line.getStrokeDashArray().setAll(6.0, 4.0);
    }
    return line;
  }

  static Node mark(Side side, double x, double y, double size) {
    if (side == Side.LEFT) {
      // Wider than the round mark, so that both are seen where the limbs are alike.
      double half = size * 1.3;
      Rectangle square = new Rectangle(x - half, y - half, 2 * half, 2 * half);
      square.getStyleClass().addAll("course-mark", "course-mark-left");
      return square;
    }
    Circle circle = new Circle(x, y, size * 0.9);
    circle.getStyleClass().addAll("course-mark", "course-mark-right");
    return circle;
  }
}
