package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import styloid.figure.Subject.PlacedMark;
import styloid.spi.Mark;
import styloid.spi.Mark.Aspect;

/**
 * The marks, each kind with a shape of its own: support a cradle, resistance an arrow, palpation a
 * ring with a dot, the axis a crossed ring, the stationary arm a bar with a square end, the moving
 * arm a bar with a point.
 */
final class MarkInks {
  private static final double HIDDEN = -0.5;

  private final Skeleton skeleton;
  private final Camera camera;
  private final double unit;
  private final List<Ink> inks = new ArrayList<>();

  MarkInks(Skeleton skeleton, Camera camera, double unit) {
    this.skeleton = skeleton;
    this.camera = camera;
    this.unit = unit;
  }

  /** Goniometer arms lie under the axis, everything else over the limb in its own order. */
  List<Ink> inks(List<PlacedMark> marks) {
    inks.clear();
    PlacedMark axis = null;
    for (PlacedMark placed : marks) {
      axis = placed.mark().kind() == Mark.Kind.AXIS ? placed : axis;
    }
    for (PlacedMark placed : marks) {
      Mark.Kind kind = placed.mark().kind();
      if (axis != null && (kind == Mark.Kind.STATIONARY_ARM || kind == Mark.Kind.MOVING_ARM)) {
        goniometerArm(axis, placed);
      }
    }
    for (PlacedMark placed : marks) {
      mark(placed);
    }
    return List.copyOf(inks);
  }

  private void mark(PlacedMark placed) {
    Touch touch = Touch.of(skeleton, placed);
    switch (placed.mark().kind()) {
      case SUPPORT -> support(touch);
      case RESIST -> arrow(touch);
      case RESIST_TURN -> turn(placed, touch);
      case PALPATE -> palpate(touch);
      case AXIS -> axis(camera.see(touch.skin()));
      case STATIONARY_ARM, MOVING_ARM -> {
        // Drawn before the axis.
      }
    }
  }

  private Spot seen(Vec direction) {
    return camera.see(direction).minus(camera.see(Vec.ZERO));
  }

  /** A palm laid on the limb: an open cradle at its edge, or a pad where it is seen from above. */
  private void support(Touch touch) {
    Spot at = camera.see(touch.skin());
    Spot out = seen(touch.outward());
    Spot along = seen(touch.frame().distal());
    if (touch.outward().equals(touch.frame().distal())
        || touch.outward().equals(touch.frame().distal().times(-1))) {
      along = seen(touch.frame().radial());
    }
    Ink.Role role = touch.facing(camera) < HIDDEN ? Ink.Role.HIDDEN_MARK : Ink.Role.MARK;
    if (out.length() > 0.55) {
      Spot away = out.unit();
      Spot side = away.square();
      List<Spot> cradle =
          List.of(
              at.plus(side.times(1.75 * unit)).plus(away.times(-0.25 * unit)),
              at.plus(side.times(1.3 * unit)).plus(away.times(0.45 * unit)),
              at.plus(side.times(-1.3 * unit)).plus(away.times(0.45 * unit)),
              at.plus(side.times(-1.75 * unit)).plus(away.times(-0.25 * unit)));
      inks.add(Ink.line(Ink.Role.GROUND, 0.75 * unit, cradle));
      inks.add(Ink.line(role, 0.42 * unit, cradle));
      return;
    }
    Spot length = along.length() > 0.2 ? along.unit() : new Spot(1, 0);
    Spot across = length.square();
    List<Spot> pad =
        List.of(
            at.plus(length.times(1.5 * unit)).plus(across.times(0.8 * unit)),
            at.plus(length.times(-1.5 * unit)).plus(across.times(0.8 * unit)),
            at.plus(length.times(-1.5 * unit)).plus(across.times(-0.8 * unit)),
            at.plus(length.times(1.5 * unit)).plus(across.times(-0.8 * unit)));
    inks.add(Ink.ring(Ink.Role.GROUND, 0.6 * unit, pad));
    inks.add(Ink.ring(role, 0.3 * unit, pad));
  }

  /** An arrow that pushes on the skin from outside; shorter the more it points at the onlooker. */
  private void arrow(Touch touch) {
    Spot at = camera.see(touch.skin());
    Spot out = seen(touch.outward());
    double length = unit * (1.6 + 2.4 * Math.min(1, out.length()));
    head(at.plus(out.unit().times(length)), at, touch.facing(camera) < HIDDEN);
  }

  private void head(Spot tail, Spot tip, boolean hidden) {
    Spot way = tip.minus(tail).unit();
    Spot side = way.square();
    Spot neck = tip.minus(way.times(1.35 * unit));
    List<Spot> head =
        List.of(tip, neck.plus(side.times(0.85 * unit)), neck.minus(side.times(0.85 * unit)));
    List<Spot> shaft = List.of(tail, neck.plus(way.times(0.1 * unit)));
    inks.add(Ink.line(Ink.Role.GROUND, 0.8 * unit, shaft));
    inks.add(Ink.ring(Ink.Role.GROUND, 0.4 * unit, head));
    inks.add(Ink.line(hidden ? Ink.Role.HIDDEN_MARK : Ink.Role.MARK, 0.46 * unit, shaft));
    inks.add(Ink.fill(Ink.Role.MARK, head));
  }

  /** An arrow round the segment, its near half, pushing the thumb side from the aspect. */
  private void turn(PlacedMark placed, Touch touch) {
    Frame frame = touch.frame();
    Vec push = touch.outward().times(-1);
    double radius =
        Flesh.skin(placed.mark().segment(), placed.digit(), placed.mark().along(), Aspect.RADIAL)
            + 0.7 * unit;
    // Angle from the thumb side, growing the way the push goes.
    double near =
        Math.toDegrees(
            Math.atan2(push.dot(camera.toViewer()), frame.radial().dot(camera.toViewer())));
    ArrayList<Spot> arc = new ArrayList<>();
    for (double angle = near - 105; angle <= near + 78; angle += 6) {
      double turned = Math.toRadians(angle);
      Vec out =
          frame.radial().times(Math.cos(turned)).plus(push.times(Math.sin(turned))).times(radius);
      arc.add(camera.see(touch.bone().plus(out)));
    }
    Spot tip = arc.get(arc.size() - 1);
    Spot way = tip.minus(arc.get(arc.size() - 3)).unit();
    inks.add(Ink.line(Ink.Role.GROUND, 0.8 * unit, arc));
    inks.add(Ink.line(Ink.Role.MARK, 0.46 * unit, arc));
    head(tip.plus(way.times(0.2 * unit)), tip.plus(way.times(1.5 * unit)), false);
  }

  private void palpate(Touch touch) {
    Spot at = camera.see(touch.skin());
    boolean hidden = touch.facing(camera) < HIDDEN;
    List<Spot> ring = Curve.circle(at, 0.75 * unit);
    inks.add(Ink.fill(Ink.Role.GROUND, Curve.circle(at, 0.9 * unit)));
    inks.add(Ink.ring(hidden ? Ink.Role.HIDDEN_MARK : Ink.Role.MARK, 0.24 * unit, ring));
    inks.add(Ink.fill(Ink.Role.MARK, Curve.circle(at, 0.27 * unit)));
  }

  private void axis(Spot at) {
    inks.add(Ink.fill(Ink.Role.GROUND, Curve.circle(at, 0.85 * unit)));
    inks.add(Ink.ring(Ink.Role.MARK, 0.2 * unit, Curve.circle(at, 0.7 * unit)));
    for (Spot way : List.of(new Spot(1, 0), new Spot(0, 1))) {
      inks.add(
          Ink.line(
              Ink.Role.MARK,
              0.18 * unit,
              List.of(at.plus(way.times(1.05 * unit)), at.minus(way.times(1.05 * unit)))));
    }
  }

  private void goniometerArm(PlacedMark axis, PlacedMark arm) {
    Touch touch = Touch.of(skeleton, axis);
    Spot at = camera.see(touch.skin());
    Vec direction = direction(skeleton, touch.bone(), arm);
    Spot way = seen(direction);
    Spot end = at.plus(way.times(Math.max(6.5 * unit, reach(touch.bone(), arm))));
    Spot along = end.minus(at).unit();
    Spot side = along.square().times(0.42 * unit);
    ArrayList<Spot> bar = new ArrayList<>(List.of(at.plus(side), at.minus(side), end.minus(side)));
    if (arm.mark().kind() == Mark.Kind.MOVING_ARM) {
      bar.add(end.plus(along.times(1.1 * unit)));
    }
    bar.add(end.plus(side));
    inks.add(Ink.fill(Ink.Role.GROUND, bar));
    inks.add(Ink.ring(Ink.Role.MARK, 0.16 * unit, bar));
    if (arm.mark().kind() == Mark.Kind.MOVING_ARM) {
      inks.add(Ink.line(Ink.Role.MARK, 0.1 * unit, List.of(at, end)));
    }
  }

  /** Shown along most of its segment, where the segment is longer than the picture's marks. */
  private double reach(Vec axis, PlacedMark arm) {
    if (arm.mark().aspect() != Aspect.END) {
      return 0;
    }
    Bone bone = skeleton.bone(arm.mark().segment(), arm.digit());
    double far = Math.max(bone.to().minus(axis).length(), bone.from().minus(axis).length());
    return Math.min(0.8 * far, 11 * unit);
  }

  /** Which way a goniometer's arm points from the axis. */
  static Vec direction(Skeleton skeleton, Vec axis, PlacedMark arm) {
    Bone bone = skeleton.bone(arm.mark().segment(), arm.digit());
    if (arm.mark().aspect() != Aspect.END) {
      return Touch.face(bone.frame(arm.mark().along()), arm.mark().aspect());
    }
    boolean distal = bone.to().minus(axis).length() > bone.from().minus(axis).length();
    return bone.start().distal().times(distal ? 1 : -1);
  }
}
