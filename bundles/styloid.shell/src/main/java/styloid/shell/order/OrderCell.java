package styloid.shell.order;

import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import styloid.plan.Changes;
import styloid.plan.PlannedStep;
import styloid.shell.frame.Make;

/** A step of the order: its place, what it is, why it stands there, and the position it needs. */
final class OrderCell extends ListCell<PlannedStep> {
  private final OrderWords words;
  private final Label number = Make.word("", "order-number");
  private final Label name = Make.text("", "cell-name");
  private final Label test = Make.text("", "cell-facts");
  private final Label why = Make.text("", "fine-print");
  private final Label position = Make.text("", "order-position");
  private final HBox row;

  OrderCell(OrderWords words) {
    this.words = words;
    test.setMinWidth(70);
    HBox head = new HBox(10, name, test);
    head.setAlignment(Pos.BASELINE_LEFT);
    VBox what = new VBox(1, head, why);
    HBox.setHgrow(what, Priority.ALWAYS);
    number.setMinWidth(28);
    name.setMinWidth(80);
    position.setMinWidth(110);
    position.setPrefWidth(250);
    row = new HBox(8, number, what, position);
    row.setAlignment(Pos.TOP_LEFT);
    setPrefWidth(0);
  }

  @Override
  protected void updateItem(PlannedStep item, boolean empty) {
    super.updateItem(item, empty);
    if (empty || item == null) {
      setGraphic(null);
      setAccessibleText(null);
      return;
    }
    number.setText(Integer.toString(getIndex() + 1));
    name.setText(words.name(item.step()));
    test.setText(words.test(item.step()));
    why.setText(words.reasons(item));
    position.setText(words.position(item.step()));
    position.getStyleClass().remove("order-new-position");
    if (getIndex() == 0 || !item.changes().equals(Changes.NONE)) {
      position.getStyleClass().add("order-new-position");
    }
    setAccessibleText(words.line(getIndex() + 1, item));
    setGraphic(row);
  }
}
