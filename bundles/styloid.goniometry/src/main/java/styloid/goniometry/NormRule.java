package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Unit;
import styloid.model.norm.NormRow;
import styloid.model.norm.NormalCurve;
import styloid.spi.ResultDefinition;

/**
 * Standard score and percentile of active motion in the one population whose standard deviation is
 * known here; for any other sex, age or mode no value and the reason. Given once the motion has an
 * entry.
 */
final class NormRule extends MotionRule {
  private final Populations populations;
  private final ResultId standard;
  private final ResultId percentile;

  NormRule(Plane plane, Motion motion, Populations populations) {
    super(plane, motion);
    this.populations = populations;
    standard = new ResultId(motion.id() + "-active-z");
    percentile = new ResultId(motion.id() + "-active-percentile");
  }

  @Override
  public List<ResultDefinition> definitions() {
    return List.of(number(standard, Unit.NUMBER, 2), number(percentile, Unit.PERCENT, 0));
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    ItemKey key = place.key(motion(), Mode.ACTIVE);
    if (readings.entered(key)) {
      to.add(result(readings, key, place, standard));
      to.add(result(readings, key, place, percentile));
    }
  }

  private Result result(Readings readings, ItemKey key, Place place, ResultId id) {
    Optional<NormRow> row = populations.row(motion(), readings.context(), true);
    Calculation calculation =
        new Calculation("joint-z", row.map(populations::source).orElse(populations.source()));
    Optional<BigDecimal> value = readings.degrees(key);
    if (value.isEmpty()) {
      return calculation.incomplete(place.result(id), List.of(key));
    }
    Optional<Message> refusal = populations.refusal(motion(), readings.context());
    if (refusal.isPresent()) {
      return calculation.unavailable(place.result(id), refusal.get());
    }
    NormRow norm = row.orElseThrow();
    BigDecimal mean = norm.mean().orElseThrow();
    BigDecimal sd = norm.sd().orElseThrow();
    double z = NormalCurve.z(value.get().doubleValue(), mean.doubleValue(), sd.doubleValue());
    calculation.step("norm", norm.age().toString(), degrees(mean), degrees(sd));
    calculation.step("z", degrees(value.get()), degrees(mean), degrees(sd), rounded(z));
    String formula =
        "(" + key.cellName() + "-" + Calculation.literal(mean) + ")/" + Calculation.literal(sd);
    if (id.equals(standard)) {
      calculation.formula(formula);
      return calculation.computed(place.result(id), Quantity.of(z, Unit.NUMBER));
    }
    double share = NormalCurve.percentile(z);
    calculation.step("percentile", rounded(share)).formula("NORMSDIST(" + formula + ")*100");
    return calculation.computed(place.result(id), Quantity.of(share, Unit.PERCENT));
  }

  private static BigDecimal rounded(double number) {
    return BigDecimal.valueOf(number).setScale(2, RoundingMode.HALF_UP);
  }
}
