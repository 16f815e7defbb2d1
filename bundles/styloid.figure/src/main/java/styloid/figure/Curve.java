package styloid.figure;

import java.util.ArrayList;
import java.util.List;

/** Smooth lines through points. */
final class Curve {
  private static final int STEPS = 6;

  private Curve() {}

  /** Catmull-Rom: through every point, without corners. */
  static List<Spot> through(List<Spot> spots) {
    ArrayList<Spot> curve = new ArrayList<>();
    for (int i = 0; i + 1 < spots.size(); i++) {
      Spot before = spots.get(Math.max(0, i - 1));
      Spot from = spots.get(i);
      Spot to = spots.get(i + 1);
      Spot after = spots.get(Math.min(spots.size() - 1, i + 2));
      for (int k = 0; k < STEPS; k++) {
        curve.add(between(before, from, to, after, (double) k / STEPS));
      }
    }
    curve.add(spots.get(spots.size() - 1));
    return curve;
  }

  private static Spot between(Spot before, Spot from, Spot to, Spot after, double t) {
    Spot slope = to.minus(before).times(0.5 * t);
    Spot bend =
        before.times(2).minus(from.times(5)).plus(to.times(4)).minus(after).times(0.5 * t * t);
    Spot rest = from.times(3).minus(before).minus(to.times(3)).plus(after).times(0.5 * t * t * t);
    return from.plus(slope).plus(bend).plus(rest);
  }

  /** A circle, as a polygon. */
  static List<Spot> circle(Spot centre, double radius) {
    ArrayList<Spot> circle = new ArrayList<>();
    for (int i = 0; i < 28; i++) {
      double angle = 2 * Math.PI * i / 28;
      circle.add(centre.plus(new Spot(radius * Math.cos(angle), radius * Math.sin(angle))));
    }
    return circle;
  }
}
