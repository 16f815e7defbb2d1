package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;
import static styloid.goniometry.Calculation.percent;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/**
 * How far a motion stays short of the chosen reference (degrees, below zero when it goes further)
 * and what share of it is reached (active motion, percent; only where the reference is above zero).
 * A reference for another sex, age or mode is not used. Given once the motion has an entry.
 */
final class ReferenceRule extends MotionRule {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final References references;
  private final Map<Mode, ResultId> deficits = new EnumMap<>(Mode.class);
  private final Optional<ResultId> share;

  ReferenceRule(Plane plane, Motion motion, References references) {
    super(plane, motion);
    this.references = references;
    for (Mode mode : Mode.values()) {
      deficits.put(mode, new ResultId(motion.id() + "-" + mode.code() + "-reference-deficit"));
    }
    share =
        motion.pastNeutral()
            ? Optional.empty()
            : Optional.of(new ResultId(motion.id() + "-active-reference-percent"));
  }

  @Override
  public List<ResultDefinition> definitions() {
    ArrayList<ResultDefinition> all = new ArrayList<>();
    deficits.values().forEach(id -> all.add(number(id, Unit.DEGREE, 0)));
    share.ifPresent(id -> all.add(number(id, Unit.PERCENT, 0)));
    return all;
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    deficits.forEach(
        (mode, id) -> {
          ItemKey key = place.key(motion(), mode);
          if (readings.entered(key)) {
            to.add(result(readings, key, mode, place, id, false));
            if (mode == Mode.ACTIVE && share.isPresent()) {
              to.add(result(readings, key, mode, place, share.get(), true));
            }
          }
        });
  }

  private Result result(
      Readings readings, ItemKey key, Mode mode, Place place, ResultId id, boolean asShare) {
    Optional<References.Reference> found = references.of(readings.settings().reference(), motion());
    Optional<References.Printed> printed =
        references.printedOnly(readings.settings().reference(), motion());
    Calculation calculation =
        new Calculation(
            asShare ? "joint-reference-percent" : "joint-reference",
            found
                .map(References.Reference::source)
                .or(() -> printed.map(References.Printed::source))
                .orElse(Source.commonPractice()));
    Optional<BigDecimal> value = readings.degrees(key);
    if (value.isEmpty()) {
      return calculation.incomplete(place.result(id), List.of(key));
    }
    if (printed.isPresent()) {
      return calculation.unavailable(
          place.result(id), "printed-only", degrees(printed.get().degrees()));
    }
    if (found.isEmpty()) {
      return calculation.unavailable(place.result(id), none(readings.settings().reference()));
    }
    References.Reference reference = found.get();
    Optional<Message> refusal = reference.population().refuses(readings.context(), mode);
    if (refusal.isPresent()) {
      return calculation.unavailable(place.result(id), refusal.get());
    }
    calculation.step("reference", reference.printed(), degrees(reference.low()));
    return asShare
        ? share(calculation, value.get(), reference.low(), key, place, id)
        : deficit(calculation, value.get(), reference.low(), key, place, id);
  }

  private Message none(String code) {
    return references.codes().contains(code)
        ? Calculation.words("unavailable.no-reference", Calculation.words("reference." + code))
        : Calculation.words(
            "unavailable.unknown-reference", code, String.join(", ", references.codes()));
  }

  private static Result deficit(
      Calculation calculation,
      BigDecimal value,
      BigDecimal reference,
      ItemKey key,
      Place place,
      ResultId id) {
    BigDecimal deficit = reference.subtract(value);
    calculation
        .step("reference-deficit", degrees(reference), degrees(value), degrees(deficit))
        .formula(Calculation.literal(reference) + "-" + key.cellName());
    return calculation.computed(place.result(id), deficit, Unit.DEGREE);
  }

  private static Result share(
      Calculation calculation,
      BigDecimal value,
      BigDecimal reference,
      ItemKey key,
      Place place,
      ResultId id) {
    if (reference.signum() <= 0) {
      return calculation.unavailable(place.result(id), "reference-zero");
    }
    BigDecimal share = value.multiply(HUNDRED).divide(reference, Calculation.PRECISION);
    calculation
        .step("reference-percent", degrees(value), degrees(reference), percent(share))
        .formula(key.cellName() + "/" + Calculation.literal(reference) + "*100");
    return calculation.computed(place.result(id), share, Unit.PERCENT);
  }
}
