package styloid.form;

import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;

/**
 * How far something has come, as a shape that needs no colour: an empty ring, a half-filled ring, a
 * filled ring with a tick, a ring with a bar across.
 */
public final class StateMark extends StackPane {
  private static final double RADIUS = 7;
  private Completion.Stage shown;

  public StateMark() {
    getStyleClass().add("state-mark");
    setMinSize(18, 18);
    setMaxSize(18, 18);
    setMouseTransparent(true);
  }

  /** Draws a stage; the word belongs beside it. */
  public void show(Completion.Stage stage) {
    if (stage == shown) {
      return;
    }
    shown = stage;
    Circle ring = new Circle(RADIUS);
    ring.getStyleClass().add(stage == Completion.Stage.DONE ? "mark-full" : "mark-ring");
    getChildren().setAll(ring);
    if (stage == Completion.Stage.IN_PROGRESS) {
      Arc half = new Arc(0, 0, RADIUS, RADIUS, 90, 180);
      half.setType(ArcType.CHORD);
      getChildren().add(left(styled(half, "mark-fill")));
    } else if (stage == Completion.Stage.DONE) {
      getChildren().add(styled(new Polyline(-3.5, 0, -1, 3, 4, -3), "mark-tick"));
    } else if (stage == Completion.Stage.WITHHELD) {
      getChildren().add(styled(new Line(-4.5, 4.5, 4.5, -4.5), "mark-bar"));
    }
  }

  private static Node left(Node half) {
    half.setTranslateX(-RADIUS / 2);
    return half;
  }

  private static Node styled(Node node, String style) {
    node.getStyleClass().add(style);
    return node;
  }
}
