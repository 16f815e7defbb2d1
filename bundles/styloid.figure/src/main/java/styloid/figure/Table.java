package styloid.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Digit;
import styloid.spi.Mark.Segment;
import styloid.spi.Position;
import styloid.spi.Position.Support;

/** The table as seen, where there is one. */
final class Table {
  private static final double TABLE_THICK = 0.03;

  private Table() {}

  static Optional<List<Spot>> of(Skeleton skeleton, Optional<Position> position, Camera camera) {
    return position
        .flatMap(p -> corners(skeleton, p))
        .map(box -> Outline.hull(box.stream().map(camera::see).toList()));
  }

  private static Optional<List<Vec>> corners(Skeleton skeleton, Position position) {
    Vec up = Views.up(position.body());
    if (up.y() < 0.5) {
      double edge = position.support() == Support.UPPER_ARM_ON_TABLE ? -0.45 : -0.30;
      double side = position.body() == Position.Body.SIDE_LYING ? 0.25 : 0.30;
      double top =
          lowest(
              Body.pieces(Position.Body.STANDING, skeleton).stream()
                  .filter(piece -> piece.stream().allMatch(b -> b.centre().y() < 0.02))
                  .toList(),
              up);
      return Optional.of(
          up.x() < -0.5
              ? box(new Vec(-top, 0.36, side), new Vec(-top + TABLE_THICK, -1.4, -side))
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
  private static List<Vec> under(Skeleton skeleton, Segment segment, double before, double beyond) {
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
        List.of(bone.from().minus(along.times(before)), bone.to().plus(along.times(beyond)))) {
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
