package styloid.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.spi.Group;

/** Which items of a group lead a row, and which only follow from the answer to another. */
final class Leads {
  private Leads() {}

  /** Each leading item, in order, with those that follow from it. */
  static Map<Item, List<Item>> of(Group group) {
    LinkedHashMap<Item, List<Item>> rows = new LinkedHashMap<>();
    LinkedHashMap<ItemId, Item> leadOf = new LinkedHashMap<>();
    for (Item item : group.items()) {
      Item lead = null;
      for (ItemId read : item.askWhen().reads()) {
        Item candidate = leadOf.get(read);
        if (candidate != null && candidate.sides().equals(item.sides())) {
          lead = lead == null ? candidate : lead;
        }
      }
      boolean follows = lead != null && item.digits().equals(lead.digits()) && item.trials() == 1;
      if (follows) {
        rows.get(lead).add(item);
      } else {
        rows.put(item, new ArrayList<>());
      }
      leadOf.put(item.id(), follows ? lead : item);
    }
    return rows;
  }

  /** A name without the words it shares with the one before it: "pain" of "Flexion: pain". */
  static String shortName(String lead, String follower) {
    int shared = 0;
    int most = Math.min(lead.length(), follower.length());
    while (shared < most && lead.charAt(shared) == follower.charAt(shared)) {
      shared++;
    }
    while (shared > 0 && inWord(lead, shared) | inWord(follower, shared)) {
      shared--;
    }
    String bare = follower.substring(shared).replaceFirst("^[\\s:,;-]+", "");
    return bare.isEmpty() ? follower : bare;
  }

  /** Whether a cut at this place would go through a word. */
  private static boolean inWord(String text, int at) {
    return at < text.length()
        && Character.isLetterOrDigit(text.charAt(at))
        && Character.isLetterOrDigit(text.charAt(at - 1));
  }
}
