package styloid.grip;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.spi.Guide;
import styloid.spi.Guide.Line;
import styloid.spi.Guide.Topic;
import styloid.spi.Mark;
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
      case KEY -> pinch("key", key(), Mark.Segment.MIDDLE_PHALANX, Mark.Aspect.RADIAL);
      case PALMAR -> pinch("palmar", palmar(), Mark.Segment.DISTAL_PHALANX, Mark.Aspect.VOLAR);
    };
  }

  static Guide positions() {
    return guide(
        fist(),
        List.of(mark(Mark.Kind.RESIST, Mark.Segment.MIDDLE_PHALANX, 0.5, Mark.Aspect.VOLAR)),
        line(Topic.POSITION, "posture"),
        line(Topic.JOINT_ANGLE, "wrist"),
        line(Topic.INSTRUCTION, "positions.how"),
        line(Topic.CRITERIA, "positions.meaning"));
  }

  static Guide rapid() {
    return guide(
        fist(),
        List.of(mark(Mark.Kind.RESIST, Mark.Segment.MIDDLE_PHALANX, 0.5, Mark.Aspect.VOLAR)),
        line(Topic.POSITION, "posture"),
        line(Topic.INSTRUCTION, "rapid.how"),
        line(Topic.CRITERIA, "rapid.meaning"));
  }

  private static Guide pinch(String name, Pose pose, Mark.Segment segment, Mark.Aspect aspect) {
    return guide(
        pose,
        List.of(
            mark(Mark.Kind.RESIST, segment, 0.6, aspect),
            mark(Mark.Kind.RESIST, Mark.Segment.THUMB_DISTAL_PHALANX, 0.6, Mark.Aspect.VOLAR)),
        line(Topic.POSITION, "posture"),
        line(Topic.SUPPORT, "pinch.support"),
        line(Topic.INSTRUCTION, name + ".how"),
        line(Topic.INSTRUCTION, "rest"),
        line(Topic.COMPENSATION, "pinch.watch"));
  }

  private static Guide guide(Pose pose, List<Mark> marks, Line... lines) {
    return new Guide(Optional.of(SEATED), Optional.empty(), List.of(lines), pose, marks);
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
            Joint.FINGER_MP_FLEXION, 60,
            Joint.FINGER_PIP_FLEXION, 80,
            Joint.FINGER_DIP_FLEXION, 30,
            Joint.THUMB_OPPOSITION, 40,
            Joint.THUMB_IP_FLEXION, 20));
  }

  private static Pose tip() {
    return arm(
        Map.of(
            Joint.FINGER_MP_FLEXION, 50,
            Joint.FINGER_PIP_FLEXION, 50,
            Joint.FINGER_DIP_FLEXION, 25,
            Joint.THUMB_OPPOSITION, 50,
            Joint.THUMB_IP_FLEXION, 25));
  }

  private static Pose key() {
    return arm(
        Map.of(
            Joint.FINGER_MP_FLEXION, 50,
            Joint.FINGER_PIP_FLEXION, 80,
            Joint.FINGER_DIP_FLEXION, 40,
            Joint.THUMB_RADIAL_ABDUCTION, 10,
            Joint.THUMB_IP_FLEXION, 15));
  }

  private static Pose palmar() {
    return arm(
        Map.of(
            Joint.FINGER_MP_FLEXION, 55,
            Joint.FINGER_PIP_FLEXION, 40,
            Joint.FINGER_DIP_FLEXION, 15,
            Joint.THUMB_OPPOSITION, 60,
            Joint.THUMB_PALMAR_ABDUCTION, 35));
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
