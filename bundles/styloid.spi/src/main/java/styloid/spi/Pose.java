package styloid.spi;

import java.util.Map;
import styloid.model.Codes;

/**
 * Joint angles of a limb to be drawn, in degrees from the neutral position; joints not named are at
 * zero. Flexion, abduction, pronation, radial deviation and inward rotation are positive.
 */
public record Pose(Map<Joint, Integer> degrees) {
  /** The joints a pose can set; finger joints are set for all four fingers alike. */
  public enum Joint {
    SHOULDER_FLEXION,
    SHOULDER_ABDUCTION,
    SHOULDER_INWARD_ROTATION,
    ELBOW_FLEXION,
    FOREARM_PRONATION,
    WRIST_FLEXION,
    WRIST_RADIAL_DEVIATION,
    FINGER_MP_FLEXION,
    FINGER_PIP_FLEXION,
    FINGER_DIP_FLEXION,
    FINGER_SPREAD,
    THUMB_RADIAL_ABDUCTION,
    THUMB_PALMAR_ABDUCTION,
    THUMB_OPPOSITION,
    THUMB_MP_FLEXION,
    THUMB_IP_FLEXION;

    public String code() {
      return Codes.of(this);
    }
  }

  public Pose {
    degrees = Map.copyOf(degrees);
    degrees.forEach(
        (joint, angle) -> {
          if (angle < -180 || angle > 180) {
            throw new IllegalArgumentException(joint + " cannot be " + angle + " degrees");
          }
        });
  }

  /** All joints neutral. */
  public static Pose neutral() {
    return new Pose(Map.of());
  }
}
