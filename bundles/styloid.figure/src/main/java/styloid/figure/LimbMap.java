package styloid.figure;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import javafx.scene.Group;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Polygon;
import javafx.scene.transform.Scale;
import styloid.model.LimbPart;
import styloid.model.Side;

/**
 * Both arms from the front with a target at every joint. It fills the width it is given and keeps
 * its proportions. With keys, arrows go from target to target and Enter chooses; without, it takes
 * clicks alone and never the focus.
 */
public final class LimbMap extends Region {
  private final Map<Side, Map<LimbPart, MapTarget>> targets = new EnumMap<>(Side.class);
  private final Group sheet = new Group();
  private final Scale scale = new Scale(1, 1);
  private final boolean keys;
  private BiConsumer<LimbPart, Side> chosen = (part, side) -> {};
  private BiConsumer<LimbPart, Side> reached = (part, side) -> {};

  /**
   * A map.
   *
   * @param keys whether it can be worked by keys
   */
  public LimbMap(boolean keys) {
    this.keys = keys;
    getStyleClass().add("limb-map");
    getStylesheets().add(LimbMap.class.getResource("limb-map.css").toExternalForm());
    sheet.setManaged(false);
    sheet.getTransforms().add(scale);
    getChildren().add(sheet);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      outline(MapShape.arm(side));
      outline(MapShape.hand(side));
    }
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      EnumMap<LimbPart, MapTarget> own = new EnumMap<>(LimbPart.class);
      for (LimbPart part : LimbPart.values()) {
        own.put(part, target(part, side));
      }
      targets.put(side, own);
    }
  }

  private MapTarget target(LimbPart part, Side side) {
    MapTarget target = new MapTarget(side);
    Spot centre = MapShape.centre(part, side);
    target.resizeRelocate(
        centre.x() - MapShape.TARGET / 2,
        centre.y() - MapShape.TARGET / 2,
        MapShape.TARGET,
        MapShape.TARGET);
    target.setFocusTraversable(false);
    target.onChosen(() -> chosen.accept(part, side));
    if (keys) {
      target
          .focusedProperty()
          .addListener(
              (o, was, is) -> {
                if (is) {
                  reached.accept(part, side);
                }
              });
      target.addEventHandler(KeyEvent.KEY_PRESSED, event -> pressed(event, part, side));
    }
    sheet.getChildren().add(target);
    return target;
  }

  private void pressed(KeyEvent event, LimbPart part, Side side) {
    Optional<MapWalk.Stop> next =
        switch (event.getCode()) {
          case UP -> MapWalk.proximal(part, side);
          case DOWN -> MapWalk.distal(part, side);
          case LEFT -> MapWalk.beside(part, side, -1);
          case RIGHT -> MapWalk.beside(part, side, 1);
          default -> Optional.empty();
        };
    boolean arrow = event.getCode().isArrowKey();
    next.ifPresent(stop -> focus(stop.part(), stop.side()));
    if (arrow) {
      event.consume();
    }
  }

  /** The outline is drawn as edges of all pieces, then their faces over what lies inside. */
  private void outline(List<List<Spot>> pieces) {
    Group edges = new Group();
    Group faces = new Group();
    for (List<Spot> piece : pieces) {
      double[] points =
          piece.stream()
              .flatMapToDouble(s -> java.util.stream.DoubleStream.of(s.x(), s.y()))
              .toArray();
      edges.getChildren().add(styled(new Polygon(points), "limb-edge"));
      faces.getChildren().add(styled(new Polygon(points), "limb-face"));
    }
    edges.setMouseTransparent(true);
    faces.setMouseTransparent(true);
    sheet.getChildren().addAll(edges, faces);
  }

  private static <T extends javafx.scene.Node> T styled(T node, String style) {
    node.getStyleClass().add(style);
    return node;
  }

  /** What is done with a target that was clicked or entered. */
  public void onChosen(BiConsumer<LimbPart, Side> action) {
    chosen = action;
  }

  /** What is done when the focus comes to a target. */
  public void onReached(BiConsumer<LimbPart, Side> action) {
    reached = action;
  }

  /**
   * Draws how a part stands.
   *
   * @param words its name with side and state, for whoever cannot see the shapes
   */
  public void show(LimbPart part, Side side, MapMark mark, String words) {
    targets.get(side).get(part).show(mark, words);
  }

  /** Marks one part as the one entry or the card is at; none where empty. */
  public void point(Optional<LimbPart> part, Side side) {
    targets.forEach(
        (s, own) -> own.forEach((p, t) -> t.point(s == side && part.equals(Optional.of(p)))));
  }

  /** Puts the focus on a target. */
  public void focus(LimbPart part, Side side) {
    targets.get(side).get(part).requestFocus();
  }

  @Override
  protected void layoutChildren() {
    double fit = Math.min(getWidth() / MapShape.WIDTH, getHeight() / MapShape.HEIGHT);
    scale.setX(fit);
    scale.setY(fit);
    sheet.relocate(0, 0);
    sheet.setLayoutX(snapPositionX((getWidth() - fit * MapShape.WIDTH) / 2));
    sheet.setLayoutY(0);
  }

  @Override
  protected double computePrefWidth(double height) {
    return MapShape.WIDTH;
  }

  @Override
  protected double computePrefHeight(double width) {
    return width < 0 ? MapShape.HEIGHT : width * MapShape.HEIGHT / MapShape.WIDTH;
  }

  @Override
  public javafx.geometry.Orientation getContentBias() {
    return javafx.geometry.Orientation.HORIZONTAL;
  }
}
