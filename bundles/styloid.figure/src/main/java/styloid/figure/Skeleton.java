package styloid.figure;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import styloid.model.Digit;
import styloid.spi.Mark.Segment;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;

/**
 * The bones of a right limb in a pose. Left is right in a mirror ({@link Vec#mirrored}); nothing
 * here knows a side. The origin lies midway between the shoulders.
 */
public final class Skeleton {
  /** Hanging arms seen from the front, palms to the front, a little away from the body. */
  public static final Pose STANDING =
      new Pose(
          Map.of(
              Joint.SHOULDER_ABDUCTION, 14,
              Joint.FOREARM_PRONATION, -90,
              Joint.FINGER_SPREAD, 4,
              Joint.THUMB_RADIAL_ABDUCTION, 22));

  private static final List<Digit> FINGERS =
      List.of(Digit.INDEX, Digit.MIDDLE, Digit.RING, Digit.LITTLE);

  /** How far each finger goes to the thumb side in spreading, against the angle of the pose. */
  private static final double[] SPREAD = {1, 0, -0.8, -1.6};

  /** Way of the shoulder blade along the ribs for a radian of the collarbone, in metres. */
  private static final double BLADE_GLIDE = 0.2;

  private static final Vec COLLARBONE = new Vec(-0.02, 0.01, 0.04);

  private final Map<Segment, Bone> limb = new EnumMap<>(Segment.class);
  private final Map<Digit, Map<Segment, Bone>> fingers = new HashMap<>();

  private Skeleton(Pose pose) {
    Vec shoulder = girdle(pose);
    arm(pose, shoulder);
    Bone forearm = limb.get(Segment.FOREARM);
    Frame hand =
        forearm
            .frame(1)
            .flexed(pose.of(Joint.WRIST_FLEXION))
            .deviated(pose.of(Joint.WRIST_RADIAL_DEVIATION));
    Vec wrist = forearm.to();
    limb.put(Segment.HAND, new Bone(wrist, hand, 0.46 * Proportions.HAND));
    for (int i = 0; i < FINGERS.size(); i++) {
      finger(pose, wrist, hand, i);
    }
    thumb(pose, wrist, hand);
  }

  public static Skeleton of(Pose pose) {
    return new Skeleton(pose);
  }

  /** Proximal end of a segment; of a segment of the fingers, that of this finger. */
  public Vec proximal(Segment segment, Digit digit) {
    return bone(segment, digit).from();
  }

  /** Distal end of a segment. */
  public Vec distal(Segment segment, Digit digit) {
    return bone(segment, digit).to();
  }

  /**
   * A bone; the hand of a finger is its metacarpal, the hand of no finger the middle of the palm.
   * Asked for a phalanx of no finger, it is that of the index finger.
   */
  Bone bone(Segment segment, Digit digit) {
    boolean ofFinger =
        segment == Segment.PROXIMAL_PHALANX
            || segment == Segment.MIDDLE_PHALANX
            || segment == Segment.DISTAL_PHALANX;
    Digit finger = ofFinger && !fingers.containsKey(digit) ? Digit.INDEX : digit;
    Bone own = fingers.getOrDefault(finger, Map.of()).get(segment);
    return own != null ? own : limb.get(segment);
  }

  private Vec girdle(Pose pose) {
    Vec resting = new Vec(-Proportions.HALF_SHOULDERS, 0, 0).minus(COLLARBONE);
    double up = Math.toRadians(pose.of(Joint.GIRDLE_ELEVATION));
    double forward = Math.toRadians(pose.of(Joint.GIRDLE_PROTRACTION));
    Vec raised =
        new Vec(
            resting.x() * Math.cos(up) + resting.y() * Math.sin(up),
            resting.y() * Math.cos(up) - resting.x() * Math.sin(up),
            resting.z());
    Vec turned =
        new Vec(
            raised.x() * Math.cos(forward) + raised.z() * Math.sin(forward),
            raised.y(),
            raised.z() * Math.cos(forward) - raised.x() * Math.sin(forward));
    Vec shoulder = COLLARBONE.plus(turned);
    // The blade glides round the ribs by more than the collarbone turns.
    Vec back = new Vec(0.035 - BLADE_GLIDE * forward, 0.045, -0.055);
    Frame blade = new Frame(new Vec(0.30, -1, -0.10).unit(), Vec.ZERO, Vec.ZERO);
    Vec radial = new Vec(-1, -0.30, -0.20);
    Vec square = radial.minus(blade.distal().times(radial.dot(blade.distal()))).unit();
    Frame flat = new Frame(blade.distal(), square.cross(blade.distal()), square);
    limb.put(Segment.SHOULDER_BLADE, new Bone(shoulder.plus(back), flat, 0.17));
    Frame upright = Frame.HANGING;
    limb.put(Segment.TRUNK, new Bone(new Vec(0, 0.03, 0), upright, Proportions.TRUNK));
    return shoulder;
  }

  private void arm(Pose pose, Vec shoulder) {
    Frame upper =
        Frame.HANGING
            .deviated(pose.of(Joint.SHOULDER_ABDUCTION))
            .flexed(pose.of(Joint.SHOULDER_FLEXION))
            .turned(pose.of(Joint.SHOULDER_INWARD_ROTATION));
    Bone arm = new Bone(shoulder, upper, Proportions.UPPER_ARM);
    Frame lower = upper.flexed(pose.of(Joint.ELBOW_FLEXION));
    double twist = 90 + pose.of(Joint.FOREARM_PRONATION);
    Vec wrist = arm.to().plus(lower.distal().times(Proportions.FOREARM));
    limb.put(Segment.UPPER_ARM, arm);
    limb.put(Segment.FOREARM, new Bone(arm.to(), wrist, lower, twist));
  }

  private void finger(Pose pose, Vec wrist, Frame hand, int i) {
    Digit digit = FINGERS.get(i);
    Proportions.Finger size = Proportions.FINGERS.get(i);
    double cup = pose.of(Joint.PALM_CUPPING) * Math.max(0, i - 1) / 2.0;
    Frame base = hand.flexed(cup);
    Vec knuckle =
        base.at(
            wrist,
            size.knuckleDistal(),
            size.knuckleVolar(),
            size.knuckleRadial() * (1 - cup / 150));
    Vec toKnuckle = knuckle.minus(hand.at(wrist, 0.012, 0, size.knuckleRadial() * 0.4));
    EnumMap<Segment, Bone> bones = new EnumMap<>(Segment.class);
    bones.put(Segment.HAND, new Bone(knuckle.minus(toKnuckle), knuckle, base, 0));
    Frame turned = base.turned(i == 3 ? cup * 0.8 : cup * 0.4);
    Frame proximal =
        turned
            .deviated(size.splay() + SPREAD[i] * pose.of(Joint.FINGER_SPREAD, digit))
            .flexed(pose.of(Joint.FINGER_MP_FLEXION, digit));
    Bone first = new Bone(knuckle, proximal, size.proximal());
    Frame middle = proximal.flexed(pose.of(Joint.FINGER_PIP_FLEXION, digit));
    Bone second = new Bone(first.to(), middle, size.middle());
    Frame distal = middle.flexed(pose.of(Joint.FINGER_DIP_FLEXION, digit));
    bones.put(Segment.PROXIMAL_PHALANX, first);
    bones.put(Segment.MIDDLE_PHALANX, second);
    bones.put(Segment.DISTAL_PHALANX, new Bone(second.to(), distal, size.distal()));
    fingers.put(digit, bones);
  }

  /**
   * Beside the index finger the nail of the thumb looks to the thumb side; opposition lifts it off
   * the palm, carries it across and turns its pad to the fingers.
   */
  private void thumb(Pose pose, Vec wrist, Frame hand) {
    double opposed = pose.of(Joint.THUMB_OPPOSITION);
    Frame metacarpal =
        hand.deviated(14 + pose.of(Joint.THUMB_RADIAL_ABDUCTION) - 0.35 * opposed)
            .flexed(12 + pose.of(Joint.THUMB_PALMAR_ABDUCTION) + 0.7 * opposed)
            .turned(62 + 0.35 * opposed);
    Vec base = hand.at(wrist, 0.016, 0.006, 0.024);
    Bone first = new Bone(base, metacarpal, Proportions.THUMB_METACARPAL);
    Frame proximal = metacarpal.flexed(pose.of(Joint.THUMB_MP_FLEXION) + 0.25 * opposed);
    Bone second = new Bone(first.to(), proximal, Proportions.THUMB_PROXIMAL);
    Frame distal = proximal.flexed(pose.of(Joint.THUMB_IP_FLEXION) + 0.15 * opposed);
    limb.put(Segment.THUMB_METACARPAL, first);
    limb.put(Segment.THUMB_PROXIMAL_PHALANX, second);
    limb.put(Segment.THUMB_DISTAL_PHALANX, new Bone(second.to(), distal, Proportions.THUMB_DISTAL));
  }
}
