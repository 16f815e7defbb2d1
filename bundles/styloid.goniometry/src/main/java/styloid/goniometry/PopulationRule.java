package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Unit;
import styloid.model.norm.NormRow;
import styloid.spi.ResultDefinition;

/**
 * How far passive motion stays short of the mean of people of the same sex and age, in degrees;
 * below zero when it goes further. No standard score: the source's spread is not known here. Given
 * once the motion has a passive entry.
 */
final class PopulationRule extends MotionRule {
  private final Populations populations;
  private final ResultId id;

  PopulationRule(Plane plane, Motion motion, Populations populations) {
    super(plane, motion);
    this.populations = populations;
    id = new ResultId(motion.id() + "-passive-mean-deficit");
  }

  @Override
  public List<ResultDefinition> definitions() {
    return List.of(number(id, Unit.DEGREE, 1));
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    ItemKey key = place.key(motion(), Mode.PASSIVE);
    if (readings.entered(key)) {
      to.add(result(readings, key, place));
    }
  }

  private Result result(Readings readings, ItemKey key, Place place) {
    Optional<NormRow> row = populations.row(motion(), readings.context(), false);
    Calculation calculation =
        new Calculation(
            "joint-passive-mean", row.map(populations::source).orElse(populations.source()));
    Optional<BigDecimal> value = readings.degrees(key);
    if (value.isEmpty()) {
      return calculation.incomplete(place.result(id), List.of(key));
    }
    Optional<Message> refusal = populations.refusal(motion(), readings.context());
    if (refusal.isPresent()) {
      return calculation.unavailable(place.result(id), refusal.get());
    }
    BigDecimal mean = row.orElseThrow().mean().orElseThrow();
    BigDecimal deficit = mean.subtract(value.get());
    calculation
        .step("mean-of", row.orElseThrow().age().toString(), degrees(mean))
        .step("reference-deficit", degrees(mean), degrees(value.get()), degrees(deficit))
        .formula(Calculation.literal(mean) + "-" + key.cellName());
    return calculation.computed(place.result(id), deficit, Unit.DEGREE);
  }
}
