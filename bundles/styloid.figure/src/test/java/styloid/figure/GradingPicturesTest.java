package styloid.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Mark;
import styloid.spi.Mark.Kind;
import styloid.spi.Pose;
import styloid.spi.Pose.Joint;

/** Resistance opposes the motion of every name in the catalogue. */
class GradingPicturesTest {
  /** Motion: the joint it moves and which way; the meaning of the name, common practice. */
  private static final String MOTIONS =
      """
      shoulder-flexion shoulder-flexion +
      shoulder-extension shoulder-flexion -
      shoulder-abduction shoulder-abduction +
      shoulder-adduction shoulder-abduction -
      shoulder-scaption shoulder-abduction +
      shoulder-horizontal-abduction shoulder-flexion -
      shoulder-horizontal-adduction shoulder-flexion +
      shoulder-internal-rotation shoulder-inward-rotation +
      shoulder-external-rotation shoulder-inward-rotation -
      scapular-elevation girdle-elevation +
      scapular-adduction girdle-protraction -
      scapular-abduction-upward-rotation girdle-protraction +
      scapular-depression girdle-elevation -
      elbow-flexion-palm-up elbow-flexion +
      elbow-flexion-palm-down elbow-flexion +
      elbow-flexion-mid elbow-flexion +
      elbow-extension elbow-flexion -
      forearm-supination forearm-pronation -
      forearm-pronation forearm-pronation +
      wrist-flexion wrist-flexion +
      wrist-flexion-radial wrist-flexion +
      wrist-flexion-ulnar wrist-flexion +
      wrist-extension wrist-flexion -
      wrist-extension-radial wrist-flexion -
      wrist-extension-ulnar wrist-flexion -
      wrist-radial-deviation wrist-radial-deviation +
      wrist-ulnar-deviation wrist-radial-deviation -
      mp-flexion finger-mp-flexion +
      mp-extension finger-mp-flexion -
      pip-flexion finger-pip-flexion +
      dip-flexion finger-dip-flexion +
      finger-abduction finger-spread +
      finger-adduction finger-spread -
      thumb-mp-flexion thumb-mp-flexion +
      thumb-ip-flexion thumb-ip-flexion +
      thumb-mp-extension thumb-mp-flexion -
      thumb-ip-extension thumb-ip-flexion -
      thumb-palmar-abduction thumb-palmar-abduction +
      thumb-radial-abduction thumb-radial-abduction +
      thumb-adduction thumb-palmar-abduction -
      thumb-opposition thumb-opposition +
      little-finger-opposition palm-cupping +
      """;

  private static Stream<Group> grading() {
    return Suite.groups().filter(g -> g.items().get(0).id().value().equals(g.id() + "-range"));
  }

  private static Map<String, String[]> motions() {
    TreeMap<String, String[]> motions = new TreeMap<>();
    MOTIONS.lines().map(line -> line.split(" ")).forEach(words -> motions.put(words[0], words));
    return motions;
  }

  @Test
  void everyMotionOfTheCatalogueIsInTheTable() {
    assertEquals(
        motions().keySet(),
        grading().map(Group::id).collect(Collectors.toCollection(TreeSet::new)));
  }

  static Stream<Group> groups() {
    return grading();
  }

  @ParameterizedTest
  @MethodSource("groups")
  void resistanceOpposesTheMotion(Group group) {
    String[] motion = motions().get(group.id());
    Joint joint = Codes.parse(Joint.class, motion[1]);
    int step = motion[2].equals("+") ? 1 : -1;
    Item item = group.items().get(0);
    for (Digit digit : item.digits()) {
      if (digit == Digit.MIDDLE && group.id().equals("finger-abduction")) {
        continue; // tried to both sides: no one way
      }
      Subject subject = subject(group, item, digit);
      Pose pose = subject.pose();
      Skeleton before = Skeleton.of(pose);
      Skeleton after = Skeleton.of(moved(pose, joint, step, digit));
      int resisted = 0;
      for (Subject.PlacedMark placed : subject.marks()) {
        if (placed.mark().kind() == Kind.RESIST || placed.mark().kind() == Kind.RESIST_TURN) {
          resisted++;
          double along = way(placed, before, after).dot(Touch.of(before, placed).outward());
          assertTrue(along > 0.5, group.id() + " " + digit + " moves against " + along);
        }
      }
      assertTrue(resisted > 0, group.id() + " " + digit);
    }
  }

  /** Direction in which the motion carries the touched skin, or the thumb side for a turn. */
  private static Vec way(Subject.PlacedMark placed, Skeleton before, Skeleton after) {
    Touch from = Touch.of(before, placed);
    Touch to = Touch.of(after, placed);
    return placed.mark().kind() == Kind.RESIST_TURN
        ? to.frame().radial().minus(from.frame().radial()).unit()
        : to.skin().minus(from.skin()).unit();
  }

  private static Pose moved(Pose pose, Joint joint, int step, Digit digit) {
    return Subject.isFinger(digit) && joint.ofFingers()
        ? pose.with(joint, digit, pose.of(joint, digit) + step)
        : pose.with(joint, pose.of(joint) + step);
  }

  private static Subject subject(Group group, Item item, Digit digit) {
    return Subject.of(
        group, new ItemKey(new TestId("grading"), item.id(), Side.RIGHT, digit, 1), List.of());
  }

  @ParameterizedTest
  @MethodSource("groups")
  void arrowsAreSeenFromTheSide(Group group) {
    Item item = group.items().get(0);
    for (Digit digit : item.digits()) {
      Subject subject = subject(group, item, digit);
      Skeleton skeleton = Skeleton.of(subject.pose());
      Camera camera = Views.camera(subject, skeleton);
      for (Subject.PlacedMark placed : subject.marks()) {
        if (placed.mark().kind() == Kind.RESIST) {
          double facing = Math.abs(Touch.of(skeleton, placed).facing(camera));
          assertTrue(facing < 0.8, group.id() + " " + digit + " points at the onlooker " + facing);
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource({"wrist-extension, -1", "wrist-flexion, 1", "finger-abduction, -1", "mp-flexion, 1"})
  void palmLooksTheWayTheTextSays(String id, int up) {
    Group group = grading().filter(g -> g.id().equals(id)).findFirst().orElseThrow();
    Digit digit = group.items().get(0).digits().iterator().next();
    Pose pose = subject(group, group.items().get(0), digit).pose();
    Vec palm = Skeleton.of(pose).bone(Mark.Segment.FOREARM, Digit.NONE).frame(1).volar();
    assertEquals(up, Math.round(palm.y()), id);
  }

  @Test
  void forearmIsTurnedProximalToTheWristNeverByTheHand() {
    Set<String> turned = Set.of("forearm-supination", "forearm-pronation");
    grading()
        .filter(g -> turned.contains(g.id()))
        .flatMap(g -> g.guide().marks().stream())
        .filter(m -> m.kind() == Kind.RESIST_TURN)
        .forEach(
            m -> assertTrue(m.segment() == Mark.Segment.FOREARM && m.along() < 0.95, m.toString()));
  }
}
