package styloid.shell.evaluation;

import java.util.ArrayList;
import java.util.List;
import styloid.form.FormState;
import styloid.model.Choice;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.spi.Group;
import styloid.spi.TestDefinition;

/** The places of a test still empty that may be recorded with the answer for the rest. */
record RestAs(Choice answer, List<ItemKey> keys) {

  /** Asked, not recorded, not withheld, with this answer in their list. */
  static RestAs of(FormState state, String code) {
    TestDefinition test = state.test();
    ArrayList<ItemKey> keys = new ArrayList<>();
    for (Group group : test.groups()) {
      for (Item item : group.items()) {
        if (item.kind() instanceof ItemKind.Choices choices && choices.codes().contains(code)) {
          item.keys(test.id()).stream()
              .filter(key -> open(state, group, item, key))
              .forEach(keys::add);
        }
      }
    }
    return new RestAs(new Choice(code), List.copyOf(keys));
  }

  private static boolean open(FormState state, Group group, Item item, ItemKey key) {
    var snapshot = state.context().snapshot();
    return snapshot.value(key).isEmpty()
        && !state.drafts().containsKey(key)
        && item.askWhen().holds(snapshot, key)
        && state.withheldBy(group, item, key).isEmpty();
  }
}
