package styloid.goniometry;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import styloid.model.Digit;
import styloid.model.DigitJoint;
import styloid.model.Item;
import styloid.model.Region;

/**
 * Every joint plane measured, proximal to distal, with limits of what can be entered. The limits
 * are common practice, wide enough for the reference values of infants and stiff joints.
 */
final class Planes {
  private static final Set<Digit> THUMB = Set.of(Digit.THUMB);

  static final List<Plane> ALL =
      List.of(
          limb("shoulder-sagittal", "S", Region.SHOULDER)
              .ends(
                  end("shoulder-extension", -90, -10, 95, 120),
                  end("shoulder-flexion", -30, 0, 195, 210)),
          limb("shoulder-frontal", "F", Region.SHOULDER)
              .ends(
                  end("shoulder-abduction", -30, 0, 195, 210),
                  end("shoulder-adduction", -90, -10, 60, 90)),
          limb("shoulder-transverse", "T", Region.SHOULDER)
              .ends(
                  end("shoulder-horizontal-abduction", -90, -20, 60, 120),
                  end("shoulder-horizontal-adduction", -30, 0, 145, 170)),
          limb("shoulder-rotation", "R", Region.SHOULDER)
              .ends(
                  end("shoulder-external-rotation", -90, -20, 135, 150),
                  end("shoulder-internal-rotation", -60, 0, 110, 130)),
          limb("elbow", "S", Region.ELBOW)
              .ends(
                  pastNeutral("elbow-extension", -150, -60, 20, 40),
                  end("elbow-flexion", -20, 20, 160, 170)),
          limb("forearm", "R", Region.FOREARM)
              .ends(
                  end("forearm-supination", -90, -30, 110, 130),
                  end("forearm-pronation", -90, -30, 110, 130)),
          limb("wrist-sagittal", "S", Region.WRIST)
              .ends(
                  end("wrist-extension", -90, -40, 95, 120),
                  end("wrist-flexion", -90, -30, 100, 120)),
          limb("wrist-frontal", "F", Region.WRIST)
              .ends(
                  end("wrist-radial-deviation", -50, -20, 35, 60),
                  end("wrist-ulnar-deviation", -50, -15, 55, 80)),
          fingers("finger-mp", DigitJoint.MP)
              .ends(
                  pastNeutral("mp-extension", -90, -60, 50, 90),
                  end("mp-flexion", -40, 0, 110, 130)),
          fingers("finger-pip", DigitJoint.PIP)
              .ends(
                  pastNeutral("pip-extension", -120, -70, 20, 45),
                  end("pip-flexion", -30, 0, 120, 135)),
          fingers("finger-dip", DigitJoint.DIP)
              .ends(
                  pastNeutral("dip-extension", -90, -45, 25, 60),
                  end("dip-flexion", -30, 0, 95, 110)),
          thumb("thumb-cmc", "S", DigitJoint.CMC)
              .ends(
                  end("thumb-cmc-extension", -40, -15, 60, 80),
                  end("thumb-cmc-flexion", -40, -10, 50, 70)),
          thumb("thumb-mp", "S", DigitJoint.MP)
              .ends(
                  pastNeutral("thumb-mp-extension", -80, -40, 30, 70),
                  end("thumb-mp-flexion", -40, 0, 80, 100)),
          thumb("thumb-ip", "S", DigitJoint.IP)
              .ends(
                  pastNeutral("thumb-ip-extension", -80, -40, 40, 90),
                  end("thumb-ip-flexion", -30, 0, 95, 110)),
          thumb("thumb-palmar-abduction", "S", DigitJoint.CMC)
              .ends(end("thumb-palmar-abduction", 0, 5, 80, 100)),
          thumb("thumb-radial-abduction", "F", DigitJoint.CMC)
              .ends(end("thumb-radial-abduction", 0, 5, 80, 100)));

  private Planes() {}

  static Stream<Motion> motions() {
    return ALL.stream().flatMap(plane -> plane.ends().stream());
  }

  /**
   * The motion of this name.
   *
   * @throws IllegalArgumentException when there is none: a fault of a table
   */
  static Motion motion(String id) {
    return motions()
        .filter(motion -> motion.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no motion is called " + id));
  }

  private static Start limb(String id, String letter, Region region) {
    return new Start(id, letter, region, Item.NO_DIGIT, Optional.empty());
  }

  private static Start fingers(String id, DigitJoint joint) {
    return new Start(id, "S", Region.FINGERS, Item.FINGERS, Optional.of(joint));
  }

  private static Start thumb(String id, String letter, DigitJoint joint) {
    return new Start(id, letter, Region.THUMB, THUMB, Optional.of(joint));
  }

  private static End end(String id, int min, int likelyMin, int likelyMax, int max) {
    return new End(id, false, min, likelyMin, likelyMax, max);
  }

  private static End pastNeutral(String id, int min, int likelyMin, int likelyMax, int max) {
    return new End(id, true, min, likelyMin, likelyMax, max);
  }

  private record End(
      String id, boolean pastNeutral, int min, int likelyMin, int likelyMax, int max) {}

  private record Start(
      String id, String letter, Region region, Set<Digit> digits, Optional<DigitJoint> joint) {
    Plane ends(End... ends) {
      return new Plane(id, letter, region, Stream.of(ends).map(this::motion).toList());
    }

    private Motion motion(End end) {
      return Motion.of(
          end.id,
          region,
          digits,
          joint,
          end.pastNeutral,
          end.min,
          end.likelyMin,
          end.likelyMax,
          end.max);
    }
  }
}
