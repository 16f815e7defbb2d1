package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.LimbPart;
import styloid.model.Side;

/**
 * Where the arrow keys go on the map: along the limb from proximal to distal, and across it as it
 * is seen, from the right arm at the left of the picture to the left arm at its right.
 */
final class MapWalk {
  /** A part of one limb. */
  record Stop(LimbPart part, Side side) {}

  /** From the outer border of the right limb to the middle of the body. */
  private static final List<List<LimbPart>> ROWS =
      List.of(
          List.of(LimbPart.SHOULDER),
          List.of(LimbPart.LIMB),
          List.of(LimbPart.ELBOW),
          List.of(LimbPart.FOREARM),
          List.of(LimbPart.WRIST),
          List.of(LimbPart.THUMB_CMC, LimbPart.HAND),
          List.of(
              LimbPart.THUMB_MP,
              LimbPart.INDEX_MP,
              LimbPart.MIDDLE_MP,
              LimbPart.RING_MP,
              LimbPart.LITTLE_MP),
          List.of(
              LimbPart.THUMB_IP,
              LimbPart.INDEX_PIP,
              LimbPart.MIDDLE_PIP,
              LimbPart.RING_PIP,
              LimbPart.LITTLE_PIP),
          List.of(LimbPart.INDEX_DIP, LimbPart.MIDDLE_DIP, LimbPart.RING_DIP, LimbPart.LITTLE_DIP));

  private static final List<List<LimbPart>> CHAINS =
      List.of(
          List.of(
              LimbPart.SHOULDER,
              LimbPart.LIMB,
              LimbPart.ELBOW,
              LimbPart.FOREARM,
              LimbPart.WRIST,
              LimbPart.HAND,
              LimbPart.MIDDLE_MP,
              LimbPart.MIDDLE_PIP,
              LimbPart.MIDDLE_DIP),
          List.of(LimbPart.WRIST, LimbPart.THUMB_CMC, LimbPart.THUMB_MP, LimbPart.THUMB_IP),
          List.of(LimbPart.HAND, LimbPart.INDEX_MP, LimbPart.INDEX_PIP, LimbPart.INDEX_DIP),
          List.of(LimbPart.HAND, LimbPart.RING_MP, LimbPart.RING_PIP, LimbPart.RING_DIP),
          List.of(LimbPart.HAND, LimbPart.LITTLE_MP, LimbPart.LITTLE_PIP, LimbPart.LITTLE_DIP));

  private MapWalk() {}

  static Optional<Stop> distal(LimbPart part, Side side) {
    return along(part, 1).map(p -> new Stop(p, side));
  }

  static Optional<Stop> proximal(LimbPart part, Side side) {
    return along(part, -1).map(p -> new Stop(p, side));
  }

  private static Optional<LimbPart> along(LimbPart part, int step) {
    for (List<LimbPart> chain : CHAINS) {
      int at = chain.indexOf(part) + step;
      if (chain.contains(part) && at >= 0 && at < chain.size()) {
        return Optional.of(chain.get(at));
      }
    }
    return Optional.empty();
  }

  /**
   * The neighbour across.
   *
   * @param step 1 to the right of the picture, -1 to its left
   */
  static Optional<Stop> beside(LimbPart part, Side side, int step) {
    for (List<LimbPart> row : ROWS) {
      if (row.contains(part)) {
        ArrayList<Stop> stops = new ArrayList<>();
        row.forEach(p -> stops.add(new Stop(p, Side.RIGHT)));
        for (int i = row.size() - 1; i >= 0; i--) {
          stops.add(new Stop(row.get(i), Side.LEFT));
        }
        int to = stops.indexOf(new Stop(part, side)) + step;
        return to < 0 || to >= stops.size() ? Optional.empty() : Optional.of(stops.get(to));
      }
    }
    return Optional.empty();
  }
}
