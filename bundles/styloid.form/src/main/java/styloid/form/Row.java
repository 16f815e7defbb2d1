package styloid.form;

import java.util.List;
import javafx.scene.Node;
import styloid.model.Item;
import styloid.model.ItemKey;

/** Fields drawn together with the nodes that come and go with them. */
record Row(List<Field> fields, List<Node> nodes) {

  /** Shows the row when anything in it is asked, recorded or under way. */
  void update() {
    boolean shown = fields.stream().anyMatch(Row::needed);
    boolean stale = shown && fields.stream().noneMatch(Row::asked);
    for (Node node : nodes) {
      node.setVisible(shown);
      node.setManaged(shown);
      node.getStyleClass().remove("not-asked");
      if (stale) {
        node.getStyleClass().add("not-asked");
      }
    }
  }

  boolean folded() {
    return fields.stream().noneMatch(Row::needed);
  }

  private static boolean asked(Field field) {
    return field.home.state().asked(field.stop.item(), field.key());
  }

  private static boolean needed(Field field) {
    return field.entering.dirty() || needed(field.home.state(), field.stop.item(), field.key());
  }

  /** Whether a place has something to show: asked now, recorded, or text under way. */
  static boolean needed(FormState state, Item item, ItemKey key) {
    return state.asked(item, key)
        || state.value(key).isPresent()
        || state.drafts().containsKey(key);
  }
}
