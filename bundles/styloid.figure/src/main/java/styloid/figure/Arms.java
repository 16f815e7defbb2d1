package styloid.figure;

import java.util.List;
import styloid.model.Digit;
import styloid.model.Side;
import styloid.spi.Mark.Segment;
import styloid.spi.Pose;

/**
 * Both arms of a standing person from the front, for a map to navigate by. Metres in the plane of
 * the picture, origin midway between the shoulders; the right arm is at the left of the picture.
 */
public final class Arms {
  private static final Camera FRONT =
      Camera.looking(new Vec(0, 0, 1), new Vec(0, 1, 0), Side.RIGHT);

  private Arms() {}

  /** Where the proximal joint of a segment lies, such as the elbow of the forearm. */
  public static Spot joint(Side side, Segment segment, Digit digit) {
    return over(side, FRONT.see(Skeleton.of(pose()).proximal(segment, digit)));
  }

  /** Where a segment ends, such as the tip of a finger for its distal phalanx. */
  public static Spot end(Side side, Segment segment, Digit digit) {
    return over(side, FRONT.see(Skeleton.of(pose()).distal(segment, digit)));
  }

  /** Convex polygons that together are the arm's outline, proximal to distal. */
  public static List<List<Spot>> outlines(Side side) {
    return Flesh.of(Skeleton.of(pose())).stream()
        .flatMap(part -> part.outlines(FRONT).stream())
        .map(polygon -> polygon.stream().map(spot -> over(side, spot)).toList())
        .toList();
  }

  private static Pose pose() {
    return Skeleton.STANDING;
  }

  private static Spot over(Side side, Spot spot) {
    return side == Side.LEFT ? new Spot(-spot.x(), spot.y()) : spot;
  }
}
