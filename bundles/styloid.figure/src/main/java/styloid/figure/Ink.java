package styloid.figure;

import java.util.List;

/**
 * One stroke or filled shape of a sketch.
 *
 * @param role what it stands for; decides colour and pattern
 * @param width of the line, in metres; 0 for a filled shape
 * @param closed whether the last point is joined to the first
 */
public record Ink(Role role, List<Spot> points, double width, boolean closed) {
  /** What an ink stands for. */
  public enum Role {
    TABLE,
    TABLE_LINE,
    BODY,
    BODY_LINE,
    SKIN,
    SKIN_LINE,
    /** Creases, nails, wrinkles. */
    DETAIL,
    /** Paper under a mark, so that it is read on any ground. */
    GROUND,
    MARK,
    /** Line of a mark that lies on the far side of the limb; drawn broken. */
    HIDDEN_MARK,
    /** Where the joint stands at zero; drawn dotted. */
    ZERO,
    ARC,
    /** What is missing to the reference; drawn hatched. */
    MISSING,
    REFERENCE
  }

  public Ink {
    points = List.copyOf(points);
  }

  static Ink fill(Role role, List<Spot> points) {
    return new Ink(role, points, 0, true);
  }

  static Ink line(Role role, double width, List<Spot> points) {
    return new Ink(role, points, width, false);
  }

  static Ink ring(Role role, double width, List<Spot> points) {
    return new Ink(role, points, width, true);
  }

  boolean filled() {
    return width == 0;
  }
}
