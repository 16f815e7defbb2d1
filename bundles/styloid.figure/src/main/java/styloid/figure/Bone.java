package styloid.figure;

/**
 * A bone in space.
 *
 * @param from its proximal end
 * @param to its distal end
 * @param start directions at its proximal end
 * @param twist degrees its distal end is turned against the proximal one; only of the forearm
 */
record Bone(Vec from, Vec to, Frame start, double twist) {
  Bone(Vec from, Frame frame, double length) {
    this(from, from.plus(frame.distal().times(length)), frame, 0);
  }

  double length() {
    return to.minus(from).length();
  }

  Vec at(double along) {
    return from.toward(to, along);
  }

  /** Directions at a place along it: 0 proximal end, 1 distal end. */
  Frame frame(double along) {
    return start.turned(twist * along);
  }
}
