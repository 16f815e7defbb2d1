package styloid.checks.slips;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeMap;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Snapshot;
import styloid.model.Unit;

/**
 * What a therapist would conclude from one place of a record: the band against the norm, the weaker
 * or stiffer side, and change since the last visit. Two records are read alike when all three are.
 *
 * <ul>
 *   <li>band: below −2, above +2 standard deviations of the published norm, or between.
 *   <li>sides: one behind the other by more than 10 % of the larger (Petersen P and others. 1989.
 *       Am J Occup Ther 43(7):444-447), or by more than 5° (difference used as not clinically
 *       meaningful, Macionis V. 2013. BMC Musculoskelet Disord 14:17).
 *   <li>change: beyond 6 kg of grip (Nitschke JE and others. 1999. J Hand Ther 12:25-30, from
 *       memory), 15.7 % of pinch (middle of Young VL and others. 1989. J Hand Surg Am
 *       14(1):125-129), 13.9° (1.96 × √2 × the customary error of 5°, from memory).
 * </ul>
 */
record Interpretation(int band, int sides, int change) {
  private static final double SIDE_SHARE = 0.10;
  private static final double SIDE_DEGREES = 5;
  private static final double GRIP_KG = 6;
  private static final double PINCH_SHARE = 0.157;
  private static final double DEGREES = 1.96 * Math.sqrt(2) * 5;

  static Interpretation of(Corpus.Step step, Snapshot now, PatientContext before) {
    Unit unit = unit(step);
    double own = score(step, step.key(), now).orElse(Double.NaN);
    double other = score(step, step.key().opposite(), now).orElse(Double.NaN);
    double last =
        before.past().isEmpty()
            ? Double.NaN
            : score(step, step.key(), before.past().get(0).snapshot()).orElse(Double.NaN);
    boolean degrees = unit == Unit.DEGREE;
    double side = degrees ? SIDE_DEGREES : SIDE_SHARE * Math.max(Math.abs(own), Math.abs(other));
    boolean grip = unit == Unit.KILOGRAM_FORCE && step.norm().mean() > 12;
    double moved = degrees ? DEGREES : grip ? GRIP_KG : PINCH_SHARE * Math.abs(last);
    return new Interpretation(
        sign((own - step.norm().mean()) / step.norm().sd(), 2),
        sign(own - other, side),
        sign(own - last, moved));
  }

  private static int sign(double difference, double limit) {
    return difference > limit ? 1 : difference < -limit ? -1 : 0;
  }

  private static Unit unit(Corpus.Step step) {
    return ((styloid.model.ItemKind.Number) step.item().kind()).unit();
  }

  /** Mean of the trials there are. */
  private static OptionalDouble score(Corpus.Step step, ItemKey place, Snapshot in) {
    TreeMap<Integer, Double> values = new TreeMap<>();
    for (int trial = 1; trial <= step.item().trials(); trial++) {
      ItemKey key = new ItemKey(place.test(), place.item(), place.side(), place.digit(), trial);
      int which = trial;
      in.quantity(key)
          .map((Quantity q) -> q.doubleIn(unit(step)))
          .ifPresent(v -> values.put(which, v));
    }
    return List.copyOf(values.values()).stream().mapToDouble(v -> v).average();
  }
}
