package styloid.grip;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.Digit;
import styloid.spi.Guide;
import styloid.spi.Guide.Line;
import styloid.spi.Guide.Topic;
import styloid.spi.Mark;
import styloid.spi.Picture;
import styloid.spi.Picture.View;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;
import styloid.spi.Position;

/**
 * How each group is done. Seated, upper arm at the side, elbow at a right angle, forearm midway,
 * wrist 0 to 30 degrees of extension and 0 to 15 degrees of ulnar deviation; the pictures show the
 * middle of those ranges.
 */
final class GripGuides {
  private static final Position SEATED =
      new Position(Position.Body.SITTING, Position.Support.ELBOW_BENT, Position.Rotation.MID);

  private GripGuides() {}

  static Guide of(Measure measure) {
    return switch (measure) {
      case POWER ->
          guide(
              fist(),
              View.THUMB_SIDE,
              List.of(
                  mark(Mark.Kind.RESIST, Mark.Segment.MIDDLE_PHALANX, 0.5, Mark.Aspect.VOLAR),
                  mark(Mark.Kind.SUPPORT, Mark.Segment.HAND, 0.5, Mark.Aspect.RADIAL)),
              line(Topic.POSITION, "posture"),
              line(Topic.JOINT_ANGLE, "wrist"),
              line(Topic.SUPPORT, "power.support"),
              line(Topic.INSTRUCTION, "power.how"),
              line(Topic.INSTRUCTION, "rest"),
              line(Topic.COMPENSATION, "power.watch"));
      case TIP -> pinch("tip", tip(), Mark.Segment.DISTAL_PHALANX, Mark.Aspect.VOLAR);
      case KEY -> pinch("key", key(), Mark.Segment.THUMB_DISTAL_PHALANX, Mark.Aspect.VOLAR);
      case PALMAR -> pinch("palmar", palmar(), Mark.Segment.DISTAL_PHALANX, Mark.Aspect.VOLAR);
    };
  }

  static Guide positions() {
    return guide(
        fist(),
        View.THUMB_SIDE,
        List.of(mark(Mark.Kind.RESIST, Mark.Segment.MIDDLE_PHALANX, 0.5, Mark.Aspect.VOLAR)),
        line(Topic.POSITION, "posture"),
        line(Topic.JOINT_ANGLE, "wrist"),
        line(Topic.INSTRUCTION, "positions.how"),
        line(Topic.CRITERIA, "positions.meaning"));
  }

  static Guide rapid() {
    return guide(
        fist(),
        View.THUMB_SIDE,
        List.of(mark(Mark.Kind.RESIST, Mark.Segment.MIDDLE_PHALANX, 0.5, Mark.Aspect.VOLAR)),
        line(Topic.POSITION, "posture"),
        line(Topic.INSTRUCTION, "rapid.how"),
        line(Topic.CRITERIA, "rapid.meaning"));
  }

  private static Guide pinch(String name, Pose pose, Mark.Segment segment, Mark.Aspect aspect) {
    View view = name.equals("key") ? View.BACK_OF_HAND : View.THUMB_SIDE;
    return guide(
        pose,
        view,
        List.of(mark(Mark.Kind.RESIST, segment, 0.6, aspect)),
        line(Topic.POSITION, "posture"),
        line(Topic.SUPPORT, "pinch.support"),
        line(Topic.INSTRUCTION, name + ".how"),
        line(Topic.INSTRUCTION, "rest"),
        line(Topic.COMPENSATION, "pinch.watch"));
  }

  private static Guide guide(Pose pose, View view, List<Mark> marks, Line... lines) {
    return new Guide(
        Optional.of(SEATED),
        Optional.empty(),
        List.of(lines),
        new Picture(pose, marks, view),
        List.of(),
        List.of());
  }

  private static Line line(Topic topic, String key) {
    return new Line(topic, "guide." + key);
  }

  private static Mark mark(Mark.Kind kind, Mark.Segment segment, double along, Mark.Aspect aspect) {
    return new Mark(kind, segment, along, aspect);
  }

  private static Pose fist() {
    return arm(
        Map.of(
            Joint.FINGER_MP_FLEXION, 65,
            Joint.FINGER_PIP_FLEXION, 85,
            Joint.FINGER_DIP_FLEXION, 45,
            Joint.THUMB_RADIAL_ABDUCTION, 8,
            Joint.THUMB_OPPOSITION, 14,
            Joint.THUMB_MP_FLEXION, 8,
            Joint.THUMB_IP_FLEXION, 17));
  }

  /** Tip of the thumb to the tip of the index finger, the other fingers curled. */
  private static Pose tip() {
    return curled(
        arm(
            Map.of(
                Joint.FINGER_MP_FLEXION, 41,
                Joint.FINGER_PIP_FLEXION, 43,
                Joint.FINGER_DIP_FLEXION, 52,
                Joint.THUMB_PALMAR_ABDUCTION, 10,
                Joint.THUMB_OPPOSITION, 7)),
        Digit.MIDDLE,
        Digit.RING,
        Digit.LITTLE);
  }

  /** Pad of the thumb to the side of the index finger. */
  private static Pose key() {
    return arm(
        Map.of(
            Joint.FINGER_MP_FLEXION, 55,
            Joint.FINGER_PIP_FLEXION, 80,
            Joint.FINGER_DIP_FLEXION, 40,
            Joint.THUMB_RADIAL_ABDUCTION, 9,
            Joint.THUMB_OPPOSITION, 8,
            Joint.THUMB_IP_FLEXION, 24));
  }

  /** Pad of the thumb to the pads of index and middle finger. */
  private static Pose palmar() {
    return curled(
        arm(
            Map.of(
                Joint.FINGER_MP_FLEXION, 34,
                Joint.FINGER_PIP_FLEXION, 78,
                Joint.FINGER_DIP_FLEXION, 21,
                Joint.THUMB_OPPOSITION, 19,
                Joint.THUMB_IP_FLEXION, 9)),
        Digit.RING,
        Digit.LITTLE);
  }

  private static Pose curled(Pose pose, Digit... fingers) {
    Pose curled = pose;
    for (Digit finger : fingers) {
      curled =
          curled
              .with(Joint.FINGER_MP_FLEXION, finger, 75)
              .with(Joint.FINGER_PIP_FLEXION, finger, 95)
              .with(Joint.FINGER_DIP_FLEXION, finger, 55);
    }
    return curled;
  }

  /** The arm as every group holds it, with the digits as given. */
  private static Pose arm(Map<Joint, Integer> digits) {
    HashMap<Joint, Integer> all = new HashMap<>(digits);
    all.put(Joint.ELBOW_FLEXION, 90);
    all.put(Joint.WRIST_FLEXION, -15);
    all.put(Joint.WRIST_RADIAL_DEVIATION, -8);
    return new Pose(all);
  }
}
