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

  /** A follower's name without the name of its lead: "pain" of "Elbow flexion: pain". */
  static String shortName(String lead, String follower) {
    String rest = follower.startsWith(lead) ? follower.substring(lead.length()) : follower;
    String bare = rest.replaceFirst("^[\\s:,;-]+", "");
    return bare.isEmpty() ? follower : bare;
  }
}
