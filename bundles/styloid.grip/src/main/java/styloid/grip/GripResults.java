package styloid.grip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Item;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/** Every result the test can give. */
final class GripResults {
  private static final Unit FORCE = TrialResults.UNIT;

  private GripResults() {}

  static List<ResultDefinition> all() {
    ArrayList<ResultDefinition> all = new ArrayList<>();
    all.add(choice("grip-calibration", Item.NO_SIDE, "instruments"));
    all.add(choice("pinch-calibration", Item.NO_SIDE, "instruments"));
    for (Measure measure : Measure.values()) {
      addMeasure(all, measure.code());
    }
    all.add(choice("change-mcid-power", Item.BOTH, "power").notableAt(Set.of("loss")));
    all.add(choice("change-mdc-power", Item.BOTH, "power").notableAt(Set.of("loss")));
    all.add(number("best-power", FORCE, 1, Item.NO_SIDE, "power"));
    all.add(choice("low-strength-ewgsop2", Item.NO_SIDE, "power"));
    all.add(choice("low-strength-fnih", Item.NO_SIDE, "power"));
    addStanding(all, "best", Item.NO_SIDE, "power");
    all.add(choice("centile-best", Item.NO_SIDE, "power"));
    all.add(choice("curve-shape", Item.BOTH, "positions"));
    all.add(number("curve-peak", Unit.COUNT, 0, Item.BOTH, "positions"));
    all.add(number("rapid-ratio", Unit.PERCENT, 0, Item.BOTH, "rapid"));
    return all;
  }

  private static void addMeasure(List<ResultDefinition> all, String measure) {
    all.add(number("mean-" + measure, FORCE, 1, Item.BOTH, measure));
    all.add(number("max-" + measure, FORCE, 1, Item.BOTH, measure));
    all.add(number("sd-" + measure, FORCE, 2, Item.BOTH, measure));
    all.add(number("cv-" + measure, Unit.PERCENT, 1, Item.BOTH, measure));
    addStanding(all, measure, Item.BOTH, measure);
    all.add(number("change-" + measure, FORCE, 1, Item.BOTH, measure));
    all.add(number("change-percent-" + measure, Unit.PERCENT, 0, Item.BOTH, measure));
    all.add(number("involved-ratio-" + measure, Unit.PERCENT, 0, Item.NO_SIDE, measure));
    all.add(number("dominant-ratio-" + measure, Unit.PERCENT, 0, Item.NO_SIDE, measure));
  }

  private static void addStanding(
      List<ResultDefinition> all, String name, Set<Side> sides, String group) {
    all.add(number("z-" + name, Unit.NUMBER, 2, sides, group));
    all.add(number("percentile-" + name, Unit.PERCENT, 1, sides, group));
    all.add(choice("band-" + name, sides, group).notableAt(Set.of("far-below")));
  }

  private static ResultDefinition number(
      String id, Unit unit, int decimals, Set<Side> sides, String group) {
    return new ResultDefinition(
        new ResultId(id), Optional.of(unit), decimals, sides, Item.NO_DIGIT, Optional.of(group));
  }

  private static ResultDefinition choice(String id, Set<Side> sides, String group) {
    return new ResultDefinition(
        new ResultId(id), Optional.empty(), 0, sides, Item.NO_DIGIT, Optional.of(group));
  }
}
