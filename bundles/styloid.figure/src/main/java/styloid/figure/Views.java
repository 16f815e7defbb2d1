package styloid.figure;

import java.util.Comparator;
import java.util.List;
import styloid.model.Digit;
import styloid.model.Region;
import styloid.spi.Mark;
import styloid.spi.Mark.Segment;
import styloid.spi.Picture.View;
import styloid.spi.Position.Body;

/** From where a picture is seen. */
final class Views {
  /** Share of looking down on what is seen from the side, so that depth shows. */
  private static final double RAISED = 0.18;

  private static final List<View> OF_BODY =
      List.of(View.FRONT_SIDE, View.SIDE, View.FRONT, View.BEHIND_SIDE, View.BEHIND);
  private static final List<View> OF_HAND =
      List.of(View.THUMB_SIDE, View.PALM, View.BACK_OF_HAND, View.LITTLE_FINGER_SIDE);

  private Views() {}

  /** Up in the room, in the directions of the patient's body. */
  static Vec up(Body body) {
    return switch (body) {
      case SITTING, STANDING -> new Vec(0, 1, 0);
      case SUPINE -> new Vec(0, 0, 1);
      case PRONE -> new Vec(0, 0, -1);
      // On the other side, the limb tested on top.
      case SIDE_LYING -> new Vec(-1, 0, 0);
    };
  }

  static Camera camera(Subject subject, Skeleton skeleton) {
    View view = nearest(subject.picture().view(), subject.digit());
    if (view != View.FITTING) {
      return camera(view, subject, skeleton);
    }
    List<View> choice = ofBody(subject.region()) ? OF_BODY : OF_HAND;
    return choice.stream()
        .map(v -> camera(v, subject, skeleton))
        .max(Comparator.comparingDouble(c -> shows(c, subject, skeleton)))
        .orElseThrow();
  }

  /** Fingers on the far side are seen from the other side, so that no finger lies before them. */
  private static View nearest(View view, Digit digit) {
    boolean far = digit == Digit.RING || digit == Digit.LITTLE;
    return far && view == View.THUMB_SIDE ? View.LITTLE_FINGER_SIDE : view;
  }

  static boolean ofBody(Region region) {
    return region == Region.SHOULDER || region == Region.ELBOW || region == Region.LIMB;
  }

  /** How well the marks are seen: arrows across the line of sight, points toward the onlooker. */
  private static double shows(Camera camera, Subject subject, Skeleton skeleton) {
    double sum = 0;
    for (Subject.PlacedMark placed : subject.marks()) {
      double facing = Touch.of(skeleton, placed).facing(camera);
      sum += placed.mark().kind() == Mark.Kind.RESIST ? 1.5 * (1 - Math.abs(facing)) : facing / 2;
    }
    return Math.round(sum * 8) / 8.0;
  }

  private static Camera camera(View view, Subject subject, Skeleton skeleton) {
    Body body = subject.position().map(p -> p.body()).orElse(Body.SITTING);
    Vec up = up(body);
    Frame wrist = skeleton.bone(Segment.FOREARM, Digit.NONE).frame(1);
    Vec near = near(view, wrist).unit();
    if (Math.abs(near.dot(up)) < 0.7) {
      return Camera.looking(near.plus(up.times(RAISED)), up, subject.side());
    }
    return Camera.looking(near, top(view, near, wrist), subject.side());
  }

  /** What is at the top of a picture seen from above or below. */
  private static Vec top(View view, Vec near, Frame wrist) {
    if (OF_BODY.contains(view) || view == View.HEAD) {
      return view == View.HEAD ? new Vec(0, 0, -1) : new Vec(0, 1, 0);
    }
    return Math.abs(wrist.radial().dot(near)) < 0.7 ? wrist.radial() : near.cross(wrist.distal());
  }

  private static Vec near(View view, Frame wrist) {
    return switch (view) {
      case FRONT -> new Vec(0, 0, 1);
      case BEHIND -> new Vec(0, 0, -1);
      case SIDE -> new Vec(-1, 0, 0);
      case FITTING, FRONT_SIDE -> new Vec(-1, 0, 1);
      case BEHIND_SIDE -> new Vec(-1, 0, -1);
      case HEAD -> new Vec(0, 1, 0);
      case PALM -> wrist.volar();
      case BACK_OF_HAND -> wrist.volar().times(-1);
      case THUMB_SIDE -> wrist.radial();
      case LITTLE_FINGER_SIDE -> wrist.radial().times(-1);
      case FINGERTIPS -> wrist.distal();
    };
  }
}
