package styloid.grip;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.ErrorRange;
import styloid.model.Explanation;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.model.norm.Statistics;

/**
 * Change of the mean since the last evaluation that holds all three trials, and for grip whether it
 * reaches a published important or detectable change. A change of exactly the limit reaches it.
 */
final class Change {
  private static final String RULE = "grip-change";

  /** A published limit, in kilogram-force. */
  private record Limit(String id, String right, String left, List<Source> sources) {
    BigDecimal of(Side side) {
      return new BigDecimal(side == Side.RIGHT ? right : left);
    }

    /** Only the detectable difference is an error of measuring; an important change is none. */
    Explanation why(List<Message> steps, Side side) {
      Explanation why = Say.why(RULE, sources, steps, Optional.empty());
      Quantity size = new Quantity(of(side), TrialResults.UNIT);
      return id.equals("mdc")
          ? why.withError(new ErrorRange(Measure.POWER.item(), size, size))
          : why;
    }
  }

  private static final List<Limit> LIMITS =
      List.of(
          new Limit("mcid", "6.5", "6.5", List.of(Sources.KIM, Sources.BOHANNON)),
          new Limit("mdc", "6.2", "5.7", List.of(Sources.NITSCHKE)));

  private Change() {}

  static List<Result> of(PatientContext context, Measure measure, Side side) {
    Trials now = Trials.of(context.snapshot(), measure, side);
    Optional<PatientContext.Past> past =
        context.past().stream()
            .filter(p -> Trials.of(p.snapshot(), measure, side).complete())
            .findFirst();
    ArrayList<Result> results = new ArrayList<>();
    Explanation rule = Say.why(RULE, Sources.COMMON, Say.step("step.change.rule"));
    ResultKey amount = Say.key("change-" + measure.code(), side);
    ResultKey percent = Say.key("change-percent-" + measure.code(), side);
    if (!now.complete() || past.isEmpty()) {
      results.add(none(amount, now, rule));
      results.add(none(percent, now, rule));
    } else {
      Trials then = Trials.of(past.get().snapshot(), measure, side);
      Message between =
          Say.step(
              "step.change",
              past.get().evaluation().date().toString(),
              mean(then, 2),
              mean(now, 2));
      results.add(
          Result.computed(
              amount,
              new Quantity(difference(now, then), TrialResults.UNIT),
              Say.why(RULE, Sources.COMMON, between)));
      results.add(percent(percent, now, then, between));
    }
    if (measure == Measure.POWER) {
      LIMITS.forEach(limit -> results.add(against(limit, side, now, past)));
    }
    return results;
  }

  private static Quantity mean(Trials trials, int decimals) {
    double mean = Statistics.mean(trials.numbers(TrialResults.UNIT));
    return Say.round(mean, decimals, TrialResults.UNIT);
  }

  private static BigDecimal difference(Trials now, Trials then) {
    return now.sum(TrialResults.UNIT)
        .subtract(then.sum(TrialResults.UNIT))
        .divide(BigDecimal.valueOf(Measure.TRIALS), MathContext.DECIMAL64);
  }

  private static Result percent(ResultKey key, Trials now, Trials then, Message between) {
    double before = Statistics.mean(then.numbers(TrialResults.UNIT));
    if (before <= 0) {
      return Say.unavailable(
          key, Say.step("why.before-zero"), Say.why(RULE, Sources.COMMON, between));
    }
    double change = 100 * difference(now, then).doubleValue() / before;
    Message step = Say.step("step.change.percent", Say.round(change, 1));
    return Say.number(key, change, Unit.PERCENT, Say.why(RULE, Sources.COMMON, between, step));
  }

  private static Result against(
      Limit limit, Side side, Trials now, Optional<PatientContext.Past> past) {
    ResultKey key = Say.key("change-" + limit.id() + "-power", side);
    ArrayList<Message> steps = new ArrayList<>();
    steps.add(Say.step("step.change." + limit.id()));
    Explanation rule = limit.why(steps, side);
    if (!now.complete() || past.isEmpty()) {
      return none(key, now, rule);
    }
    Trials then = Trials.of(past.get().snapshot(), Measure.POWER, side);
    // Three times the difference of means, so that no division blurs the limit.
    BigDecimal sums = now.sum(TrialResults.UNIT).subtract(then.sum(TrialResults.UNIT));
    BigDecimal needed = limit.of(side).multiply(BigDecimal.valueOf(Measure.TRIALS));
    steps.add(
        Say.step(
            "step.change.compare",
            Say.round(difference(now, then).doubleValue(), 2, TrialResults.UNIT),
            new Quantity(limit.of(side), TrialResults.UNIT)));
    String code =
        sums.abs().compareTo(needed) < 0 ? "smaller" : sums.signum() > 0 ? "gain" : "loss";
    return Say.choice(key, code, limit.why(steps, side));
  }

  private static Result none(ResultKey key, Trials now, Explanation rule) {
    return now.complete()
        ? Say.unavailable(key, Say.step("why.no-earlier"), rule)
        : Say.incomplete(key, now.missing(), rule);
  }
}
