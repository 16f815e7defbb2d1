package styloid.goniometry;

import static styloid.spi.Mark.Aspect.DORSAL;
import static styloid.spi.Mark.Aspect.END;
import static styloid.spi.Mark.Aspect.RADIAL;
import static styloid.spi.Mark.Aspect.VOLAR;
import static styloid.spi.Mark.Segment.DISTAL_PHALANX;
import static styloid.spi.Mark.Segment.FOREARM;
import static styloid.spi.Mark.Segment.HAND;
import static styloid.spi.Mark.Segment.MIDDLE_PHALANX;
import static styloid.spi.Mark.Segment.PROXIMAL_PHALANX;
import static styloid.spi.Mark.Segment.THUMB_DISTAL_PHALANX;
import static styloid.spi.Mark.Segment.THUMB_METACARPAL;
import static styloid.spi.Mark.Segment.THUMB_PROXIMAL_PHALANX;
import static styloid.spi.Mark.Segment.TRUNK;
import static styloid.spi.Mark.Segment.UPPER_ARM;
import static styloid.spi.Pose.Joint.ELBOW_FLEXION;
import static styloid.spi.Pose.Joint.FINGER_DIP_FLEXION;
import static styloid.spi.Pose.Joint.FINGER_MP_FLEXION;
import static styloid.spi.Pose.Joint.FINGER_PIP_FLEXION;
import static styloid.spi.Pose.Joint.FINGER_SPREAD;
import static styloid.spi.Pose.Joint.FOREARM_PRONATION;
import static styloid.spi.Pose.Joint.SHOULDER_ABDUCTION;
import static styloid.spi.Pose.Joint.SHOULDER_FLEXION;
import static styloid.spi.Pose.Joint.SHOULDER_INWARD_ROTATION;
import static styloid.spi.Pose.Joint.THUMB_IP_FLEXION;
import static styloid.spi.Pose.Joint.THUMB_MP_FLEXION;
import static styloid.spi.Pose.Joint.THUMB_OPPOSITION;
import static styloid.spi.Pose.Joint.THUMB_PALMAR_ABDUCTION;
import static styloid.spi.Pose.Joint.THUMB_RADIAL_ABDUCTION;
import static styloid.spi.Pose.Joint.WRIST_FLEXION;
import static styloid.spi.Pose.Joint.WRIST_RADIAL_DEVIATION;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.spi.Guide;
import styloid.spi.Guide.Line;
import styloid.spi.Guide.Topic;
import styloid.spi.Mark;
import styloid.spi.Pose;
import styloid.spi.Position;
import styloid.spi.Position.Body;
import styloid.spi.Position.Rotation;
import styloid.spi.Position.Support;

/** Where the goniometer lies and how the patient sits, by group. Common practice, no source. */
final class Guides {
  private static final List<Topic> GONIOMETER =
      List.of(
          Topic.POSITION,
          Topic.AXIS,
          Topic.STATIONARY_ARM,
          Topic.MOVING_ARM,
          Topic.COMPENSATION,
          Topic.INSTRUCTION);
  private static final List<Topic> RULER =
      List.of(Topic.POSITION, Topic.COMPENSATION, Topic.INSTRUCTION);

  private final Map<String, Guide> guides = new HashMap<>();

  Guides() {
    limb();
    fingers();
    thumb();
    hand();
  }

  Guide of(String group) {
    return guides.get(group);
  }

  private void limb() {
    add("shoulder-sagittal", Support.FREE, Rotation.MID)
        .pose(SHOULDER_FLEXION, 90)
        .goniometer(UPPER_ARM, 0, RADIAL, TRUNK, UPPER_ARM);
    add("shoulder-frontal", Support.FREE, Rotation.PALM_UP)
        .pose(SHOULDER_ABDUCTION, 90)
        .goniometer(UPPER_ARM, 0, DORSAL, TRUNK, UPPER_ARM);
    add("shoulder-transverse", Support.HELD, Rotation.PALM_DOWN)
        .pose(SHOULDER_ABDUCTION, 90)
        .goniometer(UPPER_ARM, 0, END, TRUNK, UPPER_ARM);
    add("shoulder-rotation", Support.HELD, Rotation.MID)
        .pose(SHOULDER_ABDUCTION, 90)
        .pose(ELBOW_FLEXION, 90)
        .pose(SHOULDER_INWARD_ROTATION, -45)
        .goniometer(UPPER_ARM, 1, END, TRUNK, FOREARM);
    add("elbow", Support.UPPER_ARM_ON_TABLE, Rotation.PALM_UP)
        .pose(ELBOW_FLEXION, 70)
        .goniometer(UPPER_ARM, 1, RADIAL, UPPER_ARM, FOREARM);
    add("forearm", Support.ELBOW_BENT, Rotation.MID)
        .pose(ELBOW_FLEXION, 90)
        .pose(FOREARM_PRONATION, 45)
        .goniometer(FOREARM, 1, VOLAR, UPPER_ARM, FOREARM);
    add("wrist-sagittal", Support.FOREARM_ON_TABLE, Rotation.PALM_DOWN)
        .pose(ELBOW_FLEXION, 90)
        .pose(FOREARM_PRONATION, 90)
        .pose(WRIST_FLEXION, -45)
        .goniometer(FOREARM, 1, DORSAL, FOREARM, HAND);
    add("wrist-frontal", Support.HAND_ON_TABLE, Rotation.PALM_DOWN)
        .pose(ELBOW_FLEXION, 90)
        .pose(FOREARM_PRONATION, 90)
        .pose(WRIST_RADIAL_DEVIATION, -20)
        .goniometer(FOREARM, 1, DORSAL, FOREARM, HAND);
  }

  private void fingers() {
    add("finger-mp", Support.HAND_ON_TABLE, Rotation.MID)
        .pose(ELBOW_FLEXION, 90)
        .pose(FINGER_MP_FLEXION, 60)
        .goniometer(HAND, 1, DORSAL, HAND, PROXIMAL_PHALANX);
    add("finger-pip", Support.HAND_ON_TABLE, Rotation.MID)
        .pose(ELBOW_FLEXION, 90)
        .pose(FINGER_PIP_FLEXION, 80)
        .goniometer(PROXIMAL_PHALANX, 1, DORSAL, PROXIMAL_PHALANX, MIDDLE_PHALANX);
    add("finger-dip", Support.HAND_ON_TABLE, Rotation.MID)
        .pose(ELBOW_FLEXION, 90)
        .pose(FINGER_PIP_FLEXION, 60)
        .pose(FINGER_DIP_FLEXION, 60)
        .goniometer(MIDDLE_PHALANX, 1, DORSAL, MIDDLE_PHALANX, DISTAL_PHALANX);
  }

  private void thumb() {
    add("thumb-cmc", Support.HAND_ON_TABLE, Rotation.MID)
        .pose(ELBOW_FLEXION, 90)
        .goniometer(THUMB_METACARPAL, 0, RADIAL, FOREARM, THUMB_METACARPAL);
    add("thumb-mp", Support.HAND_ON_TABLE, Rotation.MID)
        .pose(ELBOW_FLEXION, 90)
        .pose(THUMB_MP_FLEXION, 45)
        .goniometer(THUMB_METACARPAL, 1, DORSAL, THUMB_METACARPAL, THUMB_PROXIMAL_PHALANX);
    add("thumb-ip", Support.HAND_ON_TABLE, Rotation.MID)
        .pose(ELBOW_FLEXION, 90)
        .pose(THUMB_IP_FLEXION, 60)
        .goniometer(
            THUMB_PROXIMAL_PHALANX, 1, DORSAL, THUMB_PROXIMAL_PHALANX, THUMB_DISTAL_PHALANX);
    add("thumb-palmar-abduction", Support.HAND_ON_TABLE, Rotation.MID)
        .pose(ELBOW_FLEXION, 90)
        .pose(THUMB_PALMAR_ABDUCTION, 45)
        .goniometer(THUMB_METACARPAL, 0, RADIAL, HAND, THUMB_METACARPAL);
    add("thumb-radial-abduction", Support.HAND_ON_TABLE, Rotation.PALM_DOWN)
        .pose(ELBOW_FLEXION, 90)
        .pose(THUMB_RADIAL_ABDUCTION, 50)
        .goniometer(THUMB_METACARPAL, 0, DORSAL, HAND, THUMB_METACARPAL);
  }

  private void hand() {
    add(HandItems.OPPOSITION_GROUP, Support.HAND_ON_TABLE, Rotation.PALM_UP)
        .pose(ELBOW_FLEXION, 90)
        .pose(THUMB_OPPOSITION, 60)
        .ruler();
    add(HandItems.CREASE_GROUP, Support.HAND_ON_TABLE, Rotation.PALM_UP)
        .pose(ELBOW_FLEXION, 90)
        .pose(FINGER_MP_FLEXION, 80)
        .pose(FINGER_PIP_FLEXION, 80)
        .pose(FINGER_DIP_FLEXION, 45)
        .ruler();
    add(HandItems.SPAN_GROUP, Support.HAND_ON_TABLE, Rotation.PALM_DOWN)
        .pose(ELBOW_FLEXION, 90)
        .pose(FINGER_SPREAD, 20)
        .pose(THUMB_RADIAL_ABDUCTION, 60)
        .ruler();
  }

  private Draft add(String group, Support support, Rotation rotation) {
    return new Draft(group, new Position(Body.SITTING, support, rotation));
  }

  private final class Draft {
    private final String group;
    private final Position position;
    private final Map<Pose.Joint, Integer> angles = new HashMap<>();

    private Draft(String group, Position position) {
      this.group = group;
      this.position = position;
    }

    Draft pose(Pose.Joint joint, int degrees) {
      angles.put(joint, degrees);
      return this;
    }

    void goniometer(
        Mark.Segment at,
        double along,
        Mark.Aspect aspect,
        Mark.Segment stationary,
        Mark.Segment moving) {
      finish(
          GONIOMETER,
          List.of(
              new Mark(Mark.Kind.AXIS, at, along, aspect),
              new Mark(Mark.Kind.STATIONARY_ARM, stationary, 0.5, aspect),
              new Mark(Mark.Kind.MOVING_ARM, moving, 0.5, aspect)));
    }

    void ruler() {
      finish(RULER, List.of());
    }

    private void finish(List<Topic> topics, List<Mark> marks) {
      ArrayList<Line> lines = new ArrayList<>();
      topics.forEach(topic -> lines.add(new Line(topic, "guide." + group + "." + topic.code())));
      guides.put(
          group,
          new Guide(Optional.of(position), Optional.empty(), lines, new Pose(angles), marks));
    }
  }
}
