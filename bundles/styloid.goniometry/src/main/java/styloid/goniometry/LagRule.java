package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Choice;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Region;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/**
 * Active lag (passive minus active, degrees) and what limits the motion. A lag above the
 * measurement error is an active lag; passive motion that stays short of its comparison by more
 * than the error is a joint restriction. The comparison is the passive motion of the other side, if
 * that side is not involved and has an entry, else the chosen reference. Given once the motion has
 * a passive entry.
 */
final class LagRule extends MotionRule {
  private static final Set<String> NOTABLE =
      Set.of("active-lag", "joint-restriction", "lag-and-restriction");

  private final References references;
  private final ResultId lagId;
  private final ResultId limitId;

  LagRule(Plane plane, Motion motion, References references) {
    super(plane, motion);
    this.references = references;
    lagId = new ResultId(motion.id() + "-lag");
    limitId = new ResultId(motion.id() + "-limit");
  }

  /** What passive motion is held against. */
  private record Comparison(BigDecimal degrees, Message words, Source source) {}

  @Override
  public List<ResultDefinition> definitions() {
    return List.of(number(lagId, Unit.DEGREE, 0), words(limitId).notableAt(NOTABLE));
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    ItemKey passive = place.key(motion(), Mode.PASSIVE);
    if (!readings.entered(passive)) {
      return;
    }
    ItemKey active = place.key(motion(), Mode.ACTIVE);
    Calculation lag = new Calculation("joint-lag", Source.commonPractice());
    Calculation limit = new Calculation("joint-limit", MeasurementError.CUSTOMARY);
    if (motion().region() == Region.FINGERS) {
      limit.source(MeasurementError.FINGERS);
    }
    ArrayList<ItemKey> missing = new ArrayList<>(readings.missing(List.of(active, passive)));
    if (!missing.isEmpty()) {
      to.add(lag.incomplete(place.result(lagId), missing));
    }
    boolean opposite =
        readings.uninvolved(place.opposite().side()) && readings.entered(passive.opposite());
    if (opposite) {
      missing.addAll(readings.missing(List.of(passive.opposite())));
    }
    if (!missing.isEmpty()) {
      to.add(limit.incomplete(place.result(limitId), missing));
    }
    Optional<BigDecimal> own = readings.degrees(active);
    Optional<BigDecimal> given = readings.degrees(passive);
    if (own.isPresent() && given.isPresent()) {
      BigDecimal gap = given.get().subtract(own.get());
      lag.step("lag", degrees(given.get()), degrees(own.get()), degrees(gap));
      lag.formula(passive.cellName() + "-" + active.cellName());
      to.add(lag.computed(place.result(lagId), gap, Unit.DEGREE));
      if (missing.isEmpty()) {
        limit.step("lag", degrees(given.get()), degrees(own.get()), degrees(gap));
        to.add(limit(readings, place, gap, given.get(), opposite, limit));
      }
    }
  }

  private Result limit(
      Readings readings,
      Place place,
      BigDecimal gap,
      BigDecimal passive,
      boolean opposite,
      Calculation limit) {
    if (readings.settings().error().isEmpty()) {
      return limit.unavailable(place.result(limitId), "error-setting", Settings.ERROR);
    }
    BigDecimal error = readings.settings().error().get();
    limit.step("error", degrees(error));
    if (gap.negate().compareTo(error) > 0) {
      return limit.unavailable(place.result(limitId), "active-beyond-passive");
    }
    Optional<Comparison> comparison = comparison(readings, place, opposite);
    if (comparison.isEmpty()) {
      return limit.unavailable(place.result(limitId), "no-comparison");
    }
    Comparison held = comparison.get();
    BigDecimal shortfall = held.degrees.subtract(passive);
    limit.source(held.source);
    limit.step(
        "restriction", held.words, degrees(held.degrees), degrees(passive), degrees(shortfall));
    boolean lags = gap.compareTo(error) > 0;
    boolean restricted = shortfall.compareTo(error) > 0;
    String code =
        lags
            ? restricted ? "lag-and-restriction" : "active-lag"
            : restricted ? "joint-restriction" : "within-error";
    return limit.computed(place.result(limitId), new Choice(code));
  }

  private Optional<Comparison> comparison(Readings readings, Place place, boolean opposite) {
    if (opposite) {
      BigDecimal other =
          readings.degrees(place.opposite().key(motion(), Mode.PASSIVE)).orElseThrow();
      return Optional.of(
          new Comparison(other, Calculation.words("comparison.side"), Source.commonPractice()));
    }
    return references
        .of(readings.settings().reference(), motion())
        .filter(r -> r.population().refuses(readings.context(), Mode.PASSIVE).isEmpty())
        .map(r -> new Comparison(r.low(), Calculation.words("comparison.reference"), r.source()));
  }
}
