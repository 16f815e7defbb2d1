package styloid.spi;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import styloid.model.Codes;
import styloid.model.Digit;

/**
 * Joint angles of a limb to be drawn, in degrees from the neutral position; joints not named are at
 * zero. Flexion, abduction, pronation, radial deviation and inward rotation are positive. With the
 * arm raised to the side, shoulder flexion carries it forward (horizontal adduction). Zero of the
 * forearm is mid-rotation, zero of the thumb beside the index finger.
 *
 * @param degrees angles of the limb; finger joints for all four fingers alike
 * @param fingers angles of single fingers that differ from those of all four
 */
public record Pose(Map<Joint, Integer> degrees, Map<Digit, Map<Joint, Integer>> fingers) {
  /** The joints a pose can set; finger joints are set for all four fingers alike. */
  public enum Joint {
    /** Raising (positive) or lowering the shoulder girdle. */
    GIRDLE_ELEVATION,
    /** Shoulder blade round the ribs to the front (positive) or back to the spine. */
    GIRDLE_PROTRACTION,
    SHOULDER_FLEXION,
    SHOULDER_ABDUCTION,
    SHOULDER_INWARD_ROTATION,
    ELBOW_FLEXION,
    FOREARM_PRONATION,
    WRIST_FLEXION,
    WRIST_RADIAL_DEVIATION,
    /** Metacarpals of ring and little finger brought forward, as in cupping the palm. */
    PALM_CUPPING,
    FINGER_MP_FLEXION,
    FINGER_PIP_FLEXION,
    FINGER_DIP_FLEXION,
    FINGER_SPREAD,
    THUMB_RADIAL_ABDUCTION,
    THUMB_PALMAR_ABDUCTION,
    THUMB_OPPOSITION,
    THUMB_MP_FLEXION,
    THUMB_IP_FLEXION;

    private static final Set<Joint> OF_FINGERS =
        Set.of(FINGER_MP_FLEXION, FINGER_PIP_FLEXION, FINGER_DIP_FLEXION, FINGER_SPREAD);

    public String code() {
      return Codes.of(this);
    }

    /** Whether each finger has one of its own. */
    public boolean ofFingers() {
      return OF_FINGERS.contains(this);
    }
  }

  public Pose {
    degrees = Map.copyOf(degrees);
    degrees.forEach(Pose::check);
    TreeMap<Digit, Map<Joint, Integer>> apart = new TreeMap<>();
    fingers.forEach((finger, angles) -> apart.put(finger, apart(finger, angles)));
    fingers = Map.copyOf(apart);
  }

  /** All fingers alike. */
  public Pose(Map<Joint, Integer> degrees) {
    this(degrees, Map.of());
  }

  private static Map<Joint, Integer> apart(Digit finger, Map<Joint, Integer> angles) {
    if (finger == Digit.THUMB || finger == Digit.NONE) {
      throw new IllegalArgumentException(finger + " is no finger: set its joints for the limb");
    }
    angles.forEach(
        (joint, angle) -> {
          if (!joint.ofFingers()) {
            throw new IllegalArgumentException(joint + " is no joint of a finger");
          }
          check(joint, angle);
        });
    return Map.copyOf(angles);
  }

  private static void check(Joint joint, int angle) {
    if (angle < -180 || angle > 180) {
      throw new IllegalArgumentException(joint + " cannot be " + angle + " degrees");
    }
  }

  /** All joints neutral. */
  public static Pose neutral() {
    return new Pose(Map.of());
  }

  /** Angle of a joint; of a finger joint that which holds for all. */
  public int of(Joint joint) {
    return degrees.getOrDefault(joint, 0);
  }

  /** Angle of a joint of one finger. */
  public int of(Joint joint, Digit finger) {
    return fingers.getOrDefault(finger, Map.of()).getOrDefault(joint, of(joint));
  }

  /** The same with one joint set. */
  public Pose with(Joint joint, int angle) {
    EnumMap<Joint, Integer> all = new EnumMap<>(Joint.class);
    all.putAll(degrees);
    all.put(joint, angle);
    return new Pose(all, fingers);
  }

  /** The same with one joint of one finger set. */
  public Pose with(Joint joint, Digit finger, int angle) {
    EnumMap<Joint, Integer> own = new EnumMap<>(Joint.class);
    own.putAll(fingers.getOrDefault(finger, Map.of()));
    own.put(joint, angle);
    TreeMap<Digit, Map<Joint, Integer>> all = new TreeMap<>(fingers);
    all.put(finger, own);
    return new Pose(degrees, all);
  }
}
