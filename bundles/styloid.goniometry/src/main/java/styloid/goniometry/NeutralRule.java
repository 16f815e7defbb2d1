package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import styloid.model.ItemKey;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/**
 * Splits the signed end of extension into the deficit (how far it stops short of neutral) and the
 * hyperextension (how far it goes past it); never both above zero. Degrees, from 0.
 */
final class NeutralRule extends MotionRule {
  private final List<Part> parts = new ArrayList<>();

  private record Part(Mode mode, ResultId deficit, ResultId past) {}

  NeutralRule(Plane plane, Motion motion) {
    super(plane, motion);
    for (Mode mode : Mode.values()) {
      String name = motion.id() + "-" + mode.code();
      parts.add(
          new Part(mode, new ResultId(name + "-deficit"), new ResultId(name + "-hyperextension")));
    }
  }

  @Override
  public List<ResultDefinition> definitions() {
    ArrayList<ResultDefinition> all = new ArrayList<>();
    for (Part part : parts) {
      all.add(number(part.deficit, Unit.DEGREE, 0));
      all.add(number(part.past, Unit.DEGREE, 0));
    }
    return all;
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    for (Part part : parts) {
      ItemKey key = place.key(motion(), part.mode);
      if (readings.entered(key)) {
        Calculation deficit = new Calculation("neutral-zero", Source.commonPractice());
        Calculation past = new Calculation("neutral-zero", Source.commonPractice());
        if (readings.degrees(key).isEmpty()) {
          to.add(deficit.incomplete(place.result(part.deficit), List.of(key)));
          to.add(past.incomplete(place.result(part.past), List.of(key)));
        } else {
          BigDecimal end = readings.degrees(key).orElseThrow();
          deficit.step("end", degrees(end)).formula("MAX(0,-" + key.cellName() + ")");
          past.step("end", degrees(end)).formula("MAX(0," + key.cellName() + ")");
          BigDecimal shortOf = end.negate().max(BigDecimal.ZERO);
          to.add(deficit.computed(place.result(part.deficit), shortOf, Unit.DEGREE));
          BigDecimal beyond = end.max(BigDecimal.ZERO);
          to.add(past.computed(place.result(part.past), beyond, Unit.DEGREE));
        }
      }
    }
  }
}
