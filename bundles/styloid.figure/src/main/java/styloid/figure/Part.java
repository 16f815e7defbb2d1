package styloid.figure;

import java.util.List;
import java.util.stream.IntStream;
import styloid.model.Digit;
import styloid.spi.Mark.Segment;

/**
 * Flesh of one segment: slices from proximal to distal, each of one or more balls, with skin drawn
 * over every two neighbours.
 *
 * @param digit the finger; none for the limb and the thumb
 */
record Part(Segment segment, Digit digit, List<List<Ball>> slices) {
  /** Convex pieces that together cover it. */
  List<List<Ball>> pieces() {
    return IntStream.range(1, slices.size())
        .mapToObj(i -> Lists.joined(slices.get(i - 1), slices.get(i)))
        .toList();
  }

  List<List<Spot>> outlines(Camera camera) {
    return pieces().stream().map(piece -> Outline.around(piece, camera)).toList();
  }

  /** Mean depth, by which nearer parts are drawn over farther ones. */
  double depth(Camera camera) {
    return slices.stream()
        .flatMap(List::stream)
        .mapToDouble(ball -> camera.depth(ball.centre()))
        .average()
        .orElse(0);
  }
}
