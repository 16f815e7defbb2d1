package styloid.grip;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.Explanation;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.model.norm.NormLookup;
import styloid.model.norm.NormQuery;
import styloid.model.norm.NormRow;
import styloid.model.norm.NormTable;
import styloid.model.norm.NormalCurve;
import styloid.model.norm.Statistics;

/**
 * z, percentile and a plain band against the chosen norm table. The score is the one the table is
 * made of (mean or maximum of three), and the hands are taken as the table takes them.
 */
final class NormResults {
  private static final String RULE = "grip-norm";
  private static final List<String> KINDS = List.of("z-", "percentile-", "band-");

  private static final List<Map.Entry<String, Double>> BANDS =
      List.of(
          Map.entry("far-below", -2.0),
          Map.entry("below", -1.0),
          Map.entry("as-expected", 1.0),
          Map.entry("above", 2.0));

  private final NormChoice choice;

  NormResults(NormChoice choice) {
    this.choice = choice;
  }

  /** The three results of one hand. */
  List<Result> ofHand(PatientContext context, Measure measure, Side side) {
    Trials trials = Trials.of(context.snapshot(), measure, side);
    return results(context, measure, measure.code(), side, trials, false);
  }

  /** The three results of the better hand, for tables made that way; grip only. */
  List<Result> ofBest(PatientContext context) {
    Trials trials = LowStrength.bothHands(context.snapshot());
    return results(context, Measure.POWER, "best", Side.UNSIDED, trials, true);
  }

  private List<Result> results(
      PatientContext context,
      Measure measure,
      String name,
      Side side,
      Trials trials,
      boolean best) {
    String chosen = NormChoice.name(context.evaluation(), measure);
    Optional<NormTable> found = choice.table(chosen, measure);
    if (found.isEmpty()) {
      Explanation why = Say.why(RULE, Sources.COMMON, Say.step("step.norm.rule"));
      return none(name, side, trials, Say.step("norm.why.no-table", chosen), why);
    }
    NormTable table = found.get();
    Explanation why =
        Say.why(
            RULE,
            NormChoice.sources(table, Optional.empty()),
            Say.step("step.norm.rule"),
            Say.step("step.norm.table", table.citation(), table.population()));
    Optional<Message> misfit = misfit(table, best);
    if (misfit.isPresent() || !trials.complete()) {
      return none(name, side, trials, misfit.orElse(Say.step("step.norm.rule")), why);
    }
    NormQuery query = NormQuery.of(context, side, measure.tableKeys());
    return table
        .find(query)
        .match(
            row -> standing(name, side, trials, table, row),
            missing -> none(name, side, trials, reason(missing), why));
  }

  /** Why a table cannot be used for this hand or hands at all. */
  private static Optional<Message> misfit(NormTable table, boolean best) {
    if (NormChoice.centilesOnly(table)) {
      return Optional.of(Say.step("norm.why.centiles-only"));
    }
    if (table.score() == NormTable.Score.SINGLE) {
      return Optional.of(Say.step("norm.why.score"));
    }
    if (NormChoice.bestOfBoth(table) != best) {
      return Optional.of(Say.step(best ? "norm.why.each-hand" : "norm.why.best-of-both"));
    }
    return Optional.empty();
  }

  /** Incomplete when a trial is missing, whatever else stands in the way; else unavailable. */
  private static List<Result> none(
      String name, Side side, Trials trials, Message reason, Explanation why) {
    ArrayList<Result> results = new ArrayList<>();
    for (String kind : KINDS) {
      var key = Say.key(kind + name, side);
      results.add(
          trials.complete()
              ? Say.unavailable(key, reason, why)
              : Say.incomplete(key, trials.missing(), why));
    }
    return results;
  }

  static Message reason(NormLookup.Missing missing) {
    String key = "norm.why." + missing.reason().code();
    return missing
        .covered()
        .map(band -> Say.step(key, band.toString()))
        .orElseGet(() -> Say.step(key));
  }

  private static List<Result> standing(
      String name, Side side, Trials trials, NormTable table, NormRow row) {
    Unit unit = table.unit();
    boolean byMean = table.score() == NormTable.Score.MEAN;
    double score =
        byMean ? Statistics.mean(trials.numbers(unit)) : trials.largest(unit).doubleValue();
    double mean = row.mean().orElseThrow().doubleValue();
    double sd = row.sd().orElseThrow().doubleValue();
    double z = NormalCurve.z(score, mean, sd);
    double percentile = NormalCurve.percentile(z);
    String zFormula =
        "("
            + trials.call(byMean ? "AVERAGE" : "MAX", unit)
            + "-"
            + row.mean().get().toPlainString()
            + ")/"
            + row.sd().get().toPlainString();
    List<Source> sources = NormChoice.sources(table, Optional.of(row));
    List<Message> steps = steps(table, row, byMean, score, z);
    List<Message> curve = new ArrayList<>(steps);
    curve.add(Say.step("step.percentile", Say.round(percentile, 1)));
    List<Message> banded = new ArrayList<>(steps);
    banded.add(Say.step("step.band"));
    ArrayList<Source> bandSources = new ArrayList<>(sources);
    bandSources.add(Source.commonPractice());
    return List.of(
        Say.number(
            Say.key("z-" + name, side),
            z,
            Unit.NUMBER,
            Say.why(RULE, sources, steps, Optional.of(zFormula))),
        Say.number(
            Say.key("percentile-" + name, side),
            percentile,
            Unit.PERCENT,
            Say.why(RULE, sources, curve, Optional.of("NORMSDIST(" + zFormula + ")*100"))),
        Say.choice(
            Say.key("band-" + name, side),
            band(z),
            Say.why(RULE, bandSources, banded, Optional.empty())));
  }

  private static List<Message> steps(
      NormTable table, NormRow row, boolean byMean, double score, double z) {
    Unit unit = table.unit();
    ArrayList<Message> steps = new ArrayList<>();
    steps.add(Say.step("step.norm.table", table.citation(), table.population()));
    steps.add(
        Say.step(
            row.height().max().isPresent() || row.height().min() > 0
                ? "step.norm.row-by-height"
                : "step.norm.row",
            row.age().toString(),
            Say.round(row.mean().orElseThrow().doubleValue(), 1, unit),
            Say.round(row.sd().orElseThrow().doubleValue(), 1, unit),
            row.height().toString()));
    Optional.ofNullable(row.others().get("note"))
        .ifPresent(note -> steps.add(Say.step("step.norm.note", note)));
    steps.add(Say.step(byMean ? "step.norm.mean" : "step.norm.maximum", Say.round(score, 2, unit)));
    steps.add(
        Say.step(
            "step.z",
            Say.round(score, 2),
            Say.round(row.mean().get().doubleValue(), 1),
            Say.round(row.sd().get().doubleValue(), 1),
            Say.round(z, 2)));
    return steps;
  }

  /**
   * Plain words for a z score; each band includes its lower limit: far below (under -2), below (-2
   * to under -1), as expected (-1 to under 1), above (1 to under 2), far above (2 and over).
   */
  static String band(double z) {
    for (Map.Entry<String, Double> upTo : BANDS) {
      if (z < upTo.getValue()) {
        return upTo.getKey();
      }
    }
    return "far-above";
  }
}
