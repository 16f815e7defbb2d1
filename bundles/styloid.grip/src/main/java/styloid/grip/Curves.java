package styloid.grip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Source;
import styloid.model.Unit;

/**
 * The five-position curve and rapid exchange, described and not judged: the shape of the curve, the
 * position of its peak, and the best rapid grip in percent of the best slow one.
 */
final class Curves {
  static final int POSITIONS = 5;
  static final int EXCHANGES = 5;
  static final ItemId RAPID = new ItemId("rapid-exchange");
  private static final String CURVE_RULE = "grip-five-positions";
  private static final String RAPID_RULE = "grip-rapid-exchange";

  private Curves() {}

  static ItemId position(int position) {
    return new ItemId("position-" + position);
  }

  static List<Result> of(Snapshot snapshot, Side side) {
    ArrayList<ItemKey> keys = new ArrayList<>();
    for (int position = 1; position <= POSITIONS; position++) {
      keys.add(new ItemKey(Say.GRIP, position(position), side, Digit.NONE, 1));
    }
    Trials curve = Trials.of(snapshot, keys);
    return List.of(shape(curve, side), peak(curve, side), rapid(snapshot, side));
  }

  private static Result shape(Trials curve, Side side) {
    var key = Say.key("curve-shape", side);
    Message rule = Say.step("step.curve.rule");
    Message caution = Say.step("step.described");
    if (!curve.complete()) {
      return Say.incomplete(
          key, curve.missing(), Say.why(CURVE_RULE, Sources.COMMON, rule, caution));
    }
    return Say.choice(
        key,
        shape(curve.in(TrialResults.UNIT)),
        Say.why(CURVE_RULE, Sources.COMMON, points(curve), rule, caution));
  }

  private static Message points(Trials curve) {
    return Say.step("step.curve.points", curve.typed().toArray());
  }

  /** Level, rising, falling, one peak, or uneven (falls and rises again). */
  static String shape(List<BigDecimal> points) {
    boolean rises = false;
    boolean falls = false;
    for (int i = 1; i < points.size(); i++) {
      int step = points.get(i).compareTo(points.get(i - 1));
      if (step > 0 && falls) {
        return "uneven";
      }
      rises |= step > 0;
      falls |= step < 0;
    }
    if (rises) {
      return falls ? "one-peak" : "rising";
    }
    return falls ? "falling" : "level";
  }

  private static Result peak(Trials curve, Side side) {
    var key = Say.key("curve-peak", side);
    List<Source> sources = List.of(Sources.CROSBY);
    Message published = Say.step("step.curve.crosby");
    if (!curve.complete()) {
      return Say.incomplete(key, curve.missing(), Say.why(CURVE_RULE, sources, published));
    }
    Explanation why = Say.why(CURVE_RULE, sources, points(curve), published);
    List<BigDecimal> points = curve.in(TrialResults.UNIT);
    BigDecimal best = curve.largest(TrialResults.UNIT);
    List<Integer> at = new ArrayList<>();
    for (int i = 0; i < points.size(); i++) {
      if (points.get(i).compareTo(best) == 0) {
        at.add(i + 1);
      }
    }
    if (at.size() > 1) {
      return Say.unavailable(key, Say.step("why.no-single-peak"), why);
    }
    return Result.computed(key, new Quantity(BigDecimal.valueOf(at.get(0)), Unit.COUNT), why);
  }

  private static Result rapid(Snapshot snapshot, Side side) {
    var key = Say.key("rapid-ratio", side);
    Trials quick = Trials.of(snapshot, RAPID, side, EXCHANGES);
    Trials slow = Trials.of(snapshot, Measure.POWER, side);
    Trials all = quick.and(slow);
    Message rule = Say.step("step.rapid.rule");
    Message caution = Say.step("step.described");
    Explanation why = Say.why(RAPID_RULE, Sources.COMMON, rule, caution);
    if (!all.complete()) {
      return Say.incomplete(key, all.missing(), why);
    }
    double best = slow.largest(TrialResults.UNIT).doubleValue();
    if (best <= 0) {
      return Say.unavailable(key, Say.step("why.mean-zero"), why);
    }
    double bestQuick = quick.largest(TrialResults.UNIT).doubleValue();
    double ratio = 100 * bestQuick / best;
    Message step =
        Say.step(
            "step.rapid",
            Say.round(bestQuick, 2, TrialResults.UNIT),
            Say.round(best, 2, TrialResults.UNIT),
            Say.round(ratio, 1));
    String formula =
        quick.call("MAX", TrialResults.UNIT) + "/" + slow.call("MAX", TrialResults.UNIT) + "*100";
    return Say.number(
        key,
        ratio,
        Unit.PERCENT,
        Say.why(RAPID_RULE, Sources.COMMON, List.of(step, rule, caution), Optional.of(formula)));
  }
}
