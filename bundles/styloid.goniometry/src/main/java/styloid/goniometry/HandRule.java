package styloid.goniometry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/** Results of opposition and span. */
final class HandRule {
  private HandRule() {}

  /**
   * The point the thumb tip reached, in words. Steps 1 to 10 as in the 1986 abstract; 0, no contact
   * with any of them, is used in practice. Given once the score has an entry.
   */
  static final class Opposition implements Rule {
    private static final ResultId POINT = new ResultId("kapandji-point");
    private static final Source SOURCE =
        Source.verified("Kapandji A. 1986. Ann Chir Main 5(1):67-73, abstract");
    private static final Source ZERO = Source.memory("Kapandji score of 0, used in practice");

    @Override
    public Set<Digit> digits() {
      return Item.NO_DIGIT;
    }

    @Override
    public String group() {
      return HandItems.OPPOSITION_GROUP;
    }

    @Override
    public List<ResultDefinition> definitions() {
      return List.of(words(POINT));
    }

    @Override
    public void addResults(Readings readings, Place place, List<Result> to) {
      ItemKey key = place.key(HandItems.KAPANDJI);
      if (readings.entered(key)) {
        Optional<String> step = readings.context().snapshot().choice(key);
        Calculation calculation =
            new Calculation("kapandji", step.filter("0"::equals).isPresent() ? ZERO : SOURCE);
        to.add(
            step.isEmpty()
                ? calculation.incomplete(place.result(POINT), List.of(key))
                : calculation
                    .step("kapandji", step.get())
                    .computed(place.result(POINT), new Choice(step.get())));
      }
    }
  }

  /** How far the span stays short of the other hand's, in cm. Given once this side has an entry. */
  static final class Span implements Rule {
    private static final ResultId DEFICIT = new ResultId("span-side-deficit");

    @Override
    public Set<Digit> digits() {
      return Item.NO_DIGIT;
    }

    @Override
    public String group() {
      return HandItems.SPAN_GROUP;
    }

    @Override
    public List<ResultDefinition> definitions() {
      return List.of(number(DEFICIT, Unit.CENTIMETRE, 1));
    }

    @Override
    public void addResults(Readings readings, Place place, List<Result> to) {
      ItemKey own = place.key(HandItems.SPAN);
      if (readings.entered(own)) {
        to.add(deficit(readings, own, place));
      }
    }

    private static Result deficit(Readings readings, ItemKey own, Place place) {
      Calculation calculation = new Calculation("joint-side-deficit", Source.commonPractice());
      List<ItemKey> missing = readings.missing(List.of(own, own.opposite()));
      if (!missing.isEmpty()) {
        return calculation.incomplete(place.result(DEFICIT), missing);
      }
      Quantity mine = readings.context().snapshot().quantity(own).orElseThrow();
      Quantity theirs = readings.context().snapshot().quantity(own.opposite()).orElseThrow();
      BigDecimal deficit =
          theirs.in(Unit.CENTIMETRE).amount().subtract(mine.in(Unit.CENTIMETRE).amount());
      Quantity shown = new Quantity(deficit, Unit.CENTIMETRE);
      calculation.step("side-deficit", theirs, mine, shown);
      if (mine.unit() == Unit.CENTIMETRE && theirs.unit() == Unit.CENTIMETRE) {
        calculation.formula(own.opposite().cellName() + "-" + own.cellName());
      }
      return calculation.computed(place.result(DEFICIT), shown);
    }
  }
}
