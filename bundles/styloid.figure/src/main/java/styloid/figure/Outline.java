package styloid.figure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Outlines of balls as seen, as closed polygons turning to the left. */
final class Outline {
  private static final int CORNERS = 36;

  private static final List<Spot> WAYS = ways();

  private Outline() {}

  private static List<Spot> ways() {
    ArrayList<Spot> ways = new ArrayList<>();
    for (int i = 0; i < CORNERS; i++) {
      double angle = 2 * Math.PI * i / CORNERS;
      ways.add(new Spot(Math.cos(angle), Math.sin(angle)));
    }
    return List.copyOf(ways);
  }

  /**
   * The tight outline round some balls, as if a skin were drawn over them: in each of many
   * directions the farthest point of any ball.
   */
  static List<Spot> around(List<Ball> balls, Camera camera) {
    List<Spot> centres = balls.stream().map(ball -> camera.see(ball.centre())).toList();
    ArrayList<Spot> outline = new ArrayList<>(CORNERS);
    for (Spot way : WAYS) {
      int farthest = 0;
      double reach = Double.NEGATIVE_INFINITY;
      for (int i = 0; i < centres.size(); i++) {
        double here = centres.get(i).dot(way) + balls.get(i).radius();
        if (here > reach) {
          reach = here;
          farthest = i;
        }
      }
      outline.add(centres.get(farthest).plus(way.times(balls.get(farthest).radius())));
    }
    return outline;
  }

  /** Smallest convex polygon round the points (Andrew's monotone chain). */
  static List<Spot> hull(List<Spot> points) {
    ArrayList<Spot> sorted = new ArrayList<>(points);
    sorted.sort(Comparator.comparingDouble(Spot::x).thenComparingDouble(Spot::y));
    ArrayList<Spot> hull = half(sorted);
    Collections.reverse(sorted);
    hull.addAll(half(sorted));
    return hull;
  }

  private static ArrayList<Spot> half(List<Spot> sorted) {
    ArrayList<Spot> chain = new ArrayList<>();
    for (Spot point : sorted) {
      while (chain.size() > 1 && turn(chain, point) <= 0) {
        chain.remove(chain.size() - 1);
      }
      chain.add(point);
    }
    chain.remove(chain.size() - 1);
    return chain;
  }

  private static double turn(List<Spot> chain, Spot next) {
    Spot last = chain.get(chain.size() - 1);
    Spot before = chain.get(chain.size() - 2);
    return last.minus(before).cross(next.minus(before));
  }

  /** Whether a convex outline turning to the left holds the point, its edge widened so much. */
  static boolean holds(List<Spot> outline, Spot point, double margin) {
    Spot from = outline.get(outline.size() - 1);
    for (Spot to : outline) {
      Spot edge = to.minus(from);
      if (edge.length() > 0 && edge.unit().cross(point.minus(from)) < -margin) {
        return false;
      }
      from = to;
    }
    return true;
  }
}
