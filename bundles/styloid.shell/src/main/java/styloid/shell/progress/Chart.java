package styloid.shell.progress;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import styloid.model.Side;
import styloid.spi.Texts;

/** One measure against time, both limbs, with the error of measuring where it is known. */
final class Chart extends Pane {
  private static final double LEFT = 64;
  private static final double RIGHT = 46;
  private static final double TOP = 14;
  private static final double BOTTOM = 40;
  private static final double MARK = 5;
  private static final int TICKS = 6;

  private final Texts texts;
  private Optional<Course> shown = Optional.empty();

  Chart(Texts texts) {
    this.texts = texts;
    getStyleClass().add("chart");
    setMinSize(320, 200);
    widthProperty().addListener((o, was, is) -> draw());
    heightProperty().addListener((o, was, is) -> draw());
  }

  void show(Course course) {
    shown = Optional.of(course);
    setAccessibleText(new CourseWords(course, texts).all());
    draw();
  }

  private void draw() {
    getChildren().clear();
    double width = getWidth() - LEFT - RIGHT;
    double height = getHeight() - TOP - BOTTOM;
    if (shown.isEmpty() || width < 40 || height < 40) {
      return;
    }
    Course course = shown.get();
    Plot plot = Plot.of(course, course.numbers(), LEFT, TOP, width, height);
    for (Side side : course.sides()) {
      getChildren().addAll(band(course, side, plot));
    }
    axes(course, plot);
    for (Side side : course.sides()) {
      getChildren().addAll(Strokes.of(course, side, plot, MARK));
    }
  }

  /** Around the value a change is judged from, as far as the newest visit. */
  private static List<Node> band(Course course, Side side, Plot plot) {
    ArrayList<Node> parts = new ArrayList<>();
    Optional<Course.Point> from = course.reference(side);
    Optional<double[]> error = course.error(side);
    if (from.isEmpty() || error.isEmpty()) {
      return parts;
    }
    double value = from.get().value();
    double x = plot.x(from.get().visit().date());
    double end = plot.left() + plot.width();
    double top = plot.y(value + error.get()[0]);
    double bottom = plot.y(value - error.get()[0]);
    Rectangle area = new Rectangle(x, top, Math.max(6, end - x), bottom - top);
    area.getStyleClass().addAll("error-band", side == Side.LEFT ? "error-left" : "error-right");
    parts.add(area);
    for (double y : new double[] {top, bottom}) {
      Line edge = new Line(x, y, Math.max(x + 6, end), y);
      edge.getStyleClass().add("error-edge");
      if (side == Side.LEFT) {
        edge.getStrokeDashArray().setAll(2.0, 3.0);
      }
      parts.add(edge);
    }
    return parts;
  }

  private void axes(Course course, Plot plot) {
    CourseWords words = new CourseWords(course, texts);
    double bottom = plot.top() + plot.height();
    for (double tick : plot.ticks(TICKS)) {
      double y = plot.y(tick);
      Line line = new Line(plot.left(), y, plot.left() + plot.width(), y);
      line.getStyleClass().add("chart-grid");
      Text label = text(words.value(tick), VPos.CENTER);
      label.setX(plot.left() - 8 - label.getLayoutBounds().getWidth());
      label.setY(y);
      getChildren().addAll(line, label);
    }
    double free = Double.NEGATIVE_INFINITY;
    int row = 0;
    for (Visit visit : course.visits()) {
      double x = plot.x(visit.date());
      Line tick = new Line(x, bottom, x, bottom + 5);
      tick.getStyleClass().add("chart-tick");
      Text label = text(date(visit.date()), VPos.TOP);
      double half = label.getLayoutBounds().getWidth() / 2;
      row = x - half < free ? 1 - row : 0;
      free = x + half + 6;
      label.setX(x - half);
      label.setY(bottom + 6 + 15 * row);
      getChildren().addAll(tick, label);
    }
  }

  private String date(LocalDate date) {
    return texts.date(date);
  }

  private static Text text(String words, VPos origin) {
    Text text = new Text(words);
    text.getStyleClass().add("chart-text");
    text.setTextOrigin(origin);
    text.setStyle("-fx-font-size: 12px;");
    return text;
  }
}
