package styloid.figure;

/**
 * A point or direction in space, in metres: x to the patient's left, y up, z to the front, of a
 * patient who stands upright.
 */
public record Vec(double x, double y, double z) {
  public static final Vec ZERO = new Vec(0, 0, 0);

  public Vec plus(Vec other) {
    return new Vec(x + other.x, y + other.y, z + other.z);
  }

  public Vec minus(Vec other) {
    return new Vec(x - other.x, y - other.y, z - other.z);
  }

  public Vec times(double factor) {
    return new Vec(x * factor, y * factor, z * factor);
  }

  public double dot(Vec other) {
    return x * other.x + y * other.y + z * other.z;
  }

  public Vec cross(Vec other) {
    return new Vec(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
  }

  public double length() {
    return Math.sqrt(dot(this));
  }

  /** The same direction, one metre long. */
  public Vec unit() {
    return times(1 / length());
  }

  /** The point between this one (share 0) and the other (share 1). */
  public Vec toward(Vec other, double share) {
    return plus(other.minus(this).times(share));
  }

  /** Seen in a mirror held along the middle of the body: right becomes left, exactly. */
  public Vec mirrored() {
    return new Vec(-x, y, z);
  }
}
