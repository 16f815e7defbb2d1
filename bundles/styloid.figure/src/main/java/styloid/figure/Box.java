package styloid.figure;

import java.util.List;

/** A rectangle of a picture, in metres. */
public record Box(double left, double bottom, double right, double top) {
  /** Round some points, none of them outside. */
  static Box around(List<Spot> spots) {
    double left = spots.stream().mapToDouble(Spot::x).min().orElse(0);
    double right = spots.stream().mapToDouble(Spot::x).max().orElse(0);
    double bottom = spots.stream().mapToDouble(Spot::y).min().orElse(0);
    double top = spots.stream().mapToDouble(Spot::y).max().orElse(0);
    return new Box(left, bottom, right, top);
  }

  public double width() {
    return right - left;
  }

  public double height() {
    return top - bottom;
  }

  Box grown(double margin) {
    return new Box(left - margin, bottom - margin, right + margin, top + margin);
  }

  Box with(Box other) {
    return new Box(
        Math.min(left, other.left),
        Math.min(bottom, other.bottom),
        Math.max(right, other.right),
        Math.max(top, other.top));
  }

  boolean holds(Spot spot) {
    return spot.x() >= left && spot.x() <= right && spot.y() >= bottom && spot.y() <= top;
  }
}
