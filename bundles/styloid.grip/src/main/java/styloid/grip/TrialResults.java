package styloid.grip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Explanation;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.model.norm.Statistics;

/**
 * Mean, maximum, sample SD and coefficient of variation of three trials. Forces are given in {@link
 * #UNIT} whatever was typed. All need all three trials.
 */
final class TrialResults {
  /** The unit forces are given in. */
  static final Unit UNIT = Unit.KILOGRAM_FORCE;

  private static final String RULE = "grip-trials";
  private static final String CONSISTENCY = "grip-consistency";

  private TrialResults() {}

  static List<Result> of(Snapshot snapshot, Measure measure, Side side) {
    Trials trials = Trials.of(snapshot, measure, side);
    ArrayList<Result> results = new ArrayList<>();
    results.add(mean(measure, side, trials));
    results.add(maximum(measure, side, trials));
    results.add(sd(measure, side, trials));
    results.add(cv(measure, side, trials));
    return results;
  }

  private static Result mean(Measure measure, Side side, Trials trials) {
    var key = Say.key("mean-" + measure.code(), side);
    List<Source> sources = List.of(Sources.MEAN_OF_THREE);
    if (!trials.complete()) {
      return Say.incomplete(
          key, trials.missing(), Say.why(RULE, sources, Say.step("step.mean.rule")));
    }
    double mean = Statistics.mean(trials.numbers(UNIT));
    List<Message> steps = new ArrayList<>(readings(trials));
    steps.add(Say.step("step.mean", Say.round(mean, 2, UNIT)));
    trials
        .sharedUnit()
        .filter(typed -> typed != UNIT)
        .ifPresent(
            typed -> {
              double there = Statistics.mean(trials.numbers(typed));
              steps.add(Say.step("step.in-typed-unit", Say.round(there, 2, typed)));
            });
    return Say.number(key, mean, UNIT, forces(RULE, sources, steps, trials, "AVERAGE"));
  }

  private static Result maximum(Measure measure, Side side, Trials trials) {
    var key = Say.key("max-" + measure.code(), side);
    List<Source> sources = List.of(Sources.MAXIMUM);
    if (!trials.complete()) {
      return Say.incomplete(
          key, trials.missing(), Say.why(RULE, sources, Say.step("step.max.rule")));
    }
    Quantity largest = new Quantity(trials.largest(UNIT), UNIT);
    List<Message> steps = new ArrayList<>(readings(trials));
    steps.add(Say.step("step.max", Say.round(largest.amount().doubleValue(), 2, UNIT)));
    return Result.computed(key, largest, forces(RULE, sources, steps, trials, "MAX"));
  }

  private static Result sd(Measure measure, Side side, Trials trials) {
    var key = Say.key("sd-" + measure.code(), side);
    List<Source> sources = List.of(Sources.CV);
    if (!trials.complete()) {
      return Say.incomplete(
          key, trials.missing(), Say.why(CONSISTENCY, sources, Say.step("step.sd.rule")));
    }
    double sd = Statistics.sampleSd(trials.numbers(UNIT));
    List<Message> steps = new ArrayList<>(readings(trials));
    steps.add(Say.step("step.sd", Say.round(sd, 2, UNIT)));
    return Say.number(key, sd, UNIT, forces(CONSISTENCY, sources, steps, trials, "STDEV"));
  }

  private static Result cv(Measure measure, Side side, Trials trials) {
    var key = Say.key("cv-" + measure.code(), side);
    List<Source> sources = List.of(Sources.CV, Sources.CV_LIMIT, Sources.CV_USUAL);
    List<Message> meaning =
        List.of(Say.step("step.cv.meaning"), Say.step("step.cv.limit"), Say.step("step.cv.usual"));
    if (!trials.complete()) {
      return Say.incomplete(
          key, trials.missing(), Say.why(CONSISTENCY, sources, meaning, Optional.empty()));
    }
    double[] numbers = trials.numbers(UNIT);
    double mean = Statistics.mean(numbers);
    if (mean <= 0) {
      return Say.unavailable(
          key, Say.step("why.mean-zero"), Say.why(CONSISTENCY, sources, meaning, Optional.empty()));
    }
    double sd = Statistics.sampleSd(numbers);
    double cv = Statistics.cv(numbers);
    List<Message> steps = new ArrayList<>();
    steps.add(
        Say.step("step.cv", Say.round(sd, 2, UNIT), Say.round(mean, 2, UNIT), Say.round(cv, 1)));
    steps.addAll(meaning);
    String formula = trials.call("STDEV", UNIT) + "/" + trials.call("AVERAGE", UNIT) + "*100";
    return Say.number(
        key, cv, Unit.PERCENT, Say.why(CONSISTENCY, sources, steps, Optional.of(formula)));
  }

  /** What was typed, and that units differ where they do. */
  static List<Message> readings(Trials trials) {
    ArrayList<Message> steps = new ArrayList<>();
    List<Quantity> typed = trials.typed();
    if (typed.size() == Measure.TRIALS) {
      steps.add(Say.step("step.readings", typed.get(0), typed.get(1), typed.get(2)));
    }
    if (trials.sharedUnit().isEmpty()) {
      steps.add(Say.step("step.mixed-units"));
    }
    return steps;
  }

  private static Explanation forces(
      String rule, List<Source> sources, List<Message> steps, Trials trials, String function) {
    ArrayList<Source> all = new ArrayList<>(sources);
    if (!trials.sharedUnit().equals(Optional.of(UNIT))) {
      all.add(Sources.UNITS);
      steps.add(Say.step("step.units"));
    }
    return Say.why(rule, all, steps, Optional.of(trials.call(function, UNIT)));
  }
}
