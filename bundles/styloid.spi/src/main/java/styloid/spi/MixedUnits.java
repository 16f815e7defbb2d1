package styloid.spi;

import java.util.Collection;
import java.util.Optional;
import styloid.model.Entry;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Unit;
import styloid.model.Value;

/**
 * Asks once when a set of readings turns to another unit, such as pounds after kilograms. The set
 * is every side and trial of one item and digit. The reading stays as typed whatever the answer;
 * once one reading in the other unit was kept, both units belong to the set and nothing more is
 * asked.
 */
public final class MixedUnits {
  private MixedUnits() {}

  /**
   * The question, if the value brings a unit into the set that no other reading of it has. A place
   * typed again is not held against itself.
   *
   * @param entries those in force, whatever the item
   */
  public static Optional<Message> question(
      Item item, ItemKey key, Value value, Collection<Entry> entries) {
    boolean single = !(item.kind() instanceof ItemKind.Number kind) || kind.units().size() < 2;
    if (single || !(value instanceof Quantity typed)) {
      return Optional.empty();
    }
    Optional<Unit> other = Optional.empty();
    for (Entry entry : entries) {
      if (entry.value().orElse(null) instanceof Quantity there && sameSet(entry.key(), key)) {
        if (there.unit() == typed.unit()) {
          if (!entry.key().equals(key) || entry.confirmed()) {
            return Optional.empty();
          }
        } else if (!entry.key().equals(key)) {
          other = Optional.of(there.unit());
        }
      }
    }
    return other.map(
        unit ->
            Message.of(Texts.COMMON, "check.mixed-units", typed, unit.sign(), typed.unit().sign()));
  }

  private static boolean sameSet(ItemKey one, ItemKey other) {
    return one.digit() == other.digit()
        && one.item().equals(other.item())
        && one.test().equals(other.test());
  }
}
