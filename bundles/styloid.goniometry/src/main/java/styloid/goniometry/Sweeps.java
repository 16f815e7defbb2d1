package styloid.goniometry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.ItemId;
import styloid.model.ResultId;
import styloid.spi.Guide;
import styloid.spi.Picture;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;
import styloid.spi.Sweep;

/** Which joint of the picture each measured angle moves. */
final class Sweeps {
  /** Angle between two metacarpals with the thumb of the picture at zero. */
  private static final int PALMAR_REST = -12;

  private static final int RADIAL_REST = -14;

  /**
   * A motion: its joint, whether the angle lowers the joint's, its zero, what is drawn at first.
   */
  private record Way(Joint joint, boolean reversed, int zero, int drawn) {
    static Way up(Joint joint, int drawn) {
      return new Way(joint, false, 0, drawn);
    }

    static Way down(Joint joint, int drawn) {
      return new Way(joint, true, 0, drawn);
    }
  }

  private static final Map<String, Way> WAYS =
      Map.ofEntries(
          Map.entry("shoulder-extension", Way.down(Joint.SHOULDER_FLEXION, 45)),
          Map.entry("shoulder-flexion", Way.up(Joint.SHOULDER_FLEXION, 110)),
          Map.entry("shoulder-abduction", Way.up(Joint.SHOULDER_ABDUCTION, 100)),
          Map.entry("shoulder-adduction", Way.down(Joint.SHOULDER_ABDUCTION, 0)),
          Map.entry("shoulder-horizontal-abduction", Way.down(Joint.SHOULDER_FLEXION, 30)),
          Map.entry("shoulder-horizontal-adduction", Way.up(Joint.SHOULDER_FLEXION, 90)),
          Map.entry("shoulder-external-rotation", Way.down(Joint.SHOULDER_INWARD_ROTATION, 60)),
          Map.entry("shoulder-internal-rotation", Way.up(Joint.SHOULDER_INWARD_ROTATION, 50)),
          Map.entry("elbow-extension", Way.down(Joint.ELBOW_FLEXION, 0)),
          Map.entry("elbow-flexion", Way.up(Joint.ELBOW_FLEXION, 110)),
          Map.entry("forearm-supination", Way.down(Joint.FOREARM_PRONATION, 70)),
          Map.entry("forearm-pronation", Way.up(Joint.FOREARM_PRONATION, 70)),
          Map.entry("wrist-extension", Way.down(Joint.WRIST_FLEXION, 50)),
          Map.entry("wrist-flexion", Way.up(Joint.WRIST_FLEXION, 60)),
          Map.entry("wrist-radial-deviation", Way.up(Joint.WRIST_RADIAL_DEVIATION, 20)),
          Map.entry("wrist-ulnar-deviation", Way.down(Joint.WRIST_RADIAL_DEVIATION, 30)),
          Map.entry("mp-extension", Way.down(Joint.FINGER_MP_FLEXION, 20)),
          Map.entry("mp-flexion", Way.up(Joint.FINGER_MP_FLEXION, 70)),
          Map.entry("pip-extension", Way.down(Joint.FINGER_PIP_FLEXION, 0)),
          Map.entry("pip-flexion", Way.up(Joint.FINGER_PIP_FLEXION, 80)),
          Map.entry("dip-extension", Way.down(Joint.FINGER_DIP_FLEXION, 0)),
          Map.entry("dip-flexion", Way.up(Joint.FINGER_DIP_FLEXION, 60)),
          Map.entry("thumb-cmc-extension", Way.up(Joint.THUMB_RADIAL_ABDUCTION, 30)),
          Map.entry("thumb-cmc-flexion", Way.down(Joint.THUMB_RADIAL_ABDUCTION, 15)),
          Map.entry("thumb-mp-extension", Way.down(Joint.THUMB_MP_FLEXION, 0)),
          Map.entry("thumb-mp-flexion", Way.up(Joint.THUMB_MP_FLEXION, 45)),
          Map.entry("thumb-ip-extension", Way.down(Joint.THUMB_IP_FLEXION, 10)),
          Map.entry("thumb-ip-flexion", Way.up(Joint.THUMB_IP_FLEXION, 60)),
          Map.entry(
              "thumb-palmar-abduction",
              new Way(Joint.THUMB_PALMAR_ABDUCTION, false, PALMAR_REST, 45)),
          Map.entry(
              "thumb-radial-abduction",
              new Way(Joint.THUMB_RADIAL_ABDUCTION, false, RADIAL_REST, 55)));

  private Sweeps() {}

  /** Sweeps of a plane's motions, active and passive; none where the group is no plane. */
  static List<Sweep> of(String group, Set<ResultId> results) {
    ArrayList<Sweep> sweeps = new ArrayList<>();
    for (Motion motion : motions(group)) {
      for (Mode mode : Mode.values()) {
        sweeps.add(sweep(motion, motion.item(mode), results));
      }
    }
    return sweeps;
  }

  /** Pictures with the joint toward the end that is felt. */
  static List<Guide.ItemPicture> endFeel(String group, Picture picture) {
    return motions(group).stream().map(motion -> endFeel(motion, picture)).toList();
  }

  private static Guide.ItemPicture endFeel(Motion motion, Picture picture) {
    Sweep sweep = sweep(motion, motion.passive(), Set.of());
    Pose pose = picture.pose().with(sweep.joint(), (int) sweep.joint(sweep.drawn()));
    return new Guide.ItemPicture(
        Set.of(motion.endFeel()), false, new Picture(pose, picture.marks(), picture.view()));
  }

  private static List<Motion> motions(String group) {
    return Planes.ALL.stream()
        .filter(plane -> plane.id().equals(group))
        .flatMap(plane -> plane.ends().stream())
        .toList();
  }

  private static Sweep sweep(Motion motion, ItemId item, Set<ResultId> results) {
    Way way = WAYS.get(motion.id());
    ResultId shortOf = new ResultId(item.value() + "-reference-deficit");
    return new Sweep(
        item,
        way.joint(),
        way.reversed(),
        way.zero(),
        way.drawn(),
        Optional.of(shortOf).filter(results::contains));
  }
}
