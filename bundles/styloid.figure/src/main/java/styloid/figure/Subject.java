package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Region;
import styloid.model.Side;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Mark;
import styloid.spi.Picture;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;
import styloid.spi.Position;
import styloid.spi.Sweep;

/**
 * All a drawing is made from.
 *
 * @param position how the patient lies or sits; empty when any position will do
 * @param digit the digit asked about, or none
 * @param readings measured angles, drawn as arcs
 */
public record Subject(
    Picture picture,
    Optional<Position> position,
    Region region,
    Side side,
    Digit digit,
    List<Reading> readings) {

  private static final List<Joint> BENDING =
      List.of(Joint.FINGER_MP_FLEXION, Joint.FINGER_PIP_FLEXION, Joint.FINGER_DIP_FLEXION);

  public Subject {
    readings = List.copyOf(readings);
  }

  /**
   * What is drawn while an item is asked: the gravity-reduced picture where the item is asked in
   * that position, and the joint at its measured angle once there is one.
   */
  public static Subject of(Group group, ItemKey key, List<Reading> readings) {
    Guide guide = group.guide();
    Picture picture = guide.picture(key.item());
    return new Subject(
        guide.sweep(key.item()).map(s -> posed(picture, s, readings)).orElse(picture),
        guide.isReduced(key.item()) ? guide.gravityReduced() : guide.position(),
        group.region(),
        key.side(),
        key.digit(),
        readings);
  }

  private static Picture posed(Picture picture, Sweep sweep, List<Reading> readings) {
    ItemId item = sweep.item();
    double degrees =
        readings.stream()
            .filter(r -> r.sweep().item().equals(item))
            .mapToDouble(Reading::degrees)
            .findFirst()
            .orElse(sweep.drawn());
    return new Picture(
        at(picture.pose(), sweep, degrees, Digit.NONE), picture.marks(), picture.view());
  }

  /** A pose with the joint of a sweep where it stands at so many degrees. */
  static Pose at(Pose pose, Sweep sweep, double degrees, Digit digit) {
    int angle = (int) Math.round(Math.max(-180, Math.min(180, sweep.joint(degrees))));
    boolean apart = sweep.joint().ofFingers() && isFinger(digit);
    return apart ? pose.with(sweep.joint(), digit, angle) : pose.with(sweep.joint(), angle);
  }

  static boolean isFinger(Digit digit) {
    return digit != Digit.THUMB && digit != Digit.NONE;
  }

  /** The pose, with the other fingers straight where one finger is asked about. */
  public Pose pose() {
    Pose pose = picture.pose();
    if (!isFinger(digit)) {
      return pose;
    }
    for (Digit other : List.of(Digit.INDEX, Digit.MIDDLE, Digit.RING, Digit.LITTLE)) {
      for (Joint joint : BENDING) {
        if (other != digit && !picture.pose().fingers().containsKey(other) && pose.of(joint) > 0) {
          pose = pose.with(joint, other, 0);
        }
      }
    }
    return pose;
  }

  /** Marks with the finger each is drawn on; none for the limb. */
  List<PlacedMark> marks() {
    ArrayList<PlacedMark> placed = new ArrayList<>();
    for (Mark mark : picture.marks()) {
      if (!mark.shownFor(digit)) {
        continue;
      }
      if (isFinger(digit) || mark.digits().isEmpty()) {
        placed.add(new PlacedMark(mark, ofFingers(mark) ? digit : Digit.NONE));
      } else {
        mark.digits().stream().sorted().forEach(d -> placed.add(new PlacedMark(mark, d)));
      }
    }
    return placed;
  }

  private static boolean ofFingers(Mark mark) {
    return switch (mark.segment()) {
      case PROXIMAL_PHALANX, MIDDLE_PHALANX, DISTAL_PHALANX -> true;
      case HAND -> !mark.digits().isEmpty();
      default -> false;
    };
  }

  /** A mark on a finger, or on the limb. */
  record PlacedMark(Mark mark, Digit digit) {}
}
