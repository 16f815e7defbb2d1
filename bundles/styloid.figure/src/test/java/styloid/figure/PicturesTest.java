package styloid.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Mark;
import styloid.spi.Mark.Segment;

/** Every guide of every built-in test can be drawn, for both sides and every digit. */
class PicturesTest {
  static Stream<Group> pictured() {
    return Suite.groups().filter(group -> group.guide().hasPicture());
  }

  private static List<Subject> subjects(Group group, Side side) {
    ArrayList<Subject> subjects = new ArrayList<>();
    for (Item item : Suite.pictured(group)) {
      for (Digit digit : item.digits()) {
        ItemKey key = new ItemKey(new TestId("any"), item.id(), side, digit, 1);
        subjects.add(Subject.of(group, key, List.of()));
      }
    }
    return subjects;
  }

  @Test
  void everyGuideWithInstructionsHasAPicture() {
    Suite.groups()
        .filter(group -> !group.guide().lines().isEmpty())
        .forEach(group -> assertTrue(group.guide().hasPicture(), group.id()));
    assertTrue(pictured().count() > 60);
  }

  @ParameterizedTest
  @MethodSource("pictured")
  void everyPictureIsDrawnWithAllItsMarksInSight(Group group) {
    for (Subject subject : subjects(group, Side.RIGHT)) {
      Sketch sketch = Sketcher.draw(subject);
      assertTrue(sketch.frame().width() > 0.08 && sketch.frame().width() < 2.5, group.id());
      assertTrue(sketch.inks().size() > 40, group.id());
      Skeleton skeleton = Skeleton.of(subject.pose());
      Camera camera = Views.camera(subject, skeleton);
      for (Subject.PlacedMark placed : subject.marks()) {
        Spot spot = camera.see(Touch.of(skeleton, placed).skin());
        if (isGoniometerArm(placed)) {
          continue; // starts at the axis, wherever its segment is
        }
        assertTrue(sketch.frame().holds(spot), group.id() + " " + placed);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("pictured")
  void leftIsRightInAMirror(Group group) {
    List<Subject> right = subjects(group, Side.RIGHT);
    List<Subject> left = subjects(group, Side.LEFT);
    for (int i = 0; i < right.size(); i++) {
      List<Part> parts = Flesh.of(Skeleton.of(right.get(i).pose()));
      Camera ofRight = Views.camera(right.get(i), Skeleton.of(right.get(i).pose()));
      Camera ofLeft = Views.camera(left.get(i), Skeleton.of(left.get(i).pose()));
      for (Part part : parts) {
        for (List<Ball> slice : part.slices()) {
          for (Ball ball : slice) {
            Spot one = ofRight.see(ball.centre());
            Spot other = ofLeft.see(ball.centre());
            assertEquals(new Spot(-one.x(), one.y()), other, group.id());
          }
        }
      }
      Box rightFrame = Sketcher.draw(right.get(i)).frame();
      Box leftFrame = Sketcher.draw(left.get(i)).frame();
      assertEquals(-rightFrame.left(), leftFrame.right(), 1e-9, group.id());
      assertEquals(rightFrame.top(), leftFrame.top(), 1e-9, group.id());
    }
  }

  @ParameterizedTest
  @MethodSource("pictured")
  void everyMarkOfTheLimbLiesOnItsSkin(Group group) {
    for (Subject subject : subjects(group, Side.RIGHT)) {
      Skeleton skeleton = Skeleton.of(subject.pose());
      Camera camera = Views.camera(subject, skeleton);
      List<Part> parts = Flesh.of(skeleton);
      for (Subject.PlacedMark placed : subject.marks()) {
        Segment segment = placed.mark().segment();
        boolean ofTrunk = segment == Segment.TRUNK || segment == Segment.SHOULDER_BLADE;
        if (ofTrunk || isGoniometerArm(placed)) {
          continue;
        }
        Touch touch = Touch.of(skeleton, placed);
        Spot at = camera.see(touch.skin());
        boolean within =
            parts.stream()
                .flatMap(part -> part.outlines(camera).stream())
                .anyMatch(outline -> Outline.holds(outline, at, 0.004));
        assertTrue(within, group.id() + " " + placed + " floats beside the limb");
        assertTrue(touch.skin().minus(touch.bone()).dot(touch.outward()) >= 0, group.id());
      }
    }
  }

  private static boolean isGoniometerArm(Subject.PlacedMark placed) {
    return placed.mark().kind() == Mark.Kind.STATIONARY_ARM
        || placed.mark().kind() == Mark.Kind.MOVING_ARM;
  }

  @Test
  void gravityReducedPictureIsShownWhereTheItemIsAskedThere() {
    Group group = group("elbow-flexion-palm-up");
    Subject first = subject(group, "elbow-flexion-palm-up-range");
    Subject reduced = subject(group, "elbow-flexion-palm-up-reduced");
    assertEquals(group.guide().position(), first.position());
    assertEquals(group.guide().gravityReduced(), reduced.position());
    assertFalse(first.pose().equals(reduced.pose()));
    Skeleton skeleton = Skeleton.of(reduced.pose());
    Bone upper = skeleton.bone(Segment.UPPER_ARM, Digit.NONE);
    Bone forearm = skeleton.bone(Segment.FOREARM, Digit.NONE);
    assertEquals(0, upper.start().distal().y(), 1e-9, "upper arm level");
    assertEquals(0, forearm.start().distal().y(), 1e-9, "forearm slides level");
  }

  @Test
  void onlyTheFingerAskedAboutIsBent() {
    Group group = group("pip-flexion");
    Item range = group.items().get(0);
    ItemKey key = new ItemKey(new TestId("any"), range.id(), Side.LEFT, Digit.RING, 1);
    Skeleton skeleton = Skeleton.of(Subject.of(group, key, List.of()).pose());
    for (Digit digit : List.of(Digit.INDEX, Digit.MIDDLE, Digit.RING, Digit.LITTLE)) {
      Vec before = skeleton.bone(Segment.PROXIMAL_PHALANX, digit).start().distal();
      Vec after = skeleton.bone(Segment.MIDDLE_PHALANX, digit).start().distal();
      assertEquals(digit != Digit.RING, before.dot(after) > 0.999, digit.code());
    }
  }

  private static Group group(String id) {
    return pictured().filter(g -> g.id().equals(id)).findFirst().orElseThrow();
  }

  private static Subject subject(Group group, String item) {
    return Subject.of(
        group,
        new ItemKey(new TestId("any"), new ItemId(item), Side.RIGHT, Digit.NONE, 1),
        List.of());
  }
}
