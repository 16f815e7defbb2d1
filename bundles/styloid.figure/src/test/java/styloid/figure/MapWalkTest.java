package styloid.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayDeque;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Codes;
import styloid.model.LimbPart;
import styloid.model.Side;

class MapWalkTest {
  /** up, down: proximal and distal; left, right: as seen, the right arm at the left. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          right, shoulder,   up,    -,     -
          right, shoulder,   down,  right, limb
          right, wrist,      down,  right, hand
          left,  hand,       down,  left,  middle-mp
          left,  little-mp,  up,    left,  hand
          left,  thumb-cmc,  up,    left,  wrist
          right, thumb-ip,   down,  -,     -
          right, elbow,      right, left,  elbow
          left,  elbow,      left,  right, elbow
          left,  elbow,      right, -,     -
          right, thumb-mp,   right, right, index-mp
          right, little-mp,  right, left,  little-mp
          left,  little-mp,  right, left,  ring-mp
          left,  index-pip,  right, left,  thumb-ip
          right, index-pip,  left,  right, thumb-ip
          """)
  void arrowsGoAlongAndAcross(
      String side, String part, String arrow, String toSide, String toPart) {
    LimbPart from = Codes.parse(LimbPart.class, part);
    Side of = Codes.parse(Side.class, side);
    Optional<MapWalk.Stop> expected =
        toSide.equals("-")
            ? Optional.empty()
            : Optional.of(
                new MapWalk.Stop(
                    Codes.parse(LimbPart.class, toPart), Codes.parse(Side.class, toSide)));
    assertEquals(expected, go(new MapWalk.Stop(from, of), arrow));
  }

  private static Optional<MapWalk.Stop> go(MapWalk.Stop from, String arrow) {
    return switch (arrow) {
      case "up" -> MapWalk.proximal(from.part(), from.side());
      case "down" -> MapWalk.distal(from.part(), from.side());
      case "left" -> MapWalk.beside(from.part(), from.side(), -1);
      default -> MapWalk.beside(from.part(), from.side(), 1);
    };
  }

  @Test
  void arrowsReachEveryPartOfBothLimbs() {
    Set<MapWalk.Stop> reached = new HashSet<>();
    ArrayDeque<MapWalk.Stop> open = new ArrayDeque<>();
    open.add(new MapWalk.Stop(LimbPart.SHOULDER, Side.RIGHT));
    while (!open.isEmpty()) {
      MapWalk.Stop at = open.poll();
      if (reached.add(at)) {
        Stream.of("up", "down", "left", "right").forEach(a -> go(at, a).ifPresent(open::add));
      }
    }
    assertEquals(2 * LimbPart.values().length, reached.size());
  }
}
