package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.figure.Subject.PlacedMark;
import styloid.spi.Mark;
import styloid.spi.Sweep;

/**
 * Measured angles as an arc about the goniometer's axis: from one measured end to the other, or
 * from zero where only one end is there; what is missing to the reference beyond it.
 */
final class ArcInks {
  private static final double STEP = 4;

  private final Subject subject;
  private final double unit;
  private final Spot at;
  private final Turn turn;
  private final List<Ink> inks = new ArrayList<>();
  private final List<Sketch.Note> notes = new ArrayList<>();

  private ArcInks(Subject subject, Camera camera, double unit, PlacedMark axis, PlacedMark arm) {
    this.subject = subject;
    this.unit = unit;
    this.at = camera.see(Touch.of(Skeleton.of(subject.pose()), axis).skin());
    this.turn = Turn.of(subject, camera, axis, arm);
  }

  /** Nothing where no angle was measured or the picture has no axis and moving arm. */
  static Optional<ArcInks> of(Subject subject, Camera camera, double unit) {
    Optional<PlacedMark> axis = first(subject, Mark.Kind.AXIS);
    Optional<PlacedMark> arm = first(subject, Mark.Kind.MOVING_ARM);
    if (subject.readings().isEmpty() || axis.isEmpty() || arm.isEmpty()) {
      return Optional.empty();
    }
    ArcInks arcs = new ArcInks(subject, camera, unit, axis.get(), arm.get());
    arcs.draw();
    return Optional.of(arcs);
  }

  private static Optional<PlacedMark> first(Subject subject, Mark.Kind kind) {
    return subject.marks().stream().filter(m -> m.mark().kind() == kind).findFirst();
  }

  List<Ink> inks() {
    return inks;
  }

  List<Sketch.Note> notes() {
    return notes;
  }

  private void draw() {
    Reading first = subject.readings().get(0);
    Sweep sweep = first.sweep();
    double low = sweep.joint(0);
    double high = low;
    if (subject.readings().size() > 1) {
      low = subject.readings().stream().mapToDouble(ArcInks::stands).min().orElse(low);
      high = subject.readings().stream().mapToDouble(ArcInks::stands).max().orElse(high);
    } else {
      low = Math.min(low, stands(first));
      high = Math.max(high, stands(first));
    }
    inks.add(Ink.line(Ink.Role.ZERO, 0.14 * unit, ray(sweep.joint(0), 0, 7.2)));
    List<Spot> arc = arc(low, high, 4.4);
    inks.add(Ink.fill(Ink.Role.ARC, Lists.joined(List.of(at), arc)));
    inks.add(Ink.line(Ink.Role.MARK, 0.22 * unit, arc));
    double radius = 6.2;
    for (Reading reading : subject.readings()) {
      ends(reading, radius);
      // Numbers of a narrow arc stand one beyond the other.
      radius = high - low < 50 ? 8.6 : radius;
    }
  }

  private void ends(Reading reading, double radius) {
    double stands = stands(reading);
    inks.add(Ink.line(Ink.Role.MARK, 0.18 * unit, ray(stands, 3.6, 5.2)));
    double inside = reading.sweep().reversed() ? 1 : -1;
    notes.add(
        new Sketch.Note(
            spot(stands + 14 * inside, radius), Sketch.Meaning.MEASURED, reading.degrees()));
    double missing = reading.shortOf().orElse(0);
    if (missing < 0.5) {
      return;
    }
    double reference = reading.sweep().joint(reading.degrees() + missing);
    List<Spot> inner = arc(Math.min(stands, reference), Math.max(stands, reference), 3.2);
    ArrayList<Spot> band = new ArrayList<>(inner);
    List<Spot> outer = arc(Math.min(stands, reference), Math.max(stands, reference), 5.0);
    for (int i = outer.size() - 1; i >= 0; i--) {
      band.add(outer.get(i));
    }
    inks.add(Ink.fill(Ink.Role.MISSING, band));
    inks.add(Ink.ring(Ink.Role.MARK, 0.1 * unit, band));
    inks.add(Ink.line(Ink.Role.REFERENCE, 0.26 * unit, ray(reference, 2.6, 6.0)));
    notes.add(new Sketch.Note(spot(reference - 6 * inside, 7.4), Sketch.Meaning.MISSING, missing));
  }

  private static double stands(Reading reading) {
    return reading.sweep().joint(reading.degrees());
  }

  private List<Spot> ray(double joint, double from, double to) {
    return List.of(spot(joint, from), spot(joint, to));
  }

  private List<Spot> arc(double low, double high, double radius) {
    ArrayList<Spot> arc = new ArrayList<>();
    int steps = Math.max(1, (int) Math.ceil((high - low) / STEP));
    for (int i = 0; i <= steps; i++) {
      arc.add(spot(low + (high - low) * i / steps, radius));
    }
    return arc;
  }

  /** Where the moving arm would point with the joint at this angle. */
  private Spot spot(double joint, double radius) {
    return at.plus(turn.way(joint).times(radius * unit));
  }

  /**
   * Way of the moving arm in the picture at any angle of the joint. A joint turns its arm about a
   * fixed line, so three angles give all the others.
   */
  private record Turn(Spot middle, Spot cosine, Spot sine) {
    static Turn of(Subject subject, Camera camera, PlacedMark axis, PlacedMark arm) {
      Spot zero = way(subject, camera, axis, arm, 0);
      Spot square = way(subject, camera, axis, arm, 90);
      Spot over = way(subject, camera, axis, arm, 180);
      Spot middle = zero.plus(over).times(0.5);
      return new Turn(middle, zero.minus(middle), square.minus(middle));
    }

    private static Spot way(
        Subject subject, Camera camera, PlacedMark axis, PlacedMark arm, double joint) {
      Sweep sweep = subject.readings().get(0).sweep();
      Sweep plain = new Sweep(sweep.item(), sweep.joint(), false, 0, 0, Optional.empty());
      Skeleton posed = Skeleton.of(Subject.at(subject.pose(), plain, joint, subject.digit()));
      Vec way = MarkInks.direction(posed, Touch.of(posed, axis).bone(), arm);
      return camera.see(way).minus(camera.see(Vec.ZERO));
    }

    Spot way(double joint) {
      double angle = Math.toRadians(joint);
      return middle.plus(cosine.times(Math.cos(angle))).plus(sine.times(Math.sin(angle)));
    }
  }
}
