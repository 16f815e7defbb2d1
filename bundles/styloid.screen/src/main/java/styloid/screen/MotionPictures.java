package styloid.screen;

import static java.util.Map.entry;

import java.util.List;
import java.util.Map;
import styloid.spi.Picture;
import styloid.spi.Picture.View;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;

/** The limb near the end of each motion, action or reach that is looked at. */
final class MotionPictures {
  private static final Pose ARM = Pose.neutral();
  private static final Pose BENT = ARM.with(Joint.ELBOW_FLEXION, 90);

  /** The thumb away, so that rotation shows. */
  private static final Pose TURNED = BENT.with(Joint.THUMB_RADIAL_ABDUCTION, 35);

  private static final Pose RAISED = ARM.with(Joint.SHOULDER_ABDUCTION, 90);
  private static final Pose PALM_UP = BENT.with(Joint.FOREARM_PRONATION, -90);
  private static final Pose PALM_DOWN = BENT.with(Joint.FOREARM_PRONATION, 90);

  /** The thumb lies over the fingers. */
  private static final Pose FULL_FIST =
      fist(85, 100, 70)
          .with(Joint.THUMB_OPPOSITION, 30)
          .with(Joint.THUMB_RADIAL_ABDUCTION, 14)
          .with(Joint.THUMB_MP_FLEXION, 32)
          .with(Joint.THUMB_IP_FLEXION, 43);

  private static final Map<String, Picture> PICTURES =
      Map.ofEntries(
          entry("shoulder-flexion", side(ARM.with(Joint.SHOULDER_FLEXION, 150))),
          entry("shoulder-extension", side(ARM.with(Joint.SHOULDER_FLEXION, -45))),
          entry("shoulder-abduction", seen(View.FRONT, ARM.with(Joint.SHOULDER_ABDUCTION, 150))),
          entry(
              "shoulder-adduction",
              seen(
                  View.FRONT,
                  ARM.with(Joint.SHOULDER_ABDUCTION, -20).with(Joint.SHOULDER_FLEXION, 20))),
          entry(
              "shoulder-horizontal-abduction",
              seen(View.HEAD, RAISED.with(Joint.SHOULDER_FLEXION, -30))),
          entry(
              "shoulder-horizontal-adduction",
              seen(View.HEAD, RAISED.with(Joint.SHOULDER_FLEXION, 110))),
          entry(
              "shoulder-internal-rotation",
              seen(
                  View.SIDE,
                  RAISED.with(Joint.ELBOW_FLEXION, 90).with(Joint.SHOULDER_INWARD_ROTATION, 60))),
          entry(
              "shoulder-external-rotation",
              seen(
                  View.SIDE,
                  RAISED.with(Joint.ELBOW_FLEXION, 90).with(Joint.SHOULDER_INWARD_ROTATION, -80))),
          entry(
              "elbow-flexion",
              side(ARM.with(Joint.ELBOW_FLEXION, 140).with(Joint.FOREARM_PRONATION, -90))),
          entry("elbow-extension", side(ARM.with(Joint.FOREARM_PRONATION, -90))),
          entry(
              "forearm-pronation", seen(View.FINGERTIPS, TURNED.with(Joint.FOREARM_PRONATION, 75))),
          entry(
              "forearm-supination",
              seen(View.FINGERTIPS, TURNED.with(Joint.FOREARM_PRONATION, -80))),
          entry("wrist-flexion", thumb(PALM_DOWN.with(Joint.WRIST_FLEXION, 65))),
          entry("wrist-extension", thumb(PALM_DOWN.with(Joint.WRIST_FLEXION, -60))),
          entry("wrist-radial-deviation", back(PALM_DOWN.with(Joint.WRIST_RADIAL_DEVIATION, 20))),
          entry("wrist-ulnar-deviation", back(PALM_DOWN.with(Joint.WRIST_RADIAL_DEVIATION, -32))),
          entry("mp-flexion", thumb(BENT.with(Joint.FINGER_MP_FLEXION, 80))),
          entry("mp-extension", thumb(BENT.with(Joint.FINGER_MP_FLEXION, -25))),
          entry("pip-flexion", thumb(BENT.with(Joint.FINGER_PIP_FLEXION, 95))),
          entry("pip-extension", thumb(BENT)),
          entry(
              "dip-flexion",
              thumb(BENT.with(Joint.FINGER_PIP_FLEXION, 60).with(Joint.FINGER_DIP_FLEXION, 65))),
          entry("dip-extension", thumb(BENT)),
          entry("finger-abduction", back(PALM_DOWN.with(Joint.FINGER_SPREAD, 18))),
          entry("finger-adduction", back(PALM_DOWN.with(Joint.FINGER_SPREAD, -2))),
          entry("thumb-palmar-abduction", thumb(BENT.with(Joint.THUMB_PALMAR_ABDUCTION, 40))),
          entry("thumb-radial-abduction", back(PALM_DOWN.with(Joint.THUMB_RADIAL_ABDUCTION, 45))),
          entry("thumb-adduction", back(PALM_DOWN.with(Joint.THUMB_RADIAL_ABDUCTION, -2))),
          entry("thumb-mp-flexion", palm(PALM_UP.with(Joint.THUMB_MP_FLEXION, 50))),
          entry("thumb-mp-extension", palm(PALM_UP)),
          entry("thumb-ip-flexion", palm(PALM_UP.with(Joint.THUMB_IP_FLEXION, 70))),
          entry("thumb-ip-extension", palm(PALM_UP.with(Joint.THUMB_IP_FLEXION, -15))),
          entry("full-fist", thumb(FULL_FIST)),
          entry("hook-fist", thumb(fist(0, 100, 70).with(Joint.THUMB_RADIAL_ABDUCTION, 20))),
          entry("straight-fist", thumb(fist(85, 100, 0).with(Joint.THUMB_RADIAL_ABDUCTION, 20))),
          entry("thumb-opposition", palm(PALM_UP.with(Joint.THUMB_OPPOSITION, 65))),
          entry(
              "reach-mouth",
              seen(
                  View.SIDE,
                  reach(52, 2, 17, 130)
                      .with(Joint.FOREARM_PRONATION, -43)
                      .with(Joint.WRIST_FLEXION, 39))),
          entry(
              "reach-opposite-shoulder",
              seen(View.FRONT, reach(97, 27, 61, 122).with(Joint.GIRDLE_PROTRACTION, 20))),
          entry(
              "reach-behind-head",
              seen(View.BEHIND, reach(-20, 139, -95, 128).with(Joint.GIRDLE_ELEVATION, 12))),
          entry(
              "reach-behind-back",
              seen(View.BEHIND, reach(-24, 27, 88, 109).with(Joint.WRIST_FLEXION, 15))));

  private MotionPictures() {}

  static Picture of(String motion) {
    return PICTURES.get(motion);
  }

  private static Pose fist(int knuckles, int middle, int end) {
    return BENT.with(Joint.FINGER_MP_FLEXION, knuckles)
        .with(Joint.FINGER_PIP_FLEXION, middle)
        .with(Joint.FINGER_DIP_FLEXION, end);
  }

  private static Pose reach(int forward, int sideways, int inward, int elbow) {
    return ARM.with(Joint.SHOULDER_FLEXION, forward)
        .with(Joint.SHOULDER_ABDUCTION, sideways)
        .with(Joint.SHOULDER_INWARD_ROTATION, inward)
        .with(Joint.ELBOW_FLEXION, elbow);
  }

  private static Picture side(Pose pose) {
    return seen(View.SIDE, pose);
  }

  private static Picture thumb(Pose pose) {
    return seen(View.THUMB_SIDE, pose);
  }

  private static Picture back(Pose pose) {
    return seen(View.BACK_OF_HAND, pose);
  }

  private static Picture palm(Pose pose) {
    return seen(View.PALM, pose);
  }

  private static Picture seen(View view, Pose pose) {
    return new Picture(pose, List.of(), view);
  }
}
