package styloid.figure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import styloid.model.Digit;
import styloid.spi.Mark.Aspect;
import styloid.spi.Mark.Segment;

/** The limb with its outline, nails and creases, farther parts first. */
final class LimbInks {
  private final Skeleton skeleton;
  private final Camera camera;
  private final List<Part> parts;
  private final Map<Part, List<List<Spot>>> outlines = new IdentityHashMap<>();
  private double line;

  LimbInks(Skeleton skeleton, Camera camera) {
    this.skeleton = skeleton;
    this.camera = camera;
    this.parts = Flesh.of(skeleton);
    parts.forEach(part -> outlines.put(part, part.outlines(camera)));
  }

  /**
   * The limb from the farthest part to the nearest.
   *
   * @param width of the outline, in metres
   */
  List<Ink> inks(double width) {
    line = width;
    ArrayList<Ink> inks = new ArrayList<>();
    parts.stream()
        .sorted(Comparator.comparingDouble((Part part) -> part.depth(camera)))
        .forEach(part -> part(part, inks));
    return inks;
  }

  private void part(Part part, List<Ink> inks) {
    List<Joined> joined = neighbours(part);
    outlines.get(part).forEach(outline -> edges(outline, joined, inks));
    outlines.get(part).forEach(outline -> inks.add(Ink.fill(Ink.Role.SKIN, outline)));
    Details.of(skeleton, camera, part, line, inks);
  }

  /** A neighbour and the joint shared with it. */
  private record Joined(Spot joint, double reach, List<List<Spot>> outlines) {
    boolean hides(Spot spot) {
      return spot.minus(joint).length() < reach
          && outlines.stream().anyMatch(outline -> Outline.holds(outline, spot, -0.0006));
    }
  }

  private List<Joined> neighbours(Part part) {
    ArrayList<Joined> joined = new ArrayList<>();
    for (Part other : parts) {
      Segment before = proximal(part.segment());
      if (other.segment() == before && (sameFinger(part, other) || before == Segment.HAND)) {
        joined.add(joined(part, other));
      } else if (proximal(other.segment()) == part.segment()
          && (sameFinger(part, other) || part.segment() == Segment.HAND)) {
        joined.add(joined(other, other, part));
      }
    }
    return joined;
  }

  private static boolean sameFinger(Part one, Part other) {
    return one.digit() == other.digit();
  }

  private Joined joined(Part distal, Part shown) {
    return joined(distal, shown, distal);
  }

  private Joined joined(Part distal, Part shown, Part drawn) {
    Bone bone = skeleton.bone(distal.segment(), distal.digit());
    double radius = Flesh.skin(distal.segment(), distal.digit(), 0, Aspect.RADIAL);
    double reach = drawn.segment() == Segment.THUMB_METACARPAL ? radius * 2.4 : radius * 1.7;
    return new Joined(camera.see(bone.from()), reach, outlines.get(shown));
  }

  private static Segment proximal(Segment segment) {
    return switch (segment) {
      case FOREARM -> Segment.UPPER_ARM;
      case HAND -> Segment.FOREARM;
      case PROXIMAL_PHALANX, THUMB_METACARPAL -> Segment.HAND;
      case MIDDLE_PHALANX -> Segment.PROXIMAL_PHALANX;
      case DISTAL_PHALANX -> Segment.MIDDLE_PHALANX;
      case THUMB_PROXIMAL_PHALANX -> Segment.THUMB_METACARPAL;
      case THUMB_DISTAL_PHALANX -> Segment.THUMB_PROXIMAL_PHALANX;
      default -> null;
    };
  }

  /** Runs of the outline that no neighbour hides at the joint. */
  private void edges(List<Spot> outline, List<Joined> joined, List<Ink> inks) {
    ArrayList<Spot> run = new ArrayList<>();
    Spot from = outline.get(outline.size() - 1);
    for (Spot to : outline) {
      Spot middle = from.plus(to).times(0.5);
      boolean hidden = joined.stream().anyMatch(j -> j.hides(middle));
      if (hidden) {
        flush(run, inks);
      } else {
        if (run.isEmpty()) {
          run.add(from);
        }
        run.add(to);
      }
      from = to;
    }
    flush(run, inks);
  }

  private void flush(ArrayList<Spot> run, List<Ink> inks) {
    if (run.size() > 1) {
      inks.add(Ink.line(Ink.Role.SKIN_LINE, line * 2, run));
    }
    run.clear();
  }

  /** Points that must be in sight for a picture of this part of the limb. */
  List<Spot> outlineFrom(Segment first, double along) {
    ArrayList<Spot> spots = new ArrayList<>();
    for (Part part : parts) {
      if (part.segment().compareTo(first) < 0) {
        continue;
      }
      if (part.segment() == first && along > 0) {
        Bone bone = skeleton.bone(first, Digit.NONE);
        double radius = Flesh.skin(first, Digit.NONE, along, Aspect.RADIAL);
        List<Ball> stretch = List.of(new Ball(bone.at(along), radius), new Ball(bone.to(), radius));
        spots.addAll(Outline.around(stretch, camera));
      } else {
        outlines.get(part).forEach(spots::addAll);
      }
    }
    return spots;
  }
}
