package styloid.grip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Explanation;
import styloid.model.Message;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.model.norm.Statistics;

/**
 * One hand's mean in percent of the other's: involved of uninvolved, dominant of non-dominant. 100
 * means equal.
 */
final class SideRatios {
  private static final String RULE = "grip-side-ratio";

  private SideRatios() {}

  static List<Result> of(PatientContext context, Measure measure) {
    Patient patient = context.patient();
    Optional<Side> involved =
        patient.involved().size() == 1
            ? Optional.of(patient.involved().iterator().next())
            : Optional.empty();
    Optional<Side> dominant =
        patient
            .dominance()
            .filter(d -> d != Patient.Dominance.EITHER)
            .map(d -> d == Patient.Dominance.RIGHT ? Side.RIGHT : Side.LEFT);
    List<Message> published = new ArrayList<>();
    List<Source> dominanceSources = new ArrayList<>(Sources.COMMON);
    if (measure == Measure.POWER) {
      published.add(Say.step("step.dominance.petersen"));
      published.add(Say.step("step.dominance.incel"));
      dominanceSources.addAll(List.of(Sources.PETERSEN, Sources.INCEL));
    }
    String reason = patient.involved().isEmpty() ? "why.involved-unknown" : "why.involved-both";
    return List.of(
        ratio(context, measure, "involved", involved, reason, List.of(), Sources.COMMON),
        ratio(
            context,
            measure,
            "dominant",
            dominant,
            patient.dominance().isEmpty() ? "why.dominance-unknown" : "why.dominance-either",
            published,
            dominanceSources));
  }

  private static Result ratio(
      PatientContext context,
      Measure measure,
      String kind,
      Optional<Side> side,
      String reason,
      List<Message> beside,
      List<Source> sources) {
    var key = Say.key(kind + "-ratio-" + measure.code(), Side.UNSIDED);
    ArrayList<Message> rule = new ArrayList<>(List.of(Say.step("step.ratio.rule." + kind)));
    rule.addAll(beside);
    Explanation why = Say.why(RULE, sources, rule, Optional.empty());
    Trials right = Trials.of(context.snapshot(), measure, Side.RIGHT);
    Trials left = Trials.of(context.snapshot(), measure, Side.LEFT);
    Trials both = right.and(left);
    if (!both.complete()) {
      return Say.incomplete(key, both.missing(), why);
    }
    if (side.isEmpty()) {
      return Say.unavailable(key, Say.step(reason), why);
    }
    Trials over = side.get() == Side.RIGHT ? right : left;
    Trials under = side.get() == Side.RIGHT ? left : right;
    double above = Statistics.mean(over.numbers(TrialResults.UNIT));
    double below = Statistics.mean(under.numbers(TrialResults.UNIT));
    if (below <= 0) {
      return Say.unavailable(key, Say.step("why.other-zero"), why);
    }
    double ratio = 100 * above / below;
    ArrayList<Message> steps = new ArrayList<>();
    steps.add(
        Say.step(
            "step.ratio." + kind,
            side.get(),
            Say.round(above, 2, TrialResults.UNIT),
            side.get().opposite(),
            Say.round(below, 2, TrialResults.UNIT),
            Say.round(ratio, 1)));
    steps.addAll(beside);
    String formula =
        over.call("AVERAGE", TrialResults.UNIT)
            + "/"
            + under.call("AVERAGE", TrialResults.UNIT)
            + "*100";
    return Say.number(
        key, ratio, Unit.PERCENT, Say.why(RULE, sources, steps, Optional.of(formula)));
  }
}
