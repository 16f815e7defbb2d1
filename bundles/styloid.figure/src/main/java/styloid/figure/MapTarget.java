package styloid.figure;

import java.util.ArrayList;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Arc;
import javafx.scene.shape.ArcType;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Rectangle;
import styloid.model.Side;

/** One joint of the map: a mark that tells its state by shape, with the whole circle to be hit. */
final class MapTarget extends Region {
  private static final double MIDDLE = MapShape.TARGET / 2;
  private static final double RADIUS = 7;

  private final double outward;
  private final Circle reach = new Circle(MIDDLE, MIDDLE, MIDDLE);
  private final Circle halo = new Circle(MIDDLE, MIDDLE, MIDDLE - 1.2);
  private Runnable chosen = () -> {};
  private MapMark shown;

  MapTarget(Side side) {
    outward = side == Side.RIGHT ? -1 : 1;
    getStyleClass().add("map-target");
    setPickOnBounds(false);
    reach.getStyleClass().add("map-reach");
    halo.getStyleClass().add("map-halo");
    halo.setMouseTransparent(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    addEventHandler(
        MouseEvent.MOUSE_CLICKED,
        event -> {
          event.consume();
          chosen.run();
        });
    addEventHandler(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ENTER || event.getCode() == KeyCode.SPACE) {
            event.consume();
            chosen.run();
          }
        });
    show(new MapMark(MapMark.Progress.NOTHING, false, false), "");
  }

  void onChosen(Runnable action) {
    chosen = action;
  }

  @Override
  public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
    if (action == AccessibleAction.FIRE) {
      chosen.run();
    } else {
      super.executeAccessibleAction(action, parameters);
    }
  }

  void point(boolean here) {
    if (here != getStyleClass().contains("map-here")) {
      if (here) {
        getStyleClass().add("map-here");
      } else {
        getStyleClass().remove("map-here");
      }
    }
  }

  void show(MapMark mark, String words) {
    if (!words.equals(getAccessibleText())) {
      setAccessibleText(words);
    }
    if (mark.equals(shown)) {
      return;
    }
    shown = mark;
    ArrayList<Node> parts = new ArrayList<>();
    parts.add(reach);
    parts.add(halo);
    progress(mark.progress(), parts);
    if (mark.limited()) {
      parts.add(limit());
    }
    if (mark.notable()) {
      parts.add(diamond());
    }
    getChildren().setAll(parts);
  }

  private static void progress(MapMark.Progress progress, ArrayList<Node> parts) {
    boolean nothing = progress == MapMark.Progress.NOTHING;
    boolean done = progress == MapMark.Progress.DONE;
    Circle ring = new Circle(MIDDLE, MIDDLE, nothing ? 2.2 : RADIUS);
    parts.add(styled(ring, nothing || done ? "map-full" : "map-ring"));
    if (progress == MapMark.Progress.IN_PROGRESS) {
      Arc half = new Arc(MIDDLE, MIDDLE, RADIUS, RADIUS, 90, 180);
      half.setType(ArcType.CHORD);
      parts.add(styled(half, "map-fill"));
    } else if (done) {
      parts.add(
          styled(
              new Polyline(MIDDLE - 3.5, MIDDLE, MIDDLE - 1, MIDDLE + 3, MIDDLE + 4, MIDDLE - 3),
              "map-tick"));
    } else if (progress == MapMark.Progress.WITHHELD) {
      parts.add(
          styled(new Line(MIDDLE - 4.8, MIDDLE + 4.8, MIDDLE + 4.8, MIDDLE - 4.8), "map-bar"));
    }
  }

  /** The triangle of cautions, below on the outer side. */
  private Node limit() {
    double x = MIDDLE + outward * 7.5;
    double y = MIDDLE + 7;
    return styled(new Polygon(x, y - 4.6, x - 4.8, y + 3.6, x + 4.8, y + 3.6), "map-limit");
  }

  /** A diamond above on the outer side. */
  private Node diamond() {
    Rectangle diamond = new Rectangle(MIDDLE + outward * 7.5 - 3.6, MIDDLE - 7.5 - 3.6, 7.2, 7.2);
    diamond.setRotate(45);
    return styled(diamond, "map-notable");
  }

  private static Node styled(Node node, String style) {
    node.getStyleClass().add(style);
    node.setMouseTransparent(true);
    return node;
  }
}
