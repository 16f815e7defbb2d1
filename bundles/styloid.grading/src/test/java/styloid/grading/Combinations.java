package styloid.grading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import styloid.grading.Observed.Felt;
import styloid.grading.Observed.Hold;
import styloid.grading.Observed.Range;
import styloid.grading.Observed.Reduced;

/** Every set of observations there can be, those not made included. */
final class Combinations {
  private Combinations() {}

  static List<Observed> all(Criteria criteria) {
    ArrayList<Observed> all = new ArrayList<>();
    for (Optional<Range> range : orNone(Range.values())) {
      for (Optional<Hold> hold : orNone(Hold.values())) {
        for (Optional<Reduced> reduced :
            criteria == Criteria.GRAVITY
                ? orNone(Reduced.values())
                : List.of(Optional.<Reduced>empty())) {
          for (Optional<Felt> felt : orNone(Felt.values())) {
            for (boolean withheld : new boolean[] {false, true}) {
              all.add(new Observed(range, hold, reduced, felt, withheld));
            }
          }
        }
      }
    }
    return all;
  }

  private static <E> List<Optional<E>> orNone(E[] values) {
    return Stream.concat(Stream.of(Optional.<E>empty()), Stream.of(values).map(Optional::of))
        .toList();
  }
}
