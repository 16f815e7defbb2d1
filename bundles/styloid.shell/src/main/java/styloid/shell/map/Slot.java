package styloid.shell.map;

import java.util.List;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.spi.Group;
import styloid.spi.TestDefinition;

/** An item as far as it is about one part of one limb. */
record Slot(TestDefinition test, Group group, Item item, List<ItemKey> keys) {
  Slot {
    keys = List.copyOf(keys);
  }
}
