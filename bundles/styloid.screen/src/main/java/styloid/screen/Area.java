package styloid.screen;

import static styloid.model.Region.ELBOW;
import static styloid.model.Region.FINGERS;
import static styloid.model.Region.FOREARM;
import static styloid.model.Region.HAND;
import static styloid.model.Region.LIMB;
import static styloid.model.Region.SHOULDER;
import static styloid.model.Region.THUMB;
import static styloid.model.Region.WRIST;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.DigitJoint;
import styloid.model.Region;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;
import styloid.spi.Position.Support;

/**
 * What is looked at together, proximal to distal.
 *
 * @param loads a limit on active motion of one of these withholds the area
 * @param motions ids of its motions, actions or reaches; where goniometry or grading has the same
 *     motion, its id begins with the same words
 */
record Area(
    String id,
    Region region,
    Set<Region> loads,
    Support support,
    Map<Joint, Integer> pose,
    List<String> motions) {

  private static final Map<String, DigitJoint> JOINTS =
      Map.ofEntries(
          Map.entry("mp-flexion", DigitJoint.MP),
          Map.entry("mp-extension", DigitJoint.MP),
          Map.entry("pip-flexion", DigitJoint.PIP),
          Map.entry("pip-extension", DigitJoint.PIP),
          Map.entry("dip-flexion", DigitJoint.DIP),
          Map.entry("dip-extension", DigitJoint.DIP),
          Map.entry("finger-abduction", DigitJoint.MP),
          Map.entry("finger-adduction", DigitJoint.MP),
          Map.entry("thumb-palmar-abduction", DigitJoint.CMC),
          Map.entry("thumb-radial-abduction", DigitJoint.CMC),
          Map.entry("thumb-adduction", DigitJoint.CMC),
          Map.entry("thumb-mp-flexion", DigitJoint.MP),
          Map.entry("thumb-mp-extension", DigitJoint.MP),
          Map.entry("thumb-ip-flexion", DigitJoint.IP),
          Map.entry("thumb-ip-extension", DigitJoint.IP));

  /** Every area in the order it is looked at. */
  static List<Area> all() {
    return List.of(
        new Area(
            "shoulder",
            SHOULDER,
            Set.of(SHOULDER),
            Support.FREE,
            Map.of(Joint.SHOULDER_FLEXION, 120),
            List.of(
                "shoulder-flexion",
                "shoulder-extension",
                "shoulder-abduction",
                "shoulder-adduction",
                "shoulder-horizontal-abduction",
                "shoulder-horizontal-adduction",
                "shoulder-internal-rotation",
                "shoulder-external-rotation")),
        new Area(
            "elbow",
            ELBOW,
            Set.of(ELBOW),
            Support.FREE,
            Map.of(Joint.ELBOW_FLEXION, 90, Joint.FOREARM_PRONATION, -80),
            List.of("elbow-flexion", "elbow-extension")),
        new Area(
            "forearm",
            FOREARM,
            Set.of(FOREARM),
            Support.ELBOW_BENT,
            Map.of(Joint.ELBOW_FLEXION, 90, Joint.FOREARM_PRONATION, 60),
            List.of("forearm-pronation", "forearm-supination")),
        new Area(
            "wrist",
            WRIST,
            Set.of(WRIST),
            Support.ELBOW_BENT,
            Map.of(Joint.ELBOW_FLEXION, 90, Joint.WRIST_FLEXION, -50),
            List.of(
                "wrist-flexion",
                "wrist-extension",
                "wrist-radial-deviation",
                "wrist-ulnar-deviation")),
        new Area(
            "fingers",
            FINGERS,
            Set.of(FINGERS),
            Support.ELBOW_BENT,
            Map.of(Joint.ELBOW_FLEXION, 90, Joint.FINGER_SPREAD, 20),
            List.of(
                "mp-flexion",
                "mp-extension",
                "pip-flexion",
                "pip-extension",
                "dip-flexion",
                "dip-extension",
                "finger-abduction",
                "finger-adduction")),
        new Area(
            "thumb",
            THUMB,
            Set.of(THUMB),
            Support.ELBOW_BENT,
            Map.of(Joint.ELBOW_FLEXION, 90, Joint.THUMB_PALMAR_ABDUCTION, 45),
            List.of(
                "thumb-palmar-abduction",
                "thumb-radial-abduction",
                "thumb-adduction",
                "thumb-mp-flexion",
                "thumb-mp-extension",
                "thumb-ip-flexion",
                "thumb-ip-extension")),
        new Area(
            "fists",
            HAND,
            Set.of(FINGERS),
            Support.ELBOW_BENT,
            Map.of(
                Joint.ELBOW_FLEXION, 90,
                Joint.FINGER_MP_FLEXION, 85,
                Joint.FINGER_PIP_FLEXION, 100,
                Joint.FINGER_DIP_FLEXION, 70),
            List.of("full-fist", "hook-fist", "straight-fist")),
        new Area(
            "opposition",
            HAND,
            Set.of(THUMB, FINGERS),
            Support.ELBOW_BENT,
            Map.of(Joint.ELBOW_FLEXION, 90, Joint.THUMB_OPPOSITION, 60),
            List.of("thumb-opposition")),
        new Area(
            "reaches",
            LIMB,
            Set.of(SHOULDER, ELBOW, FOREARM),
            Support.FREE,
            Map.of(
                Joint.SHOULDER_FLEXION, 60, Joint.ELBOW_FLEXION, 130, Joint.FOREARM_PRONATION, -60),
            List.of(
                "reach-mouth",
                "reach-opposite-shoulder",
                "reach-behind-head",
                "reach-behind-back")));
  }

  /** Which joint of a digit a motion of this area is about; empty where it is about none. */
  Optional<DigitJoint> joint(String motion) {
    return Optional.ofNullable(JOINTS.get(motion));
  }

  Pose picture() {
    return new Pose(pose);
  }
}
