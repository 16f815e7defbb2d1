package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import styloid.model.Digit;
import styloid.spi.Mark.Segment;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;
import styloid.spi.Position;

/** Trunk, head and other arm: quiet context of a shoulder or an elbow. */
final class Body {
  private static final Pose AT_REST =
      Pose.neutral().with(Joint.SHOULDER_ABDUCTION, 7).with(Joint.ELBOW_FLEXION, 12);

  private Body() {}

  /** Convex pieces, from the farthest to the nearest as far as it matters. */
  static List<List<Ball>> pieces(Position.Body body, Skeleton skeleton) {
    ArrayList<List<Ball>> pieces = new ArrayList<>();
    for (double side : new double[] {-1, 1}) {
      pieces.addAll(leg(body, side));
    }
    Flesh.of(Skeleton.of(AT_REST)).stream()
        .filter(part -> part.segment() == Segment.UPPER_ARM || part.segment() == Segment.FOREARM)
        .flatMap(part -> part.pieces().stream())
        .map(piece -> piece.stream().map(b -> new Ball(b.centre().mirrored(), b.radius())).toList())
        .forEach(pieces::add);
    List<Ball> chest = pair(0.098, -0.13, 0.005, 0.093);
    List<Ball> waist = pair(0.070, -0.32, 0.005, 0.080);
    List<Ball> hips = pair(0.085, -0.47, -0.005, 0.088);
    Vec shoulder = skeleton.proximal(Segment.UPPER_ARM, Digit.NONE);
    Ball own = new Ball(shoulder.toward(Vec.ZERO, 0.22), 0.056);
    Ball other = new Ball(new Vec(Proportions.HALF_SHOULDERS * 0.78, 0, 0), 0.056);
    List<Ball> shoulders = List.of(own, other);
    pieces.add(Lists.joined(hips, waist));
    pieces.add(Lists.joined(waist, chest));
    pieces.add(Lists.joined(chest, shoulders));
    Ball nape = new Ball(new Vec(0, 0.095, -0.012), 0.047);
    pieces.add(List.of(own, new Ball(nape.centre().plus(new Vec(0, -0.035, 0)), 0.047)));
    pieces.add(List.of(other, new Ball(nape.centre().plus(new Vec(0, -0.035, 0)), 0.047)));
    return pieces;
  }

  static List<List<Ball>> head() {
    ArrayList<List<Ball>> pieces = new ArrayList<>();
    Ball nape = new Ball(new Vec(0, 0.095, -0.012), 0.047);
    Ball crown = new Ball(new Vec(0, 0.245, 0.002), 0.082);
    Ball chin = new Ball(new Vec(0, 0.165, 0.048), 0.040);
    pieces.add(List.of(nape, new Ball(new Vec(0, 0.17, 0.0), 0.050)));
    pieces.add(List.of(crown, chin, new Ball(new Vec(0, 0.205, 0.035), 0.058)));
    pieces.add(
        List.of(
            new Ball(new Vec(0, 0.205, 0.098), 0.011), new Ball(new Vec(0, 0.235, 0.085), 0.006)));
    return pieces;
  }

  private static List<List<Ball>> leg(Position.Body body, double side) {
    Ball hip = new Ball(new Vec(side * 0.088, -0.49, 0), 0.082);
    Vec knee =
        body == Position.Body.SITTING
            ? new Vec(side * 0.105, -0.50, 0.40)
            : new Vec(side * 0.09, -0.90, 0);
    Vec ankle =
        body == Position.Body.SITTING
            ? new Vec(side * 0.105, -0.90, 0.40)
            : new Vec(side * 0.09, -1.30, 0);
    return List.of(
        List.of(hip, new Ball(knee, 0.055)), List.of(new Ball(knee, 0.055), new Ball(ankle, 0.04)));
  }

  private static List<Ball> pair(double x, double y, double z, double radius) {
    return List.of(new Ball(new Vec(-x, y, z), radius), new Ball(new Vec(x, y, z), radius));
  }
}
