package styloid.spi;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Precaution;
import styloid.model.Region;

/** Which precautions withhold an item. */
public final class Withheld {
  private Withheld() {}

  /** The precautions that withhold {@code key} on {@code day}; empty when it may be done. */
  public static List<Precaution> by(
      Group group, Item item, ItemKey key, List<Precaution> precautions, LocalDate day) {
    ArrayList<Precaution> found = new ArrayList<>();
    for (Precaution precaution : precautions) {
      for (Region loaded : group.loads()) {
        if (precaution.withholds(item.demand(), loaded, key.side(), key.digit(), day)) {
          found.add(precaution);
          break;
        }
      }
    }
    return found;
  }
}
