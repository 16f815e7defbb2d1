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
import styloid.spi.Position.Support;

/**
 * What is looked at together, proximal to distal.
 *
 * @param loads a limit on active motion of one of these withholds the area
 * @param motions ids of its motions, actions or reaches; where goniometry or grading has the same
 *     motion, its id begins with the same words
 */
record Area(String id, Region region, Set<Region> loads, Support support, List<String> motions) {

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
            List.of("elbow-flexion", "elbow-extension")),
        new Area(
            "forearm",
            FOREARM,
            Set.of(FOREARM),
            Support.ELBOW_BENT,
            List.of("forearm-pronation", "forearm-supination")),
        new Area(
            "wrist",
            WRIST,
            Set.of(WRIST),
            Support.ELBOW_BENT,
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
            List.of("full-fist", "hook-fist", "straight-fist")),
        new Area(
            "opposition",
            HAND,
            Set.of(THUMB, FINGERS),
            Support.ELBOW_BENT,
            List.of("thumb-opposition")),
        new Area(
            "reaches",
            LIMB,
            Set.of(SHOULDER, ELBOW, FOREARM),
            Support.FREE,
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
}
