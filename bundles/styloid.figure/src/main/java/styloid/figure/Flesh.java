package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import styloid.model.Digit;
import styloid.spi.Mark.Aspect;
import styloid.spi.Mark.Segment;

/** Thickness of the limb over its bones: smooth, tapered, flat where the limb is flat. */
final class Flesh {
  private static final List<Digit> FINGERS =
      List.of(Digit.INDEX, Digit.MIDDLE, Digit.RING, Digit.LITTLE);

  /** Half width to the thumb side and half thickness, at places along a segment, in metres. */
  private record Section(double along, double width, double thickness) {}

  private static final List<Section> UPPER_ARM =
      List.of(
          new Section(-0.04, 0.050, 0.050),
          new Section(0.10, 0.056, 0.056),
          new Section(0.25, 0.053, 0.054),
          new Section(0.55, 0.046, 0.050),
          new Section(0.85, 0.040, 0.041),
          new Section(1.0, 0.040, 0.036));
  private static final List<Section> FOREARM =
      List.of(
          new Section(0, 0.040, 0.036),
          new Section(0.13, 0.045, 0.041),
          new Section(0.30, 0.044, 0.040),
          new Section(0.60, 0.036, 0.031),
          new Section(0.85, 0.029, 0.023),
          new Section(1.0, 0.028, 0.0205));
  private static final List<Section> HAND =
      List.of(
          new Section(0, 0.028, 0.0190),
          new Section(0.3, 0.034, 0.0165),
          new Section(0.7, 0.039, 0.0145),
          new Section(1.0, 0.041, 0.0125));
  private static final List<Section> PROXIMAL =
      List.of(
          new Section(0, 0.0108, 0.0112),
          new Section(0.5, 0.0096, 0.0096),
          new Section(1, 0.0096, 0.0092));
  private static final List<Section> MIDDLE =
      List.of(
          new Section(0, 0.0096, 0.0092),
          new Section(0.5, 0.0086, 0.0082),
          new Section(1, 0.0084, 0.0076));
  private static final List<Section> DISTAL =
      List.of(
          new Section(0, 0.0084, 0.0076),
          new Section(0.5, 0.0080, 0.0072),
          new Section(0.86, 0.0064, 0.0056));
  private static final List<Section> THUMB_METACARPAL =
      List.of(
          new Section(0, 0.0165, 0.0175),
          new Section(0.45, 0.0165, 0.0175),
          new Section(1, 0.0128, 0.0125));
  private static final List<Section> THUMB_PROXIMAL =
      List.of(
          new Section(0, 0.0128, 0.0125),
          new Section(0.5, 0.0108, 0.0105),
          new Section(1, 0.0115, 0.0102));
  private static final List<Section> THUMB_DISTAL =
      List.of(
          new Section(0, 0.0115, 0.0102),
          new Section(0.5, 0.0112, 0.0092),
          new Section(0.84, 0.0084, 0.0066));

  private Flesh() {}

  /** All parts of the limb, proximal to distal. */
  static List<Part> of(Skeleton skeleton) {
    ArrayList<Part> parts = new ArrayList<>();
    for (Segment segment : List.of(Segment.UPPER_ARM, Segment.FOREARM)) {
      parts.add(part(skeleton, segment, Digit.NONE, 1));
    }
    parts.add(palm(skeleton));
    for (int i = 0; i < FINGERS.size(); i++) {
      double girth = Proportions.FINGERS.get(i).girth();
      for (Segment segment :
          List.of(Segment.PROXIMAL_PHALANX, Segment.MIDDLE_PHALANX, Segment.DISTAL_PHALANX)) {
        parts.add(part(skeleton, segment, FINGERS.get(i), girth));
      }
    }
    for (Segment segment :
        List.of(
            Segment.THUMB_METACARPAL,
            Segment.THUMB_PROXIMAL_PHALANX,
            Segment.THUMB_DISTAL_PHALANX)) {
      parts.add(part(skeleton, segment, Digit.NONE, 1));
    }
    return parts;
  }

  private static Part part(Skeleton skeleton, Segment segment, Digit digit, double girth) {
    Bone bone = skeleton.bone(segment, digit);
    return new Part(
        segment,
        digit,
        sections(segment).stream().map(section -> slice(bone, section, girth)).toList());
  }

  /** A round slice is one ball, a flat one two side by side. */
  private static List<Ball> slice(Bone bone, Section section, double girth) {
    Vec centre = bone.at(section.along());
    double radius = Math.min(section.width(), section.thickness()) * girth;
    double apart = (Math.max(section.width(), section.thickness()) * girth) - radius;
    if (apart < 0.0005) {
      return List.of(new Ball(centre, radius));
    }
    Frame frame = bone.frame(section.along());
    Vec wide = section.width() > section.thickness() ? frame.radial() : frame.volar();
    return List.of(
        new Ball(centre.plus(wide.times(apart)), radius),
        new Ball(centre.minus(wide.times(apart)), radius));
  }

  /** Wrist, bases of the metacarpals, then the four knuckles: the last slice follows cupping. */
  private static Part palm(Skeleton skeleton) {
    Bone hand = skeleton.bone(Segment.HAND, Digit.NONE);
    ArrayList<List<Ball>> slices = new ArrayList<>();
    slices.add(slice(hand, HAND.get(0), 1));
    slices.add(slice(hand, HAND.get(1), 1));
    slices.add(knuckles(skeleton, 0.72, 0.0140));
    slices.add(knuckles(skeleton, 1.0, 0.0122));
    return new Part(Segment.HAND, Digit.NONE, slices);
  }

  private static List<Ball> knuckles(Skeleton skeleton, double along, double radius) {
    return FINGERS.stream()
        .map(f -> new Ball(skeleton.bone(Segment.HAND, f).at(along), radius))
        .toList();
  }

  private static List<Section> sections(Segment segment) {
    return switch (segment) {
      case UPPER_ARM -> UPPER_ARM;
      case FOREARM -> FOREARM;
      case HAND -> HAND;
      case PROXIMAL_PHALANX -> PROXIMAL;
      case MIDDLE_PHALANX -> MIDDLE;
      case DISTAL_PHALANX -> DISTAL;
      case THUMB_METACARPAL -> THUMB_METACARPAL;
      case THUMB_PROXIMAL_PHALANX -> THUMB_PROXIMAL;
      case THUMB_DISTAL_PHALANX -> THUMB_DISTAL;
      case SHOULDER_BLADE -> List.of(new Section(0, 0.010, 0.012), new Section(1, 0.010, 0.014));
      case TRUNK -> List.of(new Section(0, 0.155, 0.085), new Section(1, 0.150, 0.095));
    };
  }

  /** Distance from the bone to the skin on one face. */
  static double skin(Segment segment, Digit digit, double along, Aspect aspect) {
    if (aspect == Aspect.END) {
      return 0;
    }
    boolean wide = aspect == Aspect.RADIAL || aspect == Aspect.ULNAR;
    if (segment == Segment.HAND && digit != Digit.NONE) {
      return 0.0130;
    }
    int finger = FINGERS.indexOf(digit);
    double girth = finger < 0 ? 1 : Proportions.FINGERS.get(finger).girth();
    List<Section> sections = sections(segment);
    Section before = sections.get(0);
    for (Section after : sections) {
      if (along <= after.along()) {
        double span = after.along() - before.along();
        double share = span == 0 ? 0 : (along - before.along()) / span;
        double low = wide ? before.width() : before.thickness();
        double high = wide ? after.width() : after.thickness();
        return (low + (high - low) * share) * girth;
      }
      before = after;
    }
    return (wide ? before.width() : before.thickness()) * girth;
  }
}
