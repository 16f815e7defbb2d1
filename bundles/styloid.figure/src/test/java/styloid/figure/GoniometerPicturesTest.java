package styloid.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
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
import styloid.spi.Mark.Segment;
import styloid.spi.Sweep;

/** The goniometer lies where its text says, and its arms enclose the angle that was measured. */
class GoniometerPicturesTest {
  private static Stream<Group> measured() {
    return Suite.groups().filter(group -> !group.guide().sweeps().isEmpty());
  }

  static Stream<Group> planes() {
    return measured();
  }

  private static Subject subject(Group group, Sweep sweep, Digit digit, List<Reading> readings) {
    ItemKey key = new ItemKey(new TestId("goniometry"), sweep.item(), Side.RIGHT, digit, 1);
    return Subject.of(group, key, readings);
  }

  private static Subject.PlacedMark only(Subject subject, Kind kind) {
    return subject.marks().stream()
        .filter(placed -> placed.mark().kind() == kind)
        .findFirst()
        .orElseThrow();
  }

  private static Item item(Group group, Sweep sweep) {
    return group.items().stream()
        .filter(i -> i.id().equals(sweep.item()))
        .findFirst()
        .orElseThrow();
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # group, the joint at the proximal end of, stationary along, moving along
          shoulder-sagittal, upper-arm, trunk, upper-arm
          shoulder-frontal, upper-arm, trunk, upper-arm
          shoulder-transverse, upper-arm, trunk, upper-arm
          shoulder-rotation, forearm, trunk, forearm
          elbow, forearm, upper-arm, forearm
          forearm, hand, upper-arm, forearm
          wrist-sagittal, hand, forearm, hand
          wrist-frontal, hand, forearm, hand
          finger-mp, proximal-phalanx, hand, proximal-phalanx
          finger-pip, middle-phalanx, proximal-phalanx, middle-phalanx
          finger-dip, distal-phalanx, middle-phalanx, distal-phalanx
          thumb-cmc, thumb-metacarpal, forearm, thumb-metacarpal
          thumb-mp, thumb-proximal-phalanx, thumb-metacarpal, thumb-proximal-phalanx
          thumb-ip, thumb-distal-phalanx, thumb-proximal-phalanx, thumb-distal-phalanx
          thumb-palmar-abduction, thumb-metacarpal, hand, thumb-metacarpal
          thumb-radial-abduction, thumb-metacarpal, hand, thumb-metacarpal
          """)
  void axisLiesOnTheJointAndArmsAlongTheSegmentsNamed(
      String id, String joint, String stationary, String moving) {
    Group group = measured().filter(g -> g.id().equals(id)).findFirst().orElseThrow();
    Sweep sweep = group.guide().sweeps().get(0);
    for (Digit digit : item(group, sweep).digits()) {
      Subject subject = subject(group, sweep, digit, List.of());
      Skeleton skeleton = Skeleton.of(subject.pose());
      Vec axis = Touch.of(skeleton, only(subject, Kind.AXIS)).bone();
      Vec expected = skeleton.proximal(Codes.parse(Segment.class, joint), digit);
      assertEquals(0, axis.minus(expected).length(), 1e-9, id + " " + digit);
      assertEquals(stationary, only(subject, Kind.STATIONARY_ARM).mark().segment().code());
      assertEquals(moving, only(subject, Kind.MOVING_ARM).mark().segment().code());
    }
  }

  /**
   * The arm turns by as many degrees as the reading says, so the drawn arc is the true angle;
   * within 1°.
   */
  @ParameterizedTest
  @MethodSource("planes")
  void movingArmTurnsByTheDegreesMeasured(Group group) {
    for (Sweep sweep : group.guide().sweeps()) {
      for (Digit digit : item(group, sweep).digits()) {
        Vec zero = moving(group, sweep, digit, 0);
        for (double degrees : new double[] {10, 25, 40}) {
          Vec at = moving(group, sweep, digit, degrees);
          double turned = Math.toDegrees(Math.acos(Math.min(1, zero.dot(at))));
          assertEquals(degrees, turned, 1.0, sweep.item() + " " + digit);
        }
      }
    }
  }

  private static Vec moving(Group group, Sweep sweep, Digit digit, double degrees) {
    Subject subject =
        subject(group, sweep, digit, List.of(new Reading(sweep, degrees, OptionalDouble.empty())));
    Skeleton skeleton = Skeleton.of(subject.pose());
    Vec axis = Touch.of(skeleton, only(subject, Kind.AXIS)).bone();
    return MarkInks.direction(skeleton, axis, only(subject, Kind.MOVING_ARM));
  }

  /** At zero both arms lie in one line or one on the other, or square where the text says so. */
  @ParameterizedTest
  @MethodSource("planes")
  void armsLieInLineAtZero(Group group) {
    Sweep sweep = group.guide().sweeps().get(0);
    Digit digit = item(group, sweep).digits().iterator().next();
    Subject subject =
        subject(group, sweep, digit, List.of(new Reading(sweep, 0, OptionalDouble.empty())));
    Skeleton skeleton = Skeleton.of(subject.pose());
    Vec axis = Touch.of(skeleton, only(subject, Kind.AXIS)).bone();
    Vec moving = MarkInks.direction(skeleton, axis, only(subject, Kind.MOVING_ARM));
    Vec still = MarkInks.direction(skeleton, axis, only(subject, Kind.STATIONARY_ARM));
    double cosine = Math.abs(moving.dot(still));
    assertTrue(cosine > Math.cos(Math.toRadians(22)), group.id() + " " + cosine);
  }

  @Test
  void whatIsMissingToTheReferenceIsDrawnAndNumbered() {
    Group elbow = measured().filter(g -> g.id().equals("elbow")).findFirst().orElseThrow();
    Sweep flexion =
        elbow.guide().sweeps().stream()
            .filter(s -> s.item().value().equals("elbow-flexion-active"))
            .findFirst()
            .orElseThrow();
    Sketch short20 =
        Sketcher.draw(
            subject(
                elbow,
                flexion,
                Digit.NONE,
                List.of(new Reading(flexion, 120, OptionalDouble.of(20)))));
    assertEquals(
        List.of(Sketch.Meaning.MEASURED, Sketch.Meaning.MISSING),
        short20.notes().stream().map(Sketch.Note::meaning).toList());
    assertEquals(List.of(120.0, 20.0), short20.notes().stream().map(Sketch.Note::degrees).toList());
    assertTrue(short20.inks().stream().anyMatch(i -> i.role() == Ink.Role.MISSING));
    Sketch beyond =
        Sketcher.draw(
            subject(
                elbow,
                flexion,
                Digit.NONE,
                List.of(new Reading(flexion, 150, OptionalDouble.of(-5)))));
    assertTrue(beyond.inks().stream().noneMatch(i -> i.role() == Ink.Role.MISSING));
    assertEquals(1, beyond.notes().size());
  }

  @Test
  void everySweepMovesAJointOfItsOwnGroupAndNamesAResultThatExists() {
    Suite.definitions()
        .forEach(
            test ->
                test.groups()
                    .forEach(
                        group ->
                            group
                                .guide()
                                .sweeps()
                                .forEach(
                                    sweep -> {
                                      assertTrue(test.groupOf(sweep.item()).orElseThrow() == group);
                                      sweep
                                          .shortOf()
                                          .ifPresent(
                                              id ->
                                                  assertTrue(
                                                      test.results().stream()
                                                          .anyMatch(r -> r.id().equals(id))));
                                    })));
  }

  @Test
  void marksOfGoniometryAreTheThreeOfTheInstrument() {
    measured()
        .forEach(
            group ->
                assertEquals(
                    List.of(Kind.AXIS, Kind.STATIONARY_ARM, Kind.MOVING_ARM),
                    group.guide().marks().stream().map(Mark::kind).toList()));
  }
}
