package styloid.spi.slip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import styloid.model.Entry;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Value;
import styloid.spi.Group;
import styloid.spi.Texts;

/**
 * Looks at a value just typed and says whether another was probably meant. The rule and its
 * thresholds: page {@code slips} of the rules.
 */
public final class Slips {
  private Slips() {}

  /**
   * The strongest suspicion; empty where there is none, where the value is no number, and where the
   * same value was asked about here before and kept.
   */
  public static Optional<Doubt> look(
      Group group, Item item, ItemKey key, Value value, PatientContext context) {
    if (!(value instanceof Quantity typed)
        || !(item.kind() instanceof ItemKind.Number kind)
        || kept(key, typed, context)) {
      return Optional.empty();
    }
    Around around = new Around(group, item, kind, key, typed, context);
    ArrayList<Doubt> doubts = new ArrayList<>();
    ArrayList<Meant> meant = new ArrayList<>(UnitSlip.of(around));
    meant.addAll(DigitSlip.points(around));
    meant.addAll(DigitSlip.swaps(around));
    meant.forEach(m -> weigh(around, m).ifPresent(doubts::add));
    SideSlip.look(around).ifPresent(doubts::add);
    return doubts.stream()
        .filter(d -> d.strength() >= Threshold.of(d.slip()))
        .max(Comparator.comparingDouble(d -> d.strength() - Threshold.of(d.slip())));
  }

  private static boolean kept(ItemKey key, Quantity typed, PatientContext context) {
    Optional<Entry> now = context.snapshot().entry(key);
    return now.filter(Entry::confirmed)
        .flatMap(Entry::value)
        .filter(v -> v instanceof Quantity q && same(q, typed))
        .isPresent();
  }

  private static boolean same(Quantity one, Quantity two) {
    return one.unit() == two.unit() && one.amount().compareTo(two.amount()) == 0;
  }

  private static Optional<Doubt> weigh(Around around, Meant meant) {
    double amount = meant.value().doubleIn(around.kind().unit());
    boolean possible =
        amount >= around.kind().likelyMin().doubleValue()
            && amount <= around.kind().likelyMax().doubleValue();
    List<Comparison> own = around.own();
    if (!possible || own.isEmpty()) {
      return Optional.empty();
    }
    double typedAt = around.place();
    double meantAt = around.place(meant.value());
    double strength = meant.slip() != Slip.SWAP && around.finer() ? Threshold.FINER : 0;
    Comparison best = own.get(0);
    double most = Double.NEGATIVE_INFINITY;
    for (Comparison comparison : own) {
      double better = comparison.fit(meantAt) - comparison.fit(typedAt);
      strength += better;
      if (better > most) {
        most = better;
        best = comparison;
      }
    }
    Message question = meant.question(around, best, said(best, around));
    return Optional.of(new Doubt(meant.slip(), question, strength));
  }

  private static Message said(Comparison comparison, Around around) {
    return switch (comparison.kind()) {
      case TRIALS ->
          comparison.count() == 1
              ? Message.of(Texts.COMMON, "slip.beside.trial", comparison.about())
              : Message.of(Texts.COMMON, "slip.beside.trials", comparison.about());
      case SIBLING -> Message.of(Texts.COMMON, "slip.beside.sibling", comparison.about());
      case DIGITS -> Message.of(Texts.COMMON, "slip.beside.digits", comparison.about());
      case LAST -> Message.of(Texts.COMMON, "slip.beside.last", comparison.about());
      case OTHER_NOW, OTHER_LAST ->
          Message.of(
              Texts.COMMON, "slip.beside.other", around.side().opposite(), comparison.about());
    };
  }
}
