package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;
import static styloid.goniometry.Calculation.percent;

import java.math.BigDecimal;
import java.util.List;
import java.util.Set;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/**
 * Active motion of PIP and DIP in percent of 175 degrees, with the original and the adjusted class.
 * Given once any of the four ends has an entry.
 */
final class StricklandRule implements Rule {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
  private static final ResultId PERCENT = new ResultId("strickland-percent");
  private static final ResultId ORIGINAL = new ResultId("strickland-original-class");
  private static final ResultId ADJUSTED = new ResultId("strickland-adjusted-class");

  private final Chain chain = Chain.of("pip", "dip");

  @Override
  public Set<Digit> digits() {
    return Item.FINGERS;
  }

  @Override
  public String group() {
    return "finger-dip";
  }

  @Override
  public List<ResultDefinition> definitions() {
    return List.of(number(PERCENT, Unit.PERCENT, 1), words(ORIGINAL), words(ADJUSTED));
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    List<ItemKey> keys = chain.keys(place, Mode.ACTIVE);
    if (!readings.anyEntered(keys)) {
      return;
    }
    List<ItemKey> missing = readings.missing(keys);
    if (!missing.isEmpty()) {
      to.add(start(HandScales.STRICKLAND).incomplete(place.result(PERCENT), missing));
      to.add(start(HandScales.STRICKLAND).incomplete(place.result(ORIGINAL), missing));
      to.add(start(HandScales.STRICKLAND_ADJUSTED).incomplete(place.result(ADJUSTED), missing));
      return;
    }
    Chain.Total total = chain.total(readings, place, Mode.ACTIVE).orElseThrow();
    BigDecimal normal = HandScales.PIP_AND_DIP_NORMAL;
    BigDecimal share = total.degrees().multiply(HUNDRED).divide(normal, Calculation.PRECISION);
    String formula =
        "(" + chain.formula(place, Mode.ACTIVE) + ")/" + Calculation.literal(normal) + "*100";
    to.add(
        shown(HandScales.STRICKLAND, total, share)
            .formula(formula)
            .computed(place.result(PERCENT), share, Unit.PERCENT));
    to.add(
        grade(HandScales.STRICKLAND, HandScales.STRICKLAND_CLASSES, total, share, place, ORIGINAL));
    to.add(
        grade(
            HandScales.STRICKLAND_ADJUSTED,
            HandScales.ADJUSTED_CLASSES,
            total,
            share,
            place,
            ADJUSTED));
  }

  private static Calculation start(Source source) {
    return new Calculation("strickland", source);
  }

  private static Calculation shown(Source source, Chain.Total total, BigDecimal share) {
    return start(source)
        .step(
            "total-motion",
            degrees(total.flexion()),
            degrees(total.deficit()),
            degrees(total.degrees()))
        .step(
            "total-motion-percent",
            degrees(total.degrees()),
            degrees(HandScales.PIP_AND_DIP_NORMAL),
            percent(share));
  }

  private static Result grade(
      Source source, Bands bands, Chain.Total total, BigDecimal share, Place place, ResultId id) {
    return shown(source, total, share)
        .grade(bands, share)
        .computed(place.result(id), new Choice(bands.code(share)));
  }
}
