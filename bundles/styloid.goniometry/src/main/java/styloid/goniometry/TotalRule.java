package styloid.goniometry;

import static styloid.goniometry.Calculation.degrees;
import static styloid.goniometry.Calculation.percent;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Unit;
import styloid.spi.ResultDefinition;

/**
 * Total active and total passive motion of a digit in degrees; the active one in percent of the
 * opposite digit, and its class. The opposite digit serves only when it is not of an involved limb
 * and something of it was recorded; else 260 degrees (thumb 140) do. Given once any of its joints
 * has an entry in that mode.
 */
final class TotalRule implements Rule {
  private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);

  private final Chain chain;
  private final Set<Digit> digits;
  private final String group;
  private final BigDecimal normal;
  private final ResultId active;
  private final ResultId passive;
  private final ResultId share;
  private final ResultId grade;

  private TotalRule(
      String prefix, Chain chain, Set<Digit> digits, String group, BigDecimal normal) {
    this.chain = chain;
    this.digits = Set.copyOf(digits);
    this.group = group;
    this.normal = normal;
    active = new ResultId(prefix + "total-active-motion");
    passive = new ResultId(prefix + "total-passive-motion");
    share = new ResultId(prefix + "total-active-motion-percent");
    grade = new ResultId(prefix + "total-active-motion-class");
  }

  static TotalRule ofFingers() {
    return new TotalRule(
        "", Chain.of("mp", "pip", "dip"), Item.FINGERS, "finger-dip", HandScales.FINGER_NORMAL);
  }

  static TotalRule ofThumb() {
    return new TotalRule(
        "thumb-",
        Chain.of("thumb-mp", "thumb-ip"),
        Set.of(Digit.THUMB),
        "thumb-ip",
        HandScales.THUMB_NORMAL);
  }

  @Override
  public Set<Digit> digits() {
    return digits;
  }

  @Override
  public String group() {
    return group;
  }

  @Override
  public List<ResultDefinition> definitions() {
    return List.of(
        number(active, Unit.DEGREE, 0),
        number(share, Unit.PERCENT, 1),
        words(grade),
        number(passive, Unit.DEGREE, 0));
  }

  @Override
  public void addResults(Readings readings, Place place, List<Result> to) {
    if (readings.anyEntered(chain.keys(place, Mode.ACTIVE))) {
      to.add(total(readings, place, Mode.ACTIVE, active));
      addShare(readings, place, to);
    }
    if (readings.anyEntered(chain.keys(place, Mode.PASSIVE))) {
      to.add(total(readings, place, Mode.PASSIVE, passive));
    }
  }

  private Result total(Readings readings, Place place, Mode mode, ResultId id) {
    Calculation calculation = new Calculation("total-motion", HandScales.ASSH);
    Optional<Chain.Total> total = chain.total(readings, place, mode);
    if (total.isEmpty()) {
      return calculation.incomplete(place.result(id), readings.missing(chain.keys(place, mode)));
    }
    calculation.formula(chain.formula(place, mode));
    step(calculation, total.get());
    return calculation.computed(place.result(id), total.get().degrees(), Unit.DEGREE);
  }

  private static void step(Calculation calculation, Chain.Total total) {
    calculation.step(
        "total-motion",
        degrees(total.flexion()),
        degrees(total.deficit()),
        degrees(total.degrees()));
  }

  private void addShare(Readings readings, Place place, List<Result> to) {
    Calculation shares = new Calculation("total-motion-percent", HandScales.ASSH);
    Calculation grades = new Calculation("total-motion-class", HandScales.ASSH);
    boolean opposite = oppositeServes(readings, place);
    ArrayList<ItemKey> missing = new ArrayList<>(readings.missing(chain.keys(place, Mode.ACTIVE)));
    if (opposite) {
      missing.addAll(readings.missing(chain.keys(place.opposite(), Mode.ACTIVE)));
    }
    if (!missing.isEmpty()) {
      to.add(shares.incomplete(place.result(share), missing));
      to.add(grades.incomplete(place.result(grade), missing));
      return;
    }
    Chain.Total own = chain.total(readings, place, Mode.ACTIVE).orElseThrow();
    BigDecimal full =
        opposite
            ? chain.total(readings, place.opposite(), Mode.ACTIVE).orElseThrow().degrees()
            : normal;
    for (Calculation calculation : List.of(shares, grades)) {
      step(calculation, own);
      calculation.step(opposite ? "normal-opposite" : "normal-fixed", degrees(full));
    }
    if (full.signum() <= 0) {
      to.add(shares.unavailable(place.result(share), "opposite-without-motion"));
      to.add(grades.unavailable(place.result(grade), "opposite-without-motion"));
      return;
    }
    BigDecimal reached = own.degrees().multiply(HUNDRED).divide(full, Calculation.PRECISION);
    String divisor =
        opposite
            ? "(" + chain.formula(place.opposite(), Mode.ACTIVE) + ")"
            : Calculation.literal(normal);
    shares.formula("(" + chain.formula(place, Mode.ACTIVE) + ")/" + divisor + "*100");
    shares.step("total-motion-percent", degrees(own.degrees()), degrees(full), percent(reached));
    to.add(shares.computed(place.result(share), reached, Unit.PERCENT));
    grades.grade(HandScales.ASSH_CLASSES, reached);
    String code = HandScales.ASSH_CLASSES.code(reached);
    to.add(grades.computed(place.result(grade), new Choice(code)));
  }

  private boolean oppositeServes(Readings readings, Place place) {
    Place other = place.opposite();
    return readings.uninvolved(other.side()) && readings.anyEntered(chain.keys(other, Mode.ACTIVE));
  }
}
