package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import styloid.model.Digit;
import styloid.spi.Mark.Aspect;
import styloid.spi.Mark.Segment;

/** What tells palm from back: nails and knuckles on the back, creases on the palm. */
final class Details {
  private static final double SEEN = 0.18;
  private static final int NAIL_CORNERS = 16;

  private Details() {}

  static void of(Skeleton skeleton, Camera camera, Part part, double line, List<Ink> inks) {
    switch (part.segment()) {
      case DISTAL_PHALANX, THUMB_DISTAL_PHALANX -> {
        nail(skeleton, camera, part, line, inks);
        crease(skeleton, camera, part, 0, line, inks);
      }
      case MIDDLE_PHALANX, THUMB_PROXIMAL_PHALANX -> crease(skeleton, camera, part, 0, line, inks);
      case PROXIMAL_PHALANX -> crease(skeleton, camera, part, 0.32, line, inks);
      case HAND -> palm(skeleton, camera, line, inks);
      default -> {
        // Upper arm and forearm are plain.
      }
    }
  }

  private static void nail(
      Skeleton skeleton, Camera camera, Part part, double line, List<Ink> inks) {
    Bone bone = skeleton.bone(part.segment(), part.digit());
    Frame frame = bone.start();
    if (-frame.volar().dot(camera.toViewer()) < 0.05) {
      return;
    }
    double width = Flesh.skin(part.segment(), part.digit(), 0.7, Aspect.RADIAL) * 0.74;
    double thick = Flesh.skin(part.segment(), part.digit(), 0.75, Aspect.DORSAL);
    ArrayList<Spot> nail = new ArrayList<>();
    for (int i = 0; i < NAIL_CORNERS; i++) {
      double angle = 2 * Math.PI * i / NAIL_CORNERS;
      double across = Math.copySign(Math.pow(Math.abs(Math.sin(angle)), 0.7), Math.sin(angle));
      double round = 0.35 * thick * across * across;
      nail.add(
          camera.see(
              frame.at(bone.at(0.74 + 0.24 * Math.cos(angle)), 0, -thick + round, width * across)));
    }
    inks.add(Ink.fill(Ink.Role.GROUND, nail));
    inks.add(Ink.ring(Ink.Role.DETAIL, line, nail));
  }

  /** A crease on the palm side, a wrinkle on the back, whichever is in sight. */
  private static void crease(
      Skeleton skeleton, Camera camera, Part part, double along, double line, List<Ink> inks) {
    Bone bone = skeleton.bone(part.segment(), part.digit());
    Frame frame = bone.start();
    double facing = frame.volar().dot(camera.toViewer());
    double half = facing > 0 ? 0.86 : 0.5;
    if (Math.abs(facing) < SEEN || facing < 0 && along > 0) {
      return;
    }
    double width = Flesh.skin(part.segment(), part.digit(), along, Aspect.RADIAL);
    double thick = Flesh.skin(part.segment(), part.digit(), along, Aspect.VOLAR);
    ArrayList<Spot> arc = new ArrayList<>();
    for (int i = -3; i <= 3; i++) {
      double across = half * i / 3;
      double up = Math.copySign(Math.sqrt(1 - across * across) * thick, facing);
      arc.add(camera.see(frame.at(bone.at(along), 0, up, width * across)));
    }
    inks.add(Ink.line(Ink.Role.DETAIL, line, arc));
  }

  private static void palm(Skeleton skeleton, Camera camera, double line, List<Ink> inks) {
    Bone hand = skeleton.bone(Segment.HAND, Digit.NONE);
    double facing = hand.start().volar().dot(camera.toViewer());
    if (facing > SEEN) {
      double length = hand.length();
      // Crease round the ball of the thumb, then the two across the palm.
      path(
          skeleton,
          camera,
          line,
          inks,
          new double[][] {
            {0.06, 0.004}, {0.30, 0.000}, {0.55, 0.006}, {0.76, 0.018}, {0.84, 0.034}
          },
          length);
      path(
          skeleton,
          camera,
          line,
          inks,
          new double[][] {{0.86, 0.034}, {0.76, 0.012}, {0.66, -0.012}, {0.58, -0.028}},
          length);
      path(
          skeleton,
          camera,
          line,
          inks,
          new double[][] {{0.99, 0.012}, {0.92, 0.0}, {0.86, -0.018}, {0.82, -0.036}},
          length);
      path(
          skeleton,
          camera,
          line,
          inks,
          new double[][] {{-0.02, 0.022}, {0.01, 0.0}, {-0.02, -0.022}},
          length);
    } else if (facing < -SEEN) {
      for (Digit digit : List.of(Digit.INDEX, Digit.MIDDLE, Digit.RING, Digit.LITTLE)) {
        knuckle(skeleton, camera, digit, line, inks);
      }
    }
  }

  private static void path(
      Skeleton skeleton,
      Camera camera,
      double line,
      List<Ink> inks,
      double[][] places,
      double length) {
    Bone hand = skeleton.bone(Segment.HAND, Digit.NONE);
    ArrayList<Spot> spots = new ArrayList<>();
    for (double[] place : places) {
      double thick = Flesh.skin(Segment.HAND, Digit.NONE, Math.max(0, place[0]), Aspect.VOLAR);
      spots.add(camera.see(hand.start().at(hand.from(), place[0] * length, thick, place[1])));
    }
    inks.add(Ink.line(Ink.Role.DETAIL, line, Curve.through(spots)));
  }

  private static void knuckle(
      Skeleton skeleton, Camera camera, Digit digit, double line, List<Ink> inks) {
    Bone bone = skeleton.bone(Segment.HAND, digit);
    Frame frame = bone.start();
    ArrayList<Spot> arc = new ArrayList<>();
    for (int i = -4; i <= 4; i++) {
      double angle = Math.toRadians(18.0 * i);
      arc.add(
          camera.see(
              frame.at(
                  bone.to(), 0.006 * Math.cos(angle) - 0.004, -0.0122, 0.006 * Math.sin(angle))));
    }
    inks.add(Ink.line(Ink.Role.DETAIL, line, arc));
    List<Spot> tendon =
        List.of(
            camera.see(frame.at(bone.at(0.82), 0, -0.0135, 0)),
            camera.see(frame.at(bone.at(0.45), 0, -0.0145, 0)));
    inks.add(Ink.line(Ink.Role.DETAIL, line * 0.6, tendon));
  }
}
