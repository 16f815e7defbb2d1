package styloid.shell.progress;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.shell.frame.Make;
import styloid.spi.Group;
import styloid.spi.Texts;

/** The measures of a step as small lines over the visits, both limbs beside each other. */
public final class Sparks {
  private static final double WIDTH = 120;
  private static final double HEIGHT = 28;
  private static final double MARK = 2.5;
  private static final int MOST = 2;

  private Sparks() {}

  /**
   * The lines of a group's measures that have two values or more; that of the place of entry first.
   *
   * @param at the place of entry, null for none
   */
  public static Optional<Node> of(
      PatientContext context, TestId test, Group group, ItemKey at, Texts texts) {
    Courses courses = new Courses(context);
    VBox box = new VBox(8);
    group.items().stream()
        .sorted((a, b) -> Boolean.compare(isAt(b, at), isAt(a, at)))
        .flatMap(item -> courses.of(test, item).stream())
        .filter(course -> course.measured() > 1)
        .filter(c -> at == null || at.digit() == Digit.NONE || c.digit() == at.digit())
        .limit(MOST)
        .forEach(course -> box.getChildren().add(row(course, texts)));
    return box.getChildren().isEmpty() ? Optional.empty() : Optional.of(box);
  }

  private static boolean isAt(Item item, ItemKey at) {
    return at != null && item.id().equals(at.item());
  }

  private static Node row(Course course, Texts texts) {
    CourseWords words = new CourseWords(course, texts);
    VBox row = new VBox(2, Make.text(words.name(), "result-name"));
    HBox sides = new HBox(12);
    for (Side side : course.sides()) {
      Label span = Make.text(words.span(side), "spark-span");
      VBox one = new VBox(2, spark(course, side), span);
      if (side != Side.UNSIDED) {
        one.getChildren().add(0, Make.word(words.side(side), "side-word"));
      }
      one.setPrefWidth(WIDTH);
      sides.getChildren().add(one);
    }
    row.getChildren().add(sides);
    row.setAccessibleText(words.all());
    return row;
  }

  /** Both limbs share one scale, so that their lines compare. */
  private static Node spark(Course course, Side side) {
    Pane pane = new Pane();
    pane.getStyleClass().add("spark");
    pane.setMinSize(WIDTH, HEIGHT);
    pane.setMaxSize(WIDTH, HEIGHT);
    var numbers =
        course.sides().stream()
            .flatMap(s -> course.points(s).stream())
            .mapToDouble(Course.Point::value);
    Plot plot = Plot.of(course, numbers, 4, 3, WIDTH - 8, HEIGHT - 6);
    for (Visit visit : course.visits()) {
      double x = plot.x(visit.date());
      Line tick = new Line(x, HEIGHT - 1, x, HEIGHT);
      tick.getStyleClass().add("chart-tick");
      pane.getChildren().add(tick);
    }
    List<Node> strokes = Strokes.of(course, side, plot, MARK);
    pane.getChildren().addAll(strokes);
    return pane;
  }
}
