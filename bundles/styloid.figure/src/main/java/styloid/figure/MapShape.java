package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import styloid.model.Digit;
import styloid.model.DigitJoint;
import styloid.model.LimbPart;
import styloid.model.Side;
import styloid.spi.Mark.Segment;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;

/**
 * Where everything of the limb map lies, x to the right and y down, on a sheet of {@link #WIDTH} by
 * {@link #HEIGHT}. Both arms are seen from the front, palms forward, the right arm at the left. The
 * hands are drawn larger than the arms, so that the joints of the fingers stand apart: targets of
 * {@link #TARGET} across do not touch each other.
 */
public final class MapShape {
  public static final double WIDTH = 312;
  public static final double HEIGHT = 337;
  public static final double TARGET = 24;

  private static final Pose ARM =
      new Pose(Map.of(Joint.SHOULDER_ABDUCTION, 14, Joint.FOREARM_PRONATION, -90));
  private static final Pose HAND =
      new Pose(
          Map.of(
              Joint.FOREARM_PRONATION, -90,
              Joint.FINGER_SPREAD, 4,
              Joint.THUMB_RADIAL_ABDUCTION, 5));
  private static final Camera FRONT =
      Camera.looking(new Vec(0, 0, 1), new Vec(0, 1, 0), Side.RIGHT);

  /** Units of the sheet for a metre of the arm and of the hand. */
  private static final double ARM_ACROSS = 260;

  private static final double ARM_DOWN = 222;
  private static final double HAND_ACROSS = 1250;
  private static final double HAND_DOWN = 900;

  private static final double SHOULDER_Y = 21;
  private static final double HAND_Y = 160;

  /** Middle of the sheet to the middle of the wrist of the large hand. */
  private static final double HAND_X = 76;

  private static final Skeleton ARM_BONES = Skeleton.of(ARM);
  private static final Skeleton HAND_BONES = Skeleton.of(HAND);

  private MapShape() {}

  /** The middle of the target of a part. */
  public static Spot centre(LimbPart part, Side side) {
    return over(side, right(part));
  }

  private static Spot right(LimbPart part) {
    Spot shoulder = arm(ARM_BONES.proximal(Segment.UPPER_ARM, Digit.NONE));
    Spot elbow = arm(ARM_BONES.proximal(Segment.FOREARM, Digit.NONE));
    Spot wrist = arm(ARM_BONES.distal(Segment.FOREARM, Digit.NONE));
    return switch (part) {
      case LIMB -> between(shoulder, elbow, 0.5);
      case SHOULDER -> shoulder;
      case ELBOW -> elbow;
      case FOREARM -> between(elbow, wrist, 0.5);
      case WRIST -> wrist;
      case HAND -> between(joint(Segment.HAND, Digit.MIDDLE, 0), knuckle(), 0.56);
      default -> ofDigit(part.digit(), part.joint().orElseThrow());
    };
  }

  private static Spot knuckle() {
    return joint(Segment.HAND, Digit.MIDDLE, 1);
  }

  /** A little distal of the joint, where the fingers stand farther apart. */
  private static Spot ofDigit(Digit digit, DigitJoint joint) {
    boolean thumb = digit == Digit.THUMB;
    return switch (joint) {
      case CMC -> joint(Segment.THUMB_METACARPAL, digit, 0.1);
      case MP ->
          thumb
              ? joint(Segment.THUMB_PROXIMAL_PHALANX, digit, 0)
              : joint(Segment.PROXIMAL_PHALANX, digit, 0.12);
      case PIP -> joint(Segment.MIDDLE_PHALANX, digit, 0);
      case DIP -> joint(Segment.DISTAL_PHALANX, digit, 0.4);
      case IP -> joint(Segment.THUMB_DISTAL_PHALANX, digit, 0.15);
    };
  }

  private static Spot joint(Segment segment, Digit digit, double along) {
    return hand(HAND_BONES.bone(segment, digit).at(along));
  }

  /** Polygons that together are the arm down to the wrist. */
  public static List<List<Spot>> arm(Side side) {
    return polygons(ARM_BONES, side, true);
  }

  /** Polygons that together are the hand. */
  public static List<List<Spot>> hand(Side side) {
    return polygons(HAND_BONES, side, false);
  }

  private static List<List<Spot>> polygons(Skeleton bones, Side side, boolean ofArm) {
    ArrayList<List<Spot>> all = new ArrayList<>();
    for (Part part : Flesh.of(bones)) {
      boolean arm = part.segment() == Segment.UPPER_ARM || part.segment() == Segment.FOREARM;
      if (arm == ofArm) {
        for (List<Spot> outline : part.outlines(FRONT)) {
          all.add(
              outline.stream()
                  .map(spot -> over(side, ofArm ? armAt(spot) : handAt(spot)))
                  .toList());
        }
      }
    }
    return all;
  }

  private static Spot arm(Vec point) {
    return armAt(FRONT.see(point));
  }

  private static Spot hand(Vec point) {
    return handAt(FRONT.see(point));
  }

  private static Spot armAt(Spot seen) {
    Spot shoulder = FRONT.see(ARM_BONES.proximal(Segment.UPPER_ARM, Digit.NONE));
    return new Spot(
        WIDTH / 2 + seen.x() * ARM_ACROSS, SHOULDER_Y + (shoulder.y() - seen.y()) * ARM_DOWN);
  }

  private static Spot handAt(Spot seen) {
    Spot wrist = FRONT.see(HAND_BONES.proximal(Segment.HAND, Digit.NONE));
    return new Spot(
        WIDTH / 2 - HAND_X + (seen.x() - wrist.x()) * HAND_ACROSS,
        HAND_Y + (wrist.y() - seen.y()) * HAND_DOWN);
  }

  private static Spot between(Spot from, Spot to, double share) {
    return from.plus(to.minus(from).times(share));
  }

  private static Spot over(Side side, Spot spot) {
    return side == Side.LEFT ? new Spot(WIDTH - spot.x(), spot.y()) : spot;
  }
}
