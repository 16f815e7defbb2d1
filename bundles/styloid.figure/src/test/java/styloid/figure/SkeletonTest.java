package styloid.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Digit;
import styloid.model.Side;
import styloid.spi.Mark.Segment;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;

class SkeletonTest {
  private static final Vec LATERAL = new Vec(-1, 0, 0);
  private static final Vec FRONT = new Vec(0, 0, 1);
  private static final Vec UP = new Vec(0, 1, 0);

  private static Frame frame(Segment segment, Pose pose) {
    return Skeleton.of(pose).bone(segment, Digit.NONE).frame(1);
  }

  private static void points(Vec expected, Vec actual, String what) {
    assertEquals(1, expected.dot(actual), 1e-9, what + " points to " + actual);
  }

  @Test
  void bonesKeepTheirLengthsInAnyPose() {
    Random chance = new Random(7);
    Skeleton rest = Skeleton.of(Pose.neutral());
    for (int i = 0; i < 300; i++) {
      EnumMap<Joint, Integer> angles = new EnumMap<>(Joint.class);
      for (Joint joint : Joint.values()) {
        if (joint != Joint.PALM_CUPPING) {
          angles.put(joint, chance.nextInt(181) - 90);
        }
      }
      Skeleton posed = Skeleton.of(new Pose(angles));
      for (Segment segment : Segment.values()) {
        for (Digit digit : Digit.values()) {
          assertEquals(
              rest.bone(segment, digit).length(),
              posed.bone(segment, digit).length(),
              1e-9,
              segment + " " + digit);
        }
      }
    }
  }

  @Test
  void framesStaySquareAndRightHanded() {
    Pose pose =
        new Pose(
            Map.of(
                Joint.SHOULDER_FLEXION, 40,
                Joint.SHOULDER_ABDUCTION, 70,
                Joint.ELBOW_FLEXION, 80,
                Joint.FOREARM_PRONATION, 33,
                Joint.WRIST_FLEXION, -20,
                Joint.THUMB_OPPOSITION, 45));
    for (Segment segment : Segment.values()) {
      Frame frame = frame(segment, pose);
      points(frame.radial(), frame.distal().cross(frame.volar()), segment.code());
    }
  }

  /** Palm to the front with the arm hanging is the anatomical position: the thumb is lateral. */
  @Test
  void supinationTurnsPalmForwardAndThumbOutward() {
    Pose supinated = Pose.neutral().with(Joint.FOREARM_PRONATION, -90);
    points(FRONT, frame(Segment.HAND, supinated).volar(), "palm");
    points(LATERAL, frame(Segment.HAND, supinated).radial(), "thumb side");
    points(FRONT, frame(Segment.HAND, Pose.neutral()).radial(), "thumb side in mid-rotation");
  }

  @ParameterizedTest
  @CsvSource({"-90, 1", "0, 0", "90, -1"})
  void palmLooksUpOrDownWithTheForearmLevel(int pronation, int up) {
    Pose pose =
        Pose.neutral().with(Joint.ELBOW_FLEXION, 90).with(Joint.FOREARM_PRONATION, pronation);
    assertEquals(up, frame(Segment.HAND, pose).volar().dot(UP), 1e-9);
    points(FRONT, frame(Segment.FOREARM, pose).distal(), "forearm");
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # joint, degrees, x, y, z of the upper arm's direction
          shoulder-flexion, 90, 0, 0, 1
          shoulder-flexion, -90, 0, 0, -1
          shoulder-flexion, 180, 0, 1, 0
          shoulder-abduction, 90, -1, 0, 0
          """)
  void shoulderCarriesTheArmTheWayItsNameSays(
      String joint, int degrees, double x, double y, double z) {
    Pose pose = Pose.neutral().with(styloid.model.Codes.parse(Joint.class, joint), degrees);
    points(new Vec(x, y, z), frame(Segment.UPPER_ARM, pose).distal(), joint);
  }

  @Test
  void horizontalAdductionCarriesTheRaisedArmForward() {
    Pose pose = Pose.neutral().with(Joint.SHOULDER_ABDUCTION, 90).with(Joint.SHOULDER_FLEXION, 90);
    points(FRONT, frame(Segment.UPPER_ARM, pose).distal(), "arm");
  }

  @Test
  void inwardRotationCarriesTheBentForearmAcrossTheBody() {
    Pose pose =
        Pose.neutral().with(Joint.ELBOW_FLEXION, 90).with(Joint.SHOULDER_INWARD_ROTATION, 90);
    points(LATERAL.times(-1), frame(Segment.FOREARM, pose).distal(), "forearm");
  }

  @Test
  void thumbIsOnTheThumbSideAndFingersInOrder() {
    for (int pronation = -90; pronation <= 90; pronation += 30) {
      Skeleton skeleton = Skeleton.of(Pose.neutral().with(Joint.FOREARM_PRONATION, pronation));
      Bone hand = skeleton.bone(Segment.HAND, Digit.NONE);
      Vec radial = hand.start().radial();
      double before = Double.POSITIVE_INFINITY;
      for (Digit digit : new Digit[] {Digit.INDEX, Digit.MIDDLE, Digit.RING, Digit.LITTLE}) {
        double here = skeleton.distal(Segment.DISTAL_PHALANX, digit).minus(hand.from()).dot(radial);
        assertTrue(here < before, digit + " lies beyond its neighbour");
        before = here;
      }
      Vec tip = skeleton.distal(Segment.THUMB_DISTAL_PHALANX, Digit.NONE);
      Vec knuckle = skeleton.proximal(Segment.PROXIMAL_PHALANX, Digit.INDEX);
      assertTrue(tip.minus(knuckle).dot(radial) > 0, "thumb beyond the index finger");
    }
  }

  @Test
  void oppositionBringsTheThumbBeforeThePalmWithItsPadToTheFingers() {
    Skeleton rest = Skeleton.of(Pose.neutral());
    Skeleton opposed = Skeleton.of(Pose.neutral().with(Joint.THUMB_OPPOSITION, 60));
    Frame hand = rest.bone(Segment.HAND, Digit.NONE).start();
    Vec move =
        opposed
            .distal(Segment.THUMB_DISTAL_PHALANX, Digit.NONE)
            .minus(rest.distal(Segment.THUMB_DISTAL_PHALANX, Digit.NONE));
    assertTrue(move.dot(hand.volar()) > 0.03, "off the palm");
    assertTrue(move.dot(hand.radial()) < -0.01, "across the palm");
  }

  @Test
  void oneFingerCanBendApartFromTheOthers() {
    Pose pose =
        Pose.neutral()
            .with(Joint.FINGER_PIP_FLEXION, 90)
            .with(Joint.FINGER_PIP_FLEXION, Digit.RING, 0);
    Skeleton skeleton = Skeleton.of(pose);
    Vec bent = skeleton.bone(Segment.MIDDLE_PHALANX, Digit.MIDDLE).start().distal();
    Bone ring = skeleton.bone(Segment.MIDDLE_PHALANX, Digit.RING);
    assertEquals(
        0, bent.dot(skeleton.bone(Segment.PROXIMAL_PHALANX, Digit.MIDDLE).start().distal()), 1e-9);
    points(
        skeleton.bone(Segment.PROXIMAL_PHALANX, Digit.RING).start().distal(),
        ring.start().distal(),
        "ring finger");
  }

  @Test
  void leftArmIsTheExactMirrorOfTheRight() {
    var right = Arms.outlines(Side.RIGHT);
    var left = Arms.outlines(Side.LEFT);
    for (int i = 0; i < right.size(); i++) {
      for (int k = 0; k < right.get(i).size(); k++) {
        Spot spot = right.get(i).get(k);
        assertEquals(new Spot(-spot.x(), spot.y()), left.get(i).get(k));
      }
    }
    assertTrue(Arms.joint(Side.RIGHT, Segment.UPPER_ARM, Digit.NONE).x() < -0.1);
    assertTrue(
        Arms.end(Side.RIGHT, Segment.THUMB_DISTAL_PHALANX, Digit.NONE).x()
            < Arms.end(Side.RIGHT, Segment.DISTAL_PHALANX, Digit.LITTLE).x(),
        "palms to the front, the thumbs point away from the body");
  }
}
