package styloid.custom;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.Side;

/**
 * A name of a formula, with what it stands for and for which side.
 *
 * @param name as written, such as {@code span_other}
 */
record Reference(String name, Subject subject, Which which) {

  /** Which side's value is meant. */
  enum Which {
    /** That of the result's own side; all sides where the result has none. */
    OWN,
    OTHER,
    RIGHT,
    LEFT
  }

  /** One value it stands for: a side and digit of the subject. */
  record Place(Side side, Digit digit) {}

  /**
   * The values it stands for in a result of this side and digit, without trials; empty when the
   * subject has none there.
   */
  Optional<List<Place>> places(Side side, Digit digit) {
    Set<Side> sides = sides(side);
    Set<Digit> digits = digits(digit);
    if (sides.isEmpty() || digits.isEmpty()) {
      return Optional.empty();
    }
    ArrayList<Place> places = new ArrayList<>();
    for (Side one : EnumSet.copyOf(sides)) {
      for (Digit each : EnumSet.copyOf(digits)) {
        places.add(new Place(one, each));
      }
    }
    return Optional.of(places);
  }

  private Set<Side> sides(Side side) {
    Set<Side> all = subject.sides();
    Side wanted =
        switch (which) {
          case OWN -> side;
          case OTHER -> side.opposite();
          case RIGHT -> Side.RIGHT;
          case LEFT -> Side.LEFT;
        };
    if (which == Which.OWN && all.contains(Side.UNSIDED)) {
      return Set.of(Side.UNSIDED);
    }
    if (which == Which.OWN && side == Side.UNSIDED) {
      return all;
    }
    return wanted != Side.UNSIDED && all.contains(wanted) ? Set.of(wanted) : Set.of();
  }

  private Set<Digit> digits(Digit digit) {
    Set<Digit> all = subject.digits();
    if (all.contains(Digit.NONE)) {
      return Set.of(Digit.NONE);
    }
    return digit == Digit.NONE ? all : all.contains(digit) ? Set.of(digit) : Set.of();
  }

  /** How many values it stands for in a result of this side and digit. */
  int count(Side side, Digit digit) {
    return places(side, digit).map(List::size).orElse(0) * subject.trials();
  }
}
