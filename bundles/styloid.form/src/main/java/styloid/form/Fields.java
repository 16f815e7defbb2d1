package styloid.form;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.spi.Group;

/** Makes the fields of a page and keeps them by key. */
final class Fields {
  final Field.Home home;
  private final Map<ItemKey, Field> byKey = new LinkedHashMap<>();

  Fields(Field.Home home) {
    this.home = home;
  }

  Optional<Field> field(ItemKey key) {
    return Optional.ofNullable(byKey.get(key));
  }

  Iterable<Field> all() {
    return byKey.values();
  }

  /** A field for a key; {@code room} says how a list of answers is shown. */
  Field make(Group group, Item item, ItemKey key, ChoiceField.Room room) {
    Stop stop = new Stop(group, item, key);
    Field field =
        item.kind()
            .match(
                (ItemKind.Number n) -> new QuantityField(stop, n, home, room),
                c -> new ChoiceField(stop, c, home, room),
                w -> new WordsField(stop, w, home, room));
    byKey.put(key, field);
    return field;
  }
}
