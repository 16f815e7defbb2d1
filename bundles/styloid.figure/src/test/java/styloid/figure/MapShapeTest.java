package styloid.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.model.Codes;
import styloid.model.LimbPart;
import styloid.model.Side;

class MapShapeTest {
  private static final double HALF = MapShape.TARGET / 2;

  @ParameterizedTest
  @EnumSource(LimbPart.class)
  void targetsLieOnTheSheetAndTouchNoOther(LimbPart part) {
    Spot here = MapShape.centre(part, Side.RIGHT);
    assertTrue(here.x() >= HALF && here.x() <= MapShape.WIDTH - HALF, () -> part + " " + here);
    assertTrue(here.y() >= HALF && here.y() <= MapShape.HEIGHT - HALF, () -> part + " " + here);
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      for (LimbPart other : LimbPart.values()) {
        if (other != part || side == Side.LEFT) {
          double apart = MapShape.centre(other, side).minus(here).length();
          assertTrue(apart >= MapShape.TARGET, () -> part + " and " + other + ": " + apart);
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(LimbPart.class)
  void leftIsTheExactMirrorOfRight(LimbPart part) {
    Spot right = MapShape.centre(part, Side.RIGHT);
    assertEquals(new Spot(MapShape.WIDTH - right.x(), right.y()), MapShape.centre(part, Side.LEFT));
  }

  @Test
  void outlinesAreMirroredPointByPoint() {
    assertMirrored(MapShape.arm(Side.RIGHT), MapShape.arm(Side.LEFT));
    assertMirrored(MapShape.hand(Side.RIGHT), MapShape.hand(Side.LEFT));
  }

  private static void assertMirrored(List<List<Spot>> right, List<List<Spot>> left) {
    assertEquals(
        right.stream()
            .map(line -> line.stream().map(s -> new Spot(MapShape.WIDTH - s.x(), s.y())).toList())
            .toList(),
        left);
  }

  @ParameterizedTest
  @EnumSource(LimbPart.class)
  void everyTargetLiesOnTheLimb(LimbPart part) {
    Spot at = MapShape.centre(part, Side.RIGHT);
    boolean held =
        java.util.stream.Stream.concat(
                MapShape.arm(Side.RIGHT).stream(), MapShape.hand(Side.RIGHT).stream())
            .anyMatch(outline -> holds(outline, at));
    assertTrue(held, () -> part + " " + at);
  }

  /** Even-odd rule, whichever way the outline turns. */
  private static boolean holds(List<Spot> outline, Spot point) {
    boolean inside = false;
    Spot from = outline.get(outline.size() - 1);
    for (Spot to : outline) {
      boolean crosses = from.y() > point.y() != to.y() > point.y();
      if (crosses
          && point.x()
              < (to.x() - from.x()) * (point.y() - from.y()) / (to.y() - from.y()) + from.x()) {
        inside = !inside;
      }
      from = to;
    }
    return inside;
  }

  /** Facing the viewer with palms forward: right at the left, thumbs outward, fingers down. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          thumb-ip,   index-pip
          index-pip,  middle-pip
          middle-pip, ring-pip
          ring-pip,   little-pip
          """)
  void rightHandGoesFromThumbToLittleFingerTowardTheMiddle(String outer, String inner) {
    double out = MapShape.centre(Codes.parse(LimbPart.class, outer), Side.RIGHT).x();
    double in = MapShape.centre(Codes.parse(LimbPart.class, inner), Side.RIGHT).x();
    assertTrue(out < in && in < MapShape.WIDTH / 2);
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          shoulder,  elbow
          elbow,     forearm
          forearm,   wrist
          wrist,     hand
          hand,      middle-mp
          thumb-cmc, thumb-mp
          thumb-mp,  thumb-ip
          index-mp,  index-pip
          little-pip, little-dip
          """)
  void distalLiesBelowProximal(String proximal, String distal) {
    assertTrue(
        MapShape.centre(Codes.parse(LimbPart.class, proximal), Side.LEFT).y()
            < MapShape.centre(Codes.parse(LimbPart.class, distal), Side.LEFT).y());
  }
}
