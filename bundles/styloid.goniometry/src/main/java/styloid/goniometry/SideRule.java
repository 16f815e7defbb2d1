package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;

import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import styloid.model.ItemKey;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/**
 * How far a motion stays short of the same motion of the other limb, in degrees: other side minus
 * this side, below zero when this side goes further. Given once this side has an entry.
 */
final class SideRule extends MotionRule {
  private final Map<Mode, ResultId> ids = new EnumMap<>(Mode.class);

  SideRule(Plane plane, Motion motion) {
    super(plane, motion);
    for (Mode mode : Mode.values()) {
      ids.put(mode, new ResultId(motion.id() + "-" + mode.code() + "-side-deficit"));
    }
  }

  @Override
  public List<ResultDefinition> definitions() {
    return ids.values().stream().map(id -> number(id, Unit.DEGREE, 0)).toList();
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    ids.forEach(
        (mode, id) -> {
          ItemKey own = place.key(motion(), mode);
          if (readings.entered(own)) {
            to.add(deficit(readings, own, place, id));
          }
        });
  }

  private static Result deficit(Readings readings, ItemKey own, Place place, ResultId id) {
    Calculation calculation = new Calculation("joint-side-deficit", Source.commonPractice());
    ItemKey other = own.opposite();
    List<ItemKey> missing = readings.missing(List.of(own, other));
    if (!missing.isEmpty()) {
      return calculation.incomplete(place.result(id), missing);
    }
    BigDecimal mine = readings.degrees(own).orElseThrow();
    BigDecimal theirs = readings.degrees(other).orElseThrow();
    BigDecimal deficit = theirs.subtract(mine);
    calculation
        .step("side-deficit", degrees(theirs), degrees(mine), degrees(deficit))
        .formula(other.cellName() + "-" + own.cellName());
    return calculation.computed(place.result(id), deficit, Unit.DEGREE);
  }
}
