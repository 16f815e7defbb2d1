package styloid.form;

import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.spi.Group;

/** A place entry can stop at. */
record Stop(Group group, Item item, ItemKey key) {}
