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
import styloid.spi.Picture;
import styloid.spi.Position;

/** Makes the drawing of a subject: table, body, limb, goniometer and arc, marks. */
public final class Sketcher {
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
    LimbInks limbInks = new LimbInks(skeleton, camera);
    Box limb = Box.around(focus(limbInks));
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
    inks.addAll(limbInks.inks(line));
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
    List<List<Ball>> trunk = Body.pieces(body, skeleton);
    boolean fromOverhead = Math.abs(camera.toViewer().y()) > 0.7;
    if (fromOverhead) {
      silhouette(trunk, inks, line);
      silhouette(Body.head(), inks, line);
    } else {
      silhouette(Lists.joined(trunk, Body.head()), inks, line);
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

  /** One quiet shape without lines inside. */
  private void silhouette(List<List<Ball>> pieces, List<Ink> inks, double line) {
    List<List<Spot>> outlines =
        pieces.stream().map(piece -> Outline.around(piece, camera)).toList();
    outlines.forEach(o -> inks.add(Ink.ring(Ink.Role.BODY_LINE, line * 2, o)));
    outlines.forEach(o -> inks.add(Ink.fill(Ink.Role.BODY, o)));
  }

  private boolean onDigitsAlone() {
    return !subject.marks().isEmpty()
        && subject.marks().stream()
            .map(placed -> placed.mark().segment())
            .allMatch(
                s ->
                    s == Segment.PROXIMAL_PHALANX
                        || s == Segment.MIDDLE_PHALANX
                        || s == Segment.DISTAL_PHALANX);
  }

  /** What must be in sight, by the part of the limb the test is about. */
  private List<Spot> focus(LimbInks limb) {
    Region region = subject.region();
    ArrayList<Spot> spots = new ArrayList<>();
    switch (region) {
      case SHOULDER, LIMB -> {
        spots.addAll(limb.outlineFrom(Segment.UPPER_ARM, 0));
        Lists.joined(Body.pieces(Position.Body.STANDING, skeleton), Body.head()).stream()
            .filter(piece -> piece.stream().allMatch(ball -> ball.centre().y() > -0.2))
            .forEach(piece -> spots.addAll(Outline.around(piece, camera)));
      }
      case ELBOW -> spots.addAll(limb.outlineFrom(Segment.UPPER_ARM, 0));
      case FOREARM ->
          spots.addAll(
              subject.picture().view() == Picture.View.FINGERTIPS
                  ? limb.outlineFrom(Segment.FOREARM, 0.8)
                  : limb.outlineFrom(Segment.UPPER_ARM, 0.7));
      case WRIST -> spots.addAll(limb.outlineFrom(Segment.FOREARM, 0.3));
      case FINGERS, THUMB, HAND ->
          spots.addAll(
              onDigitsAlone()
                  ? limb.outlineFrom(Segment.HAND, 0.3)
                  : limb.outlineFrom(Segment.FOREARM, 0.78));
    }
    return spots;
  }
}
