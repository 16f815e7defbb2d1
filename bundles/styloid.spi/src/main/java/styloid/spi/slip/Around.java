package styloid.spi.slip;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Entry;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Unit;
import styloid.spi.Group;

/** A number just typed and what stands around it. */
final class Around {
  /** So many numbers show how fine the instrument is read. */
  private static final int ENOUGH = 5;

  private final ItemKey key;
  private final ItemKind.Number kind;
  private final Quantity typed;
  private final PatientContext context;
  private final Item item;
  private final Group group;
  private final Scale scale;
  private final List<Comparison> own = new ArrayList<>();
  private final List<Comparison> other = new ArrayList<>();

  Around(
      Group group,
      Item item,
      ItemKind.Number kind,
      ItemKey key,
      Quantity typed,
      PatientContext context) {
    this.group = group;
    this.item = item;
    this.kind = kind;
    this.key = key;
    this.typed = typed;
    this.context = context;
    this.scale = Scale.of(kind);
    gather();
  }

  private void gather() {
    Spread spread = new Spread(scale, context.patient(), group.region());
    List<Quantity> trials = values(context.snapshot(), key, true);
    add(own, Comparison.Kind.TRIALS, spread.trials(), trials);
    add(own, Comparison.Kind.LAST, spread.last(key.side()), last(key));
    add(own, Comparison.Kind.SIBLING, spread.sibling(), siblings());
    add(own, Comparison.Kind.DIGITS, spread.digits(key.side()), digits());
    if (key.side() != Side.UNSIDED) {
      ItemKey there = key.opposite();
      List<Quantity> now = values(context.snapshot(), there, false);
      add(other, Comparison.Kind.OTHER_NOW, spread.trials(), now);
      add(other, Comparison.Kind.OTHER_LAST, spread.last(there.side()), last(there));
      add(own, Comparison.Kind.OTHER_NOW, spread.limbs(), now);
    }
  }

  private List<Quantity> siblings() {
    return group.items().stream()
        .filter(i -> !i.equals(item) && i.kind().equals(kind) && i.digits().equals(item.digits()))
        .map(i -> new ItemKey(key.test(), i.id(), key.side(), key.digit(), 1))
        .flatMap(k -> context.snapshot().quantity(k).stream())
        .toList();
  }

  private List<Quantity> digits() {
    return item.digits().stream()
        .filter(digit -> digit != key.digit())
        .map(digit -> new ItemKey(key.test(), key.item(), key.side(), digit, key.trial()))
        .flatMap(k -> context.snapshot().quantity(k).stream())
        .toList();
  }

  private List<Quantity> last(ItemKey place) {
    for (PatientContext.Past past : context.past()) {
      List<Quantity> values = values(past.snapshot(), place, false);
      if (!values.isEmpty()) {
        return values;
      }
    }
    return List.of();
  }

  private List<Quantity> values(Snapshot snapshot, ItemKey place, boolean others) {
    ArrayList<Quantity> found = new ArrayList<>();
    for (int trial = 1; trial <= item.trials(); trial++) {
      if (!(others && trial == place.trial())) {
        snapshot
            .quantity(new ItemKey(place.test(), place.item(), place.side(), place.digit(), trial))
            .filter(q -> q.unit().dimension() == kind.unit().dimension())
            .ifPresent(found::add);
      }
    }
    return found;
  }

  /** The middle value stands for all, so that one slip among them does not move it. */
  private void add(
      List<Comparison> to, Comparison.Kind from, double spread, List<Quantity> values) {
    if (values.isEmpty()) {
      return;
    }
    double[] amounts = values.stream().mapToDouble(q -> q.doubleIn(kind.unit())).sorted().toArray();
    int half = amounts.length / 2;
    double middle =
        amounts.length % 2 == 1 ? amounts[half] : (amounts[half - 1] + amounts[half]) / 2;
    if (!scale.tells(middle)) {
      return;
    }
    Quantity about = shown(middle);
    to.add(new Comparison(from, scale.place(middle), spread, about, amounts.length));
  }

  /** An amount of the item's first unit in the unit that was typed, to no more than a tenth. */
  Quantity shown(double amount) {
    BigDecimal converted = kind.unit().convert(BigDecimal.valueOf(amount), typed.unit());
    return rounded(converted, typed.unit());
  }

  Quantity rounded(BigDecimal amount, Unit unit) {
    BigDecimal tenth =
        amount.setScale(Math.min(1, kind.decimals()), RoundingMode.HALF_UP).stripTrailingZeros();
    return new Quantity(tenth.scale() < 0 ? tenth.setScale(0) : tenth, unit);
  }

  /** Whether it has more digits after the point than any other number of this unit so far. */
  boolean finer() {
    int most = 0;
    int seen = 0;
    for (Entry entry : context.snapshot().entries()) {
      if (!entry.key().equals(key)
          && entry.value().orElse(null) instanceof Quantity q
          && q.unit() == typed.unit()) {
        most = Math.max(most, decimals(q));
        seen++;
      }
    }
    return seen >= ENOUGH && decimals(typed) > most;
  }

  private static int decimals(Quantity quantity) {
    return Math.max(0, quantity.amount().stripTrailingZeros().scale());
  }

  ItemKind.Number kind() {
    return kind;
  }

  Quantity typed() {
    return typed;
  }

  Side side() {
    return key.side();
  }

  /** What a sound value of this place would be near to. */
  List<Comparison> own() {
    return own;
  }

  /** What a value of the other limb would be near to. */
  List<Comparison> other() {
    return other;
  }

  Optional<Comparison> own(Comparison.Kind from) {
    return own.stream().filter(c -> c.kind() == from).findFirst();
  }

  double place() {
    return place(typed);
  }

  double place(Quantity quantity) {
    return scale.place(quantity.doubleIn(kind.unit()));
  }
}
