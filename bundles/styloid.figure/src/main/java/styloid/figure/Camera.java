package styloid.figure;

import styloid.model.Side;

/**
 * From where the figure is seen, without perspective. A left limb is the right one with the picture
 * turned over, exactly.
 *
 * @param toViewer direction of the onlooker
 * @param right direction that points right in the picture of a right limb
 * @param up direction that points up in the picture
 * @param side the limb shown
 */
public record Camera(Vec toViewer, Vec right, Vec up, Side side) {
  /** Looking with {@code up} as near to the top of the picture as can be. */
  public static Camera looking(Vec toViewer, Vec up, Side side) {
    Vec near = toViewer.unit();
    Vec top = up.minus(near.times(up.dot(near))).unit();
    return new Camera(near, top.cross(near), top, side);
  }

  public Spot see(Vec point) {
    double x = point.dot(right);
    return new Spot(side == Side.LEFT ? -x : x, point.dot(up));
  }

  /** How near a point is to the onlooker; larger is nearer. */
  public double depth(Vec point) {
    return point.dot(toViewer);
  }
}
