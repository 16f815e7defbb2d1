package styloid.grading;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.grading.Observed.Felt;
import styloid.grading.Observed.Hold;
import styloid.grading.Observed.Observation;
import styloid.grading.Observed.Range;
import styloid.grading.Observed.Reduced;

/**
 * The grade as a pure decision over observations. Whole grades: Medical Research Council 1976,
 * Memorandum 45, with range and hold as in the trade; plus and minus: the teaching scale. See
 * docs/rules/grade.md.
 */
final class GradeRule {
  /** Changes whenever the same observations may come to another grade. */
  static final String VERSION = "1";

  private GradeRule() {}

  static Decision decide(Observed seen, Scheme scheme, Criteria criteria) {
    Optional<Decision.Contradiction> contradiction = contradiction(seen, criteria);
    if (contradiction.isPresent()) {
      return contradiction.get();
    } else if (seen.range().isEmpty()) {
      return new Decision.Needs(Observation.RANGE);
    }
    Range range = seen.range().get();
    if (range == Range.FULL) {
      return held(seen, scheme);
    }
    return criteria == Criteria.RANGE_ONLY
        ? rangeOnly(range, seen, scheme)
        : belowFull(range, seen, scheme);
  }

  private static Decision held(Observed seen, Scheme scheme) {
    if (seen.hold().isEmpty()) {
      return seen.withheld()
          ? new Decision.Given(Grade.AT_LEAST_3)
          : new Decision.Needs(Observation.HOLD);
    }
    boolean whole = scheme == Scheme.WHOLE;
    return new Decision.Given(
        switch (seen.hold().get()) {
          case STRONG -> Grade.G5;
          case MODERATE_TO_STRONG -> whole ? Grade.G4 : Grade.G4_PLUS;
          case MODERATE -> Grade.G4;
          case SLIGHT_TO_MODERATE -> whole ? Grade.G4 : Grade.G4_MINUS;
          case SLIGHT, YIELDED -> whole ? Grade.G4 : Grade.G3_PLUS;
          case GAVE_WAY -> Grade.G3;
          case NOT_GIVEN -> Grade.AT_LEAST_3;
        });
  }

  private static Decision rangeOnly(Range range, Observed seen, Scheme scheme) {
    if (range == Range.NONE) {
      return felt(seen);
    }
    boolean half = range == Range.MORE_THAN_HALF;
    return new Decision.Given(half || scheme == Scheme.WHOLE ? Grade.G2 : Grade.G2_MINUS);
  }

  private static Decision belowFull(Range range, Observed seen, Scheme scheme) {
    boolean whole = scheme == Scheme.WHOLE;
    if (!whole && range == Range.MORE_THAN_HALF) {
      return new Decision.Given(Grade.G3_MINUS);
    } else if (!whole && range == Range.LESS_THAN_HALF) {
      return new Decision.Given(Grade.G2_PLUS);
    } else if (seen.reduced().isEmpty()) {
      return new Decision.Needs(Observation.REDUCED);
    }
    return switch (seen.reduced().get()) {
      case FULL -> new Decision.Given(Grade.G2);
      // motion seen is contraction enough, so nothing more is asked
      case PART -> new Decision.Given(whole ? Grade.G1 : Grade.G2_MINUS);
      case NONE -> felt(seen);
    };
  }

  private static Decision felt(Observed seen) {
    return seen.contraction()
        .<Decision>map(f -> new Decision.Given(f == Felt.YES ? Grade.G1 : Grade.G0))
        .orElse(new Decision.Needs(Observation.CONTRACTION));
  }

  /** The first two observations that cannot both be right. */
  private static Optional<Decision.Contradiction> contradiction(Observed seen, Criteria criteria) {
    Optional<Reduced> reduced =
        criteria == Criteria.GRAVITY ? seen.reduced() : Optional.<Reduced>empty();
    boolean held = seen.hold().filter(Hold::held).isPresent();
    boolean feltNothing = seen.contraction().filter(f -> f == Felt.NO).isPresent();
    boolean moved = seen.range().filter(r -> r != Range.NONE).isPresent();
    boolean movedReduced = reduced.filter(r -> r != Reduced.NONE).isPresent();
    if (held && seen.range().filter(r -> r != Range.FULL).isPresent()) {
      return both(Observation.RANGE, Observation.HOLD);
    } else if (reduced.isPresent()
        && seen.range().isPresent()
        && !reaches(reduced.get(), seen.range().get())) {
      return both(Observation.RANGE, Observation.REDUCED);
    } else if (held && reduced.filter(r -> r != Reduced.FULL).isPresent()) {
      return both(Observation.HOLD, Observation.REDUCED);
    } else if (feltNothing && moved) {
      return both(Observation.RANGE, Observation.CONTRACTION);
    } else if (feltNothing && held) {
      return both(Observation.HOLD, Observation.CONTRACTION);
    } else if (feltNothing && movedReduced) {
      return both(Observation.REDUCED, Observation.CONTRACTION);
    }
    return Optional.empty();
  }

  /** Whether motion with gravity reduced is at least what was seen against gravity. */
  private static boolean reaches(Reduced reduced, Range range) {
    return switch (range) {
      case FULL, MORE_THAN_HALF -> reduced == Reduced.FULL;
      case LESS_THAN_HALF -> reduced != Reduced.NONE;
      case NONE -> true;
    };
  }

  private static Optional<Decision.Contradiction> both(Observation one, Observation other) {
    return Optional.of(new Decision.Contradiction(one, other));
  }

  /**
   * Every grade the observations still allow, under either scheme, whatever those not yet made turn
   * out to be. A bound ("at least 3") allows every grade from 3.
   */
  static Set<Grade> possible(Observed seen, Criteria criteria) {
    EnumSet<Grade> grades = EnumSet.noneOf(Grade.class);
    for (Range range : either(seen.range(), Range.values())) {
      for (Hold hold : either(seen.hold(), Hold.values())) {
        for (Reduced reduced : either(seen.reduced(), Reduced.values())) {
          for (Felt felt : either(seen.contraction(), Felt.values())) {
            Observed all =
                new Observed(
                    Optional.of(range),
                    Optional.of(hold),
                    Optional.of(reduced),
                    Optional.of(felt),
                    seen.withheld());
            for (Scheme scheme : Scheme.values()) {
              allow(decide(all, scheme, criteria), grades);
            }
          }
        }
      }
    }
    return grades;
  }

  private static <E> List<E> either(Optional<E> seen, E[] all) {
    return seen.map(List::of).orElse(List.of(all));
  }

  private static void allow(Decision decision, Set<Grade> grades) {
    if (decision instanceof Decision.Given given && given.grade().ranked()) {
      grades.add(given.grade());
    } else if (decision instanceof Decision.Given) {
      grades.addAll(EnumSet.range(Grade.G3, Grade.G5));
    }
  }
}
