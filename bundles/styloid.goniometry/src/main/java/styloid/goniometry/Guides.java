package styloid.goniometry;

import static styloid.spi.Mark.Aspect.DORSAL;
import static styloid.spi.Mark.Aspect.END;
import static styloid.spi.Mark.Aspect.RADIAL;
import static styloid.spi.Mark.Aspect.ULNAR;
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
import static styloid.spi.Pose.Joint.THUMB_OPPOSITION;
import static styloid.spi.Pose.Joint.THUMB_RADIAL_ABDUCTION;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.ResultId;
import styloid.spi.Guide;
import styloid.spi.Guide.Line;
import styloid.spi.Guide.Topic;
import styloid.spi.Mark;
import styloid.spi.Picture;
import styloid.spi.Picture.View;
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

  private final Set<ResultId> results;

  /**
   * @param results those the test gives
   */
  Guides(Set<ResultId> results) {
    this.results = results;
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
        .seen(View.SIDE)
        .pose(SHOULDER_FLEXION, 90)
        .goniometer(UPPER_ARM, 0, RADIAL, arm(TRUNK, END), arm(UPPER_ARM, END));
    add("shoulder-frontal", Support.FREE, Rotation.PALM_UP)
        .seen(View.BEHIND)
        .pose(SHOULDER_ABDUCTION, 90)
        .pose(FOREARM_PRONATION, -60)
        .goniometer(UPPER_ARM, 0, DORSAL, arm(TRUNK, END), arm(UPPER_ARM, END));
    add("shoulder-transverse", Support.HELD, Rotation.PALM_DOWN)
        .seen(View.HEAD)
        .pose(SHOULDER_ABDUCTION, 90)
        .pose(ELBOW_FLEXION, 60)
        .goniometer(UPPER_ARM, 0, RADIAL, arm(TRUNK, RADIAL), arm(UPPER_ARM, END));
    add("shoulder-rotation", Support.HELD, Rotation.MID)
        .seen(View.SIDE)
        .pose(SHOULDER_ABDUCTION, 90)
        .pose(ELBOW_FLEXION, 90)
        .goniometer(UPPER_ARM, 1, END, arm(TRUNK, VOLAR), arm(FOREARM, END));
    add("elbow", Support.UPPER_ARM_ON_TABLE, Rotation.PALM_UP)
        .seen(View.SIDE)
        .pose(SHOULDER_FLEXION, 75)
        .pose(FOREARM_PRONATION, -80)
        .goniometer(UPPER_ARM, 1, RADIAL, arm(UPPER_ARM, END), arm(FOREARM, END));
    add("forearm", Support.ELBOW_BENT, Rotation.MID)
        .seen(View.FINGERTIPS)
        .pose(ELBOW_FLEXION, 90)
        .pose(THUMB_RADIAL_ABDUCTION, 35)
        .goniometer(FOREARM, 1, VOLAR, arm(UPPER_ARM, END), arm(FOREARM, RADIAL));
    add("wrist-sagittal", Support.FOREARM_ON_TABLE, Rotation.PALM_DOWN)
        .seen(View.LITTLE_FINGER_SIDE)
        .pose(ELBOW_FLEXION, 90)
        .pose(FOREARM_PRONATION, 90)
        .goniometer(FOREARM, 1, ULNAR, arm(FOREARM, END), arm(HAND, END));
    add("wrist-frontal", Support.HAND_ON_TABLE, Rotation.PALM_DOWN)
        .seen(View.BACK_OF_HAND)
        .pose(ELBOW_FLEXION, 90)
        .pose(FOREARM_PRONATION, 90)
        .goniometer(FOREARM, 1, DORSAL, arm(FOREARM, END), arm(HAND, END));
  }

  private void fingers() {
    add("finger-mp", Support.HAND_ON_TABLE, Rotation.MID)
        .seen(View.THUMB_SIDE)
        .pose(ELBOW_FLEXION, 90)
        .goniometer(PROXIMAL_PHALANX, 0, DORSAL, arm(HAND, END), arm(PROXIMAL_PHALANX, END));
    add("finger-pip", Support.HAND_ON_TABLE, Rotation.MID)
        .seen(View.THUMB_SIDE)
        .pose(ELBOW_FLEXION, 90)
        .goniometer(
            MIDDLE_PHALANX, 0, DORSAL, arm(PROXIMAL_PHALANX, END), arm(MIDDLE_PHALANX, END));
    add("finger-dip", Support.HAND_ON_TABLE, Rotation.MID)
        .seen(View.THUMB_SIDE)
        .pose(ELBOW_FLEXION, 90)
        .pose(FINGER_PIP_FLEXION, 30)
        .goniometer(DISTAL_PHALANX, 0, DORSAL, arm(MIDDLE_PHALANX, END), arm(DISTAL_PHALANX, END));
  }

  private void thumb() {
    add("thumb-cmc", Support.HAND_ON_TABLE, Rotation.MID)
        .seen(View.BACK_OF_HAND)
        .pose(ELBOW_FLEXION, 90)
        .goniometer(THUMB_METACARPAL, 0, DORSAL, arm(FOREARM, END), arm(THUMB_METACARPAL, END));
    add("thumb-mp", Support.HAND_ON_TABLE, Rotation.MID)
        .seen(View.BACK_OF_HAND)
        .pose(ELBOW_FLEXION, 90)
        .goniometer(
            THUMB_PROXIMAL_PHALANX,
            0,
            DORSAL,
            arm(THUMB_METACARPAL, END),
            arm(THUMB_PROXIMAL_PHALANX, END));
    add("thumb-ip", Support.HAND_ON_TABLE, Rotation.MID)
        .seen(View.BACK_OF_HAND)
        .pose(ELBOW_FLEXION, 90)
        .goniometer(
            THUMB_DISTAL_PHALANX,
            0,
            DORSAL,
            arm(THUMB_PROXIMAL_PHALANX, END),
            arm(THUMB_DISTAL_PHALANX, END));
    add("thumb-palmar-abduction", Support.HAND_ON_TABLE, Rotation.MID)
        .seen(View.THUMB_SIDE)
        .pose(ELBOW_FLEXION, 90)
        .goniometer(THUMB_METACARPAL, 0, DORSAL, index(HAND), arm(THUMB_METACARPAL, END));
    add("thumb-radial-abduction", Support.HAND_ON_TABLE, Rotation.PALM_DOWN)
        .seen(View.BACK_OF_HAND)
        .pose(ELBOW_FLEXION, 90)
        .pose(FOREARM_PRONATION, 90)
        .goniometer(THUMB_METACARPAL, 0, DORSAL, index(HAND), arm(THUMB_METACARPAL, END));
  }

  private void hand() {
    add(HandItems.OPPOSITION_GROUP, Support.HAND_ON_TABLE, Rotation.PALM_UP)
        .seen(View.PALM)
        .pose(ELBOW_FLEXION, 90)
        .pose(FOREARM_PRONATION, -90)
        .pose(THUMB_OPPOSITION, 60)
        .ruler();
    add(HandItems.CREASE_GROUP, Support.HAND_ON_TABLE, Rotation.PALM_UP)
        .seen(View.THUMB_SIDE)
        .pose(ELBOW_FLEXION, 90)
        .pose(FOREARM_PRONATION, -90)
        .pose(FINGER_MP_FLEXION, 70)
        .pose(FINGER_PIP_FLEXION, 80)
        .pose(FINGER_DIP_FLEXION, 45)
        .ruler();
    add(HandItems.SPAN_GROUP, Support.HAND_ON_TABLE, Rotation.PALM_DOWN)
        .seen(View.BACK_OF_HAND)
        .pose(ELBOW_FLEXION, 90)
        .pose(FOREARM_PRONATION, 90)
        .pose(FINGER_SPREAD, 20)
        .pose(THUMB_RADIAL_ABDUCTION, 50)
        .ruler();
  }

  /** Which way an arm of the goniometer points; the kind is set where it is used. */
  private static Mark arm(Mark.Segment segment, Mark.Aspect toward) {
    return new Mark(Mark.Kind.MOVING_ARM, segment, 1, toward);
  }

  private static Mark index(Mark.Segment segment) {
    return new Mark(Mark.Kind.MOVING_ARM, segment, 1, END, Set.of(Digit.INDEX));
  }

  private static Mark as(Mark.Kind kind, Mark arm) {
    return new Mark(kind, arm.segment(), arm.along(), arm.aspect(), arm.digits());
  }

  private Draft add(String group, Support support, Rotation rotation) {
    return new Draft(group, new Position(Body.SITTING, support, rotation));
  }

  private final class Draft {
    private final String group;
    private final Position position;
    private Pose pose = Pose.neutral();
    private View view = View.FITTING;

    private Draft(String group, Position position) {
      this.group = group;
      this.position = position;
    }

    Draft pose(Pose.Joint joint, int degrees) {
      pose = pose.with(joint, degrees);
      return this;
    }

    Draft seen(View from) {
      view = from;
      return this;
    }

    void goniometer(
        Mark.Segment at, double along, Mark.Aspect aspect, Mark stationary, Mark moving) {
      finish(
          GONIOMETER,
          List.of(
              new Mark(Mark.Kind.AXIS, at, along, aspect),
              as(Mark.Kind.STATIONARY_ARM, stationary),
              as(Mark.Kind.MOVING_ARM, moving)));
    }

    void ruler() {
      finish(RULER, List.of());
    }

    private void finish(List<Topic> topics, List<Mark> marks) {
      ArrayList<Line> lines = new ArrayList<>();
      Picture picture = new Picture(pose, marks, view);
      topics.forEach(topic -> lines.add(new Line(topic, "guide." + group + "." + topic.code())));
      guides.put(
          group,
          new Guide(
              Optional.of(position),
              Optional.empty(),
              lines,
              picture,
              Sweeps.endFeel(group, picture),
              Sweeps.of(group, results)));
    }
  }
}
