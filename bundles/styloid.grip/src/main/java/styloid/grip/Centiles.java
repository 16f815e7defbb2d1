package styloid.grip;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import styloid.model.Explanation;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.norm.NormQuery;
import styloid.model.norm.NormRow;
import styloid.model.norm.NormTable;

/**
 * Between which printed centiles the better hand's grip lies, when a table of centiles is chosen.
 * The printed centiles are read as they are and never turned into a z score. Between two printed
 * ages each centile is taken on the straight line between them. A value on a centile belongs to the
 * band above it.
 */
final class Centiles {
  private static final String RULE = "grip-centiles";

  private final NormChoice choice;

  Centiles(NormChoice choice) {
    this.choice = choice;
  }

  Result of(PatientContext context) {
    var key = Say.key("centile-best", Side.UNSIDED);
    Trials trials = LowStrength.bothHands(context.snapshot());
    String chosen = NormChoice.name(context.evaluation(), Measure.POWER);
    Optional<NormTable> table =
        choice.table(chosen, Measure.POWER).filter(NormChoice::centilesOnly);
    Explanation rule =
        Say.why(
            RULE,
            table
                .map(t -> NormChoice.sources(t, Optional.empty()))
                .orElse(List.of(Source.commonPractice())),
            Say.step("step.centiles.rule"));
    if (!trials.complete()) {
      return Say.incomplete(key, trials.missing(), rule);
    }
    if (table.isEmpty()) {
      return Say.unavailable(key, Say.step("norm.why.no-centiles"), rule);
    }
    return table
        .get()
        .find(NormQuery.of(context, Side.UNSIDED, Measure.POWER.tableKeys()))
        .match(
            row -> placed(key, context, trials, table.get(), row),
            missing -> Say.unavailable(key, NormResults.reason(missing), rule));
  }

  private static Result placed(
      ResultKey key, PatientContext context, Trials trials, NormTable table, NormRow row) {
    int age = context.age().orElseThrow();
    ArrayList<Source> sources = new ArrayList<>(NormChoice.sources(table, Optional.of(row)));
    ArrayList<Message> steps = new ArrayList<>();
    steps.add(Say.step("step.norm.table", table.citation(), table.population()));
    Optional<NormRow> next = table.next(row).filter(n -> age > row.age().min());
    if (next.isPresent()) {
      sources.add(Source.commonPractice());
      steps.add(Say.step("step.centiles.between", age, row.age().min(), next.get().age().min()));
    }
    Map<Integer, BigDecimal> centiles = next.map(n -> between(row, n, age)).orElse(row.centiles());
    BigDecimal best = trials.largest(table.unit());
    steps.add(Say.step("step.best", Say.round(best.doubleValue(), 2, table.unit())));
    centiles.forEach(
        (centile, value) ->
            steps.add(
                Say.step(
                    "step.centiles.at",
                    age,
                    centile,
                    Say.round(value.doubleValue(), 1, table.unit()))));
    return Say.choice(key, band(best, centiles), Say.why(RULE, sources, steps, Optional.empty()));
  }

  private static Map<Integer, BigDecimal> between(NormRow from, NormRow to, int age) {
    BigDecimal share =
        BigDecimal.valueOf(age - from.age().min())
            .divide(BigDecimal.valueOf(to.age().min() - from.age().min()), MathContext.DECIMAL128);
    TreeMap<Integer, BigDecimal> line = new TreeMap<>();
    from.centiles()
        .forEach(
            (centile, value) ->
                line.put(
                    centile,
                    value.add(to.centiles().get(centile).subtract(value).multiply(share))));
    return line;
  }

  /** {@code below-p10}, {@code p10-to-p25} and so on to {@code p90-and-above}. */
  static String band(BigDecimal value, Map<Integer, BigDecimal> centiles) {
    String reached = "";
    for (Map.Entry<Integer, BigDecimal> centile : new TreeMap<>(centiles).entrySet()) {
      if (value.compareTo(centile.getValue()) < 0) {
        return reached.isEmpty()
            ? "below-p" + centile.getKey()
            : reached + "-to-p" + centile.getKey();
      }
      reached = "p" + centile.getKey();
    }
    return reached + "-and-above";
  }
}
