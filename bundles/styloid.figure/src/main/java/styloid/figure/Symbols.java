package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import styloid.spi.Mark;

/** Small drawings of the marks for the legend, in the shapes they have on the limb. */
final class Symbols {
  private static final Box FRAME = new Box(-2.3, -1.5, 2.3, 1.5);

  private Symbols() {}

  static Sketch of(Mark.Kind kind) {
    ArrayList<Ink> inks = new ArrayList<>();
    Spot middle = new Spot(0, 0);
    switch (kind) {
      case SUPPORT ->
          inks.add(
              Ink.line(
                  Ink.Role.MARK,
                  0.42,
                  List.of(
                      new Spot(-1.75, 0.4),
                      new Spot(-1.3, -0.4),
                      new Spot(1.3, -0.4),
                      new Spot(1.75, 0.4))));
      case RESIST -> arrow(inks, List.of(new Spot(-2, 0), new Spot(0.5, 0)));
      case RESIST_TURN -> {
        ArrayList<Spot> arc = new ArrayList<>();
        for (int angle = 170; angle >= 40; angle -= 10) {
          arc.add(
              new Spot(
                  1.5 * Math.cos(Math.toRadians(angle)) - 0.3,
                  1.7 * Math.sin(Math.toRadians(angle)) - 0.8));
        }
        arrow(inks, arc);
      }
      case PALPATE -> {
        inks.add(Ink.ring(Ink.Role.MARK, 0.28, Curve.circle(middle, 0.9)));
        inks.add(Ink.fill(Ink.Role.MARK, Curve.circle(middle, 0.36)));
      }
      case AXIS -> {
        inks.add(Ink.ring(Ink.Role.MARK, 0.22, Curve.circle(middle, 0.8)));
        inks.add(Ink.line(Ink.Role.MARK, 0.2, List.of(new Spot(-1.3, 0), new Spot(1.3, 0))));
        inks.add(Ink.line(Ink.Role.MARK, 0.2, List.of(new Spot(0, -1.3), new Spot(0, 1.3))));
      }
      case STATIONARY_ARM -> bar(inks, false);
      case MOVING_ARM -> bar(inks, true);
    }
    return sketch(inks);
  }

  static Sketch measured() {
    ArrayList<Spot> arc = arc();
    return sketch(
        List.of(
            Ink.fill(Ink.Role.ARC, Lists.joined(List.of(new Spot(0, -1.2)), arc)),
            Ink.line(Ink.Role.MARK, 0.3, arc)));
  }

  static Sketch missing() {
    List<Spot> band =
        List.of(new Spot(-1.8, -0.7), new Spot(1.8, -0.7), new Spot(1.8, 0.7), new Spot(-1.8, 0.7));
    return sketch(List.of(Ink.fill(Ink.Role.MISSING, band), Ink.ring(Ink.Role.MARK, 0.15, band)));
  }

  private static ArrayList<Spot> arc() {
    ArrayList<Spot> arc = new ArrayList<>();
    for (int angle = 20; angle <= 160; angle += 10) {
      arc.add(
          new Spot(
              2 * Math.cos(Math.toRadians(angle)), 2.2 * Math.sin(Math.toRadians(angle)) - 1.2));
    }
    return arc;
  }

  private static void arrow(List<Ink> inks, List<Spot> shaft) {
    Spot end = shaft.get(shaft.size() - 1);
    Spot way = end.minus(shaft.get(shaft.size() - 2)).unit();
    Spot side = way.square();
    inks.add(Ink.line(Ink.Role.MARK, 0.5, shaft));
    inks.add(
        Ink.fill(
            Ink.Role.MARK,
            List.of(
                end.plus(way.times(1.4)), end.plus(side.times(0.9)), end.minus(side.times(0.9)))));
  }

  private static void bar(List<Ink> inks, boolean pointed) {
    ArrayList<Spot> bar = new ArrayList<>();
    bar.add(new Spot(-2, 0.45));
    bar.add(new Spot(-2, -0.45));
    bar.add(new Spot(1, -0.45));
    if (pointed) {
      bar.add(new Spot(2.1, 0));
    }
    bar.add(new Spot(1, 0.45));
    inks.add(Ink.ring(Ink.Role.MARK, 0.2, bar));
    if (pointed) {
      inks.add(Ink.line(Ink.Role.MARK, 0.15, List.of(new Spot(-2, 0), new Spot(1, 0))));
    }
  }

  private static Sketch sketch(List<Ink> inks) {
    return new Sketch(inks, List.of(), FRAME, 1, Set.of());
  }
}
