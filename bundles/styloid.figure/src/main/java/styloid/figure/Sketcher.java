package styloid.figure;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import styloid.model.Digit;
import styloid.model.Region;
import styloid.spi.Mark;
import styloid.spi.Mark.Segment;
import styloid.spi.Position;
import styloid.spi.Position.Support;

/** Makes the drawing of a subject: table, body, limb, goniometer and arc, marks. */
public final class Sketcher {
  private static final double TABLE_THICK = 0.03;

  private final Subject subject;
  private final Skeleton skeleton;
  private final Camera camera;
  private final Position.Body body;

  private Sketcher(Subject subject) {
    this.subject = subject;
    this.skeleton = Skeleton.of(subject.pose());
    this.camera = Views.camera(subject, skeleton);
    this.body = subject.position().map(Position::body).orElse(Position.Body.SITTING);
  }

  public static Sketch draw(Subject subject) {
    return new Sketcher(subject).draw();
  }

  private Sketch draw() {
    boolean withBody = Views.ofBody(subject.region());
    Box limb = Box.around(focus());
    double unit = Math.max(limb.width() / 1.45, limb.height()) / 17;
    double line = unit * 0.11;
    ArrayList<Ink> inks = new ArrayList<>();
    Table.of(skeleton, subject.position(), camera)
        .ifPresent(
            table -> {
              inks.add(Ink.fill(Ink.Role.TABLE, table));
              inks.add(Ink.ring(Ink.Role.TABLE_LINE, line, table));
            });
    if (withBody) {
      body(inks, line);
    }
    LimbInks limbInks = new LimbInks(skeleton, camera, line);
    inks.addAll(limbInks.inks());
    Optional<ArcInks> arcs = ArcInks.of(subject, camera, unit);
    ArrayList<Ink> over = new ArrayList<>();
    arcs.ifPresent(a -> over.addAll(a.inks()));
    over.addAll(new MarkInks(skeleton, camera, unit).inks(subject.marks()));
    inks.addAll(over);
    List<Sketch.Note> notes = arcs.map(ArcInks::notes).orElse(List.of());
    ArrayList<Spot> seen = new ArrayList<>();
    over.forEach(ink -> seen.addAll(ink.points()));
    notes.forEach(note -> seen.addAll(Curve.circle(note.at(), 1.6 * unit)));
    Box frame = seen.isEmpty() ? limb : limb.with(Box.around(seen));
    return new Sketch(inks, notes, frame.grown(unit * 0.6), unit, kinds());
  }

  private EnumSet<Mark.Kind> kinds() {
    return subject.marks().stream()
        .map(placed -> placed.mark().kind())
        .collect(Collectors.toCollection(() -> EnumSet.noneOf(Mark.Kind.class)));
  }

  private void body(List<Ink> inks, double line) {
    for (List<Ball> piece : Body.pieces(body, skeleton)) {
      inks.add(Ink.ring(Ink.Role.BODY_LINE, line * 2, Outline.around(piece, camera)));
    }
    for (List<Ball> piece : Body.pieces(body, skeleton)) {
      inks.add(Ink.fill(Ink.Role.BODY, Outline.around(piece, camera)));
    }
    Bone blade = skeleton.bone(Segment.SHOULDER_BLADE, Digit.NONE);
    if (blade.start().volar().dot(camera.toViewer()) < -0.2) {
      Frame frame = blade.start();
      List<Spot> edge =
          List.of(
              camera.see(frame.at(blade.from(), 0.0, 0, 0.02)),
              camera.see(frame.at(blade.from(), -0.005, 0, -0.075)),
              camera.see(frame.at(blade.from(), 0.08, 0, -0.078)),
              camera.see(frame.at(blade.to(), 0, 0, -0.02)),
              camera.see(frame.at(blade.from(), 0.09, 0, 0.012)));
      inks.add(Ink.ring(Ink.Role.BODY_LINE, line, Curve.through(edge)));
    }
  }

  /** What must be in sight, by the part of the limb the test is about. */
  private List<Spot> focus() {
    LimbInks limb = new LimbInks(skeleton, camera, 0);
    Region region = subject.region();
    ArrayList<Spot> spots = new ArrayList<>();
    switch (region) {
      case SHOULDER, LIMB -> {
        spots.addAll(limb.outlineFrom(Segment.UPPER_ARM, 0));
        Body.pieces(Position.Body.STANDING, skeleton).stream()
            .filter(piece -> piece.stream().allMatch(ball -> ball.centre().y() > -0.2))
            .forEach(piece -> spots.addAll(Outline.around(piece, camera)));
      }
      case ELBOW -> spots.addAll(limb.outlineFrom(Segment.UPPER_ARM, 0));
      case FOREARM -> spots.addAll(limb.outlineFrom(Segment.UPPER_ARM, 0.7));
      case WRIST -> spots.addAll(limb.outlineFrom(Segment.FOREARM, 0.3));
      case FINGERS, THUMB, HAND -> spots.addAll(limb.outlineFrom(Segment.FOREARM, 0.78));
    }
    return spots;
  }

  /** The table as seen, where there is one. */
  static final class Table {
    private Table() {}

    static Optional<List<Spot>> of(
        Skeleton skeleton, Optional<Position> position, Camera camera) {
      return position.flatMap(p -> corners(skeleton, p)).map(box -> Outline.hull(
          box.stream().map(camera::see).toList()));
    }

    private static Optional<List<Vec>> corners(Skeleton skeleton, Position position) {
      Vec up = Views.up(position.body());
      if (up.y() < 0.5) {
        double edge = position.support() == Support.UPPER_ARM_ON_TABLE ? -0.45 : -0.30;
        double side = position.body() == Position.Body.SIDE_LYING ? 0.25 : 0.30;
        double top = lowest(Body.pieces(Position.Body.STANDING, skeleton).stream()
            .filter(piece -> piece.stream().allMatch(b -> b.centre().y() < 0.02)).toList(), up);
        return Optional.of(
            up.x() < -0.5
                ? box(new Vec(-top - 0, 0.36, side), new Vec(-top + TABLE_THICK, -1.4, -side))
                : box(
                    new Vec(edge, 0.36, up.z() * top),
                    new Vec(0.30, -1.4, up.z() * (top - TABLE_THICK))));
      }
      return switch (position.support()) {
        case FOREARM_ON_TABLE -> Optional.of(under(skeleton, Segment.FOREARM, 0.02, -0.012));
        case HAND_ON_TABLE -> Optional.of(under(skeleton, Segment.FOREARM, 0.02, 0.26));
        case UPPER_ARM_ON_TABLE -> Optional.of(under(skeleton, Segment.UPPER_ARM, -0.06, 0.02));
        case FREE, ELBOW_BENT, HELD -> Optional.empty();
      };
    }

    private static double lowest(List<List<Ball>> pieces, Vec up) {
      return pieces.stream()
          .flatMap(List::stream)
          .mapToDouble(ball -> ball.centre().dot(up) - ball.radius())
          .min()
          .orElse(0);
    }

    /** A level slab below a segment, from before its proximal end to beyond its distal end. */
    private static List<Vec> under(
        Skeleton skeleton, Segment segment, double before, double beyond) {
      Bone bone = skeleton.bone(segment, Digit.NONE);
      Vec up = new Vec(0, 1, 0);
      double top =
          lowest(
              Flesh.of(skeleton).stream()
                  .filter(part -> part.segment() == segment)
                  .flatMap(part -> part.pieces().stream())
                  .toList(),
              up);
      Vec way = bone.to().minus(bone.from());
      Vec level = way.minus(up.times(way.dot(up)));
      Vec along = level.length() < 0.05 ? new Vec(0, 0, 1) : level.unit();
      Vec across = along.cross(up);
      ArrayList<Vec> corners = new ArrayList<>();
      for (Vec end :
          List.of(
              bone.from().minus(along.times(before)), bone.to().plus(along.times(beyond)))) {
        for (double side : new double[] {-0.16, 0.16}) {
          for (double height : new double[] {top, top - TABLE_THICK}) {
            Vec flat = end.minus(up.times(end.dot(up)));
            corners.add(flat.plus(across.times(side)).plus(up.times(height)));
          }
        }
      }
      return corners;
    }

    private static List<Vec> box(Vec one, Vec other) {
      ArrayList<Vec> corners = new ArrayList<>();
      for (double x : new double[] {one.x(), other.x()}) {
        for (double y : new double[] {one.y(), other.y()}) {
          for (double z : new double[] {one.z(), other.z()}) {
            corners.add(new Vec(x, y, z));
          }
        }
      }
      return corners;
    }
  }
}
