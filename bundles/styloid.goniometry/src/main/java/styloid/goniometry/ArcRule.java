package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.ItemKey;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.model.Text;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/**
 * Arc of a plane and its neutral-zero form. The arc is the sum of both ends, each counted from
 * neutral, in degrees. Given once either end has an entry in that mode; ends that contradict each
 * other (an arc below zero) give no value.
 */
final class ArcRule implements Rule {
  private static final Source SOURCE = Source.commonPractice();

  private final Plane plane;
  private final Motion toward;
  private final List<Part> parts = new ArrayList<>();

  private record Part(Mode mode, ResultId arc, ResultId written) {}

  ArcRule(Plane plane) {
    this.plane = plane;
    this.toward = plane.toward().orElseThrow();
    for (Mode mode : Mode.values()) {
      ResultId arc = new ResultId(plane.id() + "-arc-" + mode.code());
      parts.add(new Part(mode, arc, new ResultId(plane.id() + "-written-" + mode.code())));
    }
  }

  @Override
  public Set<Digit> digits() {
    return plane.digits();
  }

  @Override
  public String group() {
    return plane.id();
  }

  @Override
  public List<ResultDefinition> definitions() {
    ArrayList<ResultDefinition> all = new ArrayList<>();
    for (Part part : parts) {
      all.add(number(part.arc, Unit.DEGREE, 0));
      all.add(words(part.written));
    }
    return all;
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    for (Part part : parts) {
      ItemKey first = place.key(plane.away(), part.mode);
      ItemKey last = place.key(toward, part.mode);
      List<ItemKey> ends = List.of(first, last);
      if (readings.anyEntered(ends)) {
        add(readings, place, part, ends, to);
      }
    }
  }

  private void add(Readings readings, Place place, Part part, List<ItemKey> ends, List<Result> to) {
    Calculation arc = new Calculation("joint-arc", SOURCE);
    Calculation written = new Calculation("neutral-zero", SOURCE);
    List<ItemKey> missing = readings.missing(ends);
    if (!missing.isEmpty()) {
      to.add(arc.incomplete(place.result(part.arc), missing));
      to.add(written.incomplete(place.result(part.written), missing));
      return;
    }
    BigDecimal first = readings.degrees(ends.get(0)).orElseThrow();
    BigDecimal last = readings.degrees(ends.get(1)).orElseThrow();
    BigDecimal sum = first.add(last);
    arc.step("arc", degrees(last), degrees(first), degrees(sum));
    if (sum.signum() < 0) {
      to.add(arc.unavailable(place.result(part.arc), "ends-contradict"));
      to.add(written.unavailable(place.result(part.written), "ends-contradict"));
      return;
    }
    arc.formula(ends.get(1).cellName() + "+" + ends.get(0).cellName());
    to.add(arc.computed(place.result(part.arc), sum, Unit.DEGREE));
    NeutralZero form = new NeutralZero(plane.letter(), first, last);
    written.step("neutral-zero." + form.passes());
    to.add(written.computed(place.result(part.written), new Text(form.written())));
  }
}
