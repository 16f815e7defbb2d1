package styloid.grip;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Explanation;
import styloid.model.Message;
import styloid.model.Patient.Sex;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Source;

/**
 * The largest of all six grip trials, in {@link TrialResults#UNIT}, and whether it lies below
 * published cut-offs of low strength. Below means strictly below: at the cut-off strength is not
 * low.
 */
final class LowStrength {
  private static final String RULE = "grip-low-strength";

  /** A published cut-off, by sex, in kilogram-force, for people from an age on. */
  private record CutOff(String id, int men, int women, int fromAge, Source source) {
    BigDecimal of(Sex sex) {
      return BigDecimal.valueOf(sex == Sex.MALE ? men : women);
    }
  }

  private static final List<CutOff> CUT_OFFS =
      List.of(
          new CutOff("ewgsop2", 27, 16, 60, Sources.EWGSOP2),
          new CutOff("fnih", 26, 16, 65, Sources.FNIH));

  private LowStrength() {}

  /** The trials of both hands, right first. */
  static Trials bothHands(Snapshot snapshot) {
    return Trials.of(snapshot, Measure.POWER, Side.RIGHT)
        .and(Trials.of(snapshot, Measure.POWER, Side.LEFT));
  }

  static List<Result> of(PatientContext context) {
    Trials trials = bothHands(context.snapshot());
    ArrayList<Result> results = new ArrayList<>();
    results.add(best(trials));
    CUT_OFFS.forEach(cutOff -> results.add(against(cutOff, context, trials)));
    return results;
  }

  private static Result best(Trials trials) {
    var key = Say.key("best-power", Side.UNSIDED);
    List<Source> sources = List.of(Sources.MAXIMUM);
    if (!trials.complete()) {
      return Say.incomplete(
          key, trials.missing(), Say.why(RULE, sources, Say.step("step.best.rule")));
    }
    Quantity best = new Quantity(trials.largest(TrialResults.UNIT), TrialResults.UNIT);
    Message step =
        Say.step("step.best", Say.round(best.amount().doubleValue(), 2, TrialResults.UNIT));
    return Result.computed(
        key,
        best,
        Say.why(RULE, sources, List.of(step), Optional.of(trials.call("MAX", TrialResults.UNIT))));
  }

  private static Result against(CutOff cutOff, PatientContext context, Trials trials) {
    var key = Say.key("low-strength-" + cutOff.id(), Side.UNSIDED);
    List<Source> sources = List.of(cutOff.source(), Sources.OLDER_PEOPLE);
    ArrayList<Message> steps = new ArrayList<>();
    steps.add(Say.step("step.low." + cutOff.id()));
    steps.add(Say.step("step.low.rule"));
    Explanation rule = Say.why(RULE, sources, steps, Optional.empty());
    if (!trials.complete()) {
      return Say.incomplete(key, trials.missing(), rule);
    }
    Optional<Integer> age = context.age();
    Optional<Sex> sex = context.patient().sex();
    if (age.isEmpty() || sex.isEmpty()) {
      String why = sex.isEmpty() ? "norm.why.sex-unknown" : "norm.why.age-unknown";
      return Say.unavailable(key, Say.step(why), rule);
    }
    if (age.get() < cutOff.fromAge()) {
      return Say.unavailable(key, Say.step("why.too-young", cutOff.fromAge(), age.get()), rule);
    }
    BigDecimal best = trials.largest(TrialResults.UNIT);
    BigDecimal limit = cutOff.of(sex.get());
    steps.add(
        Say.step(
            "step.low.compare",
            Say.round(best.doubleValue(), 2, TrialResults.UNIT),
            new Quantity(limit, TrialResults.UNIT),
            sex.get()));
    String code = best.compareTo(limit) < 0 ? "low" : "not-low";
    return Say.choice(key, code, Say.why(RULE, sources, steps, Optional.empty()));
  }
}
