package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/**
 * Points for fingertip to distal palmar crease, for the sum of extension deficits and for total
 * active motion; their sum (0 to 15) and its class. Given once the distance has an entry.
 */
final class BuckGramckoRule implements Rule {
  private static final ResultId POINTS = new ResultId("buck-gramcko-points");
  private static final ResultId CLASS = new ResultId("buck-gramcko-class");

  private final Chain chain = Chain.of("mp", "pip", "dip");

  @Override
  public Set<Digit> digits() {
    return Item.FINGERS;
  }

  @Override
  public String group() {
    return HandItems.CREASE_GROUP;
  }

  @Override
  public List<ResultDefinition> definitions() {
    return List.of(number(POINTS, Unit.COUNT, 0), words(CLASS));
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    ItemKey distance = place.key(HandItems.CREASE);
    if (!readings.entered(distance)) {
      return;
    }
    Calculation points = new Calculation("buck-gramcko", HandScales.BUCK_GRAMCKO);
    Calculation grade = new Calculation("buck-gramcko", HandScales.BUCK_GRAMCKO);
    ArrayList<ItemKey> keys = new ArrayList<>(List.of(distance));
    keys.addAll(chain.keys(place, Mode.ACTIVE));
    List<ItemKey> missing = readings.missing(keys);
    if (!missing.isEmpty()) {
      to.add(points.incomplete(place.result(POINTS), missing));
      to.add(grade.incomplete(place.result(CLASS), missing));
      return;
    }
    Quantity typed = readings.context().snapshot().quantity(distance).orElseThrow();
    BigDecimal cm = typed.in(Unit.CENTIMETRE).amount();
    Chain.Total total = chain.total(readings, place, Mode.ACTIVE).orElseThrow();
    int byDistance = HandScales.CREASE_POINTS.points(cm);
    int byDeficit = HandScales.DEFICIT_POINTS.points(total.deficit());
    int byTotal = HandScales.TOTAL_POINTS.points(total.degrees());
    BigDecimal sum = BigDecimal.valueOf((long) byDistance + byDeficit + byTotal);
    for (Calculation calculation : List.of(points, grade)) {
      calculation
          .step("points-distance", typed, byDistance)
          .step("points-deficit", degrees(total.deficit()), byDeficit)
          .step("points-total", degrees(total.degrees()), byTotal)
          .step("points-sum", sum);
    }
    to.add(points.computed(place.result(POINTS), sum, Unit.COUNT));
    String code = HandScales.BUCK_GRAMCKO_CLASSES.code(sum);
    to.add(grade.computed(place.result(CLASS), new Choice(code)));
  }
}
