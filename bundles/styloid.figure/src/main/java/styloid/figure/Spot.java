package styloid.figure;

/** A point of a picture, in metres: x to the right, y up. */
public record Spot(double x, double y) {
  public Spot plus(Spot other) {
    return new Spot(x + other.x, y + other.y);
  }

  public Spot minus(Spot other) {
    return new Spot(x - other.x, y - other.y);
  }

  public Spot times(double factor) {
    return new Spot(x * factor, y * factor);
  }

  public double length() {
    return Math.hypot(x, y);
  }

  /** The same direction, one metre long; itself where it has no length. */
  public Spot unit() {
    double length = length();
    return length == 0 ? this : times(1 / length);
  }

  /** A quarter turn to the left. */
  public Spot square() {
    return new Spot(-y, x);
  }

  double cross(Spot other) {
    return x * other.y - y * other.x;
  }

  double dot(Spot other) {
    return x * other.x + y * other.y;
  }
}
