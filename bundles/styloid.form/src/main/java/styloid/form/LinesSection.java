package styloid.form;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Group;

/** Many small groups as one table: a line a group, right and left side by side. */
final class LinesSection implements Sections.Section {
  private static final List<Side> COLUMNS = List.of(Side.RIGHT, Side.LEFT);
  private final GridPane grid = new GridPane();
  private final List<Head> heads = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private final Fields fields;
  private final TestId test;
  private int line;

  LinesSection(List<Group> groups, Fields fields) {
    this.fields = fields;
    this.test = fields.home.state().test().id();
    grid.getStyleClass().addAll("card", "lines");
    ColumnConstraints names = new ColumnConstraints(150, 168, 220);
    ColumnConstraints side = new ColumnConstraints(280, 330, Double.MAX_VALUE);
    side.setHgrow(Priority.ALWAYS);
    grid.getColumnConstraints().addAll(names, side, side);
    columnHeads();
    String region = "";
    for (Group group : groups) {
      String here = fields.home.texts().word(group.region());
      if (!here.equals(region)) {
        region = here;
        Label head = new Label(capital(here));
        head.getStyleClass().add("region-head");
        grid.add(head, 0, line++, 3, 1);
      }
      add(group);
    }
  }

  private String capital(String word) {
    return word.substring(0, 1).toUpperCase(fields.home.texts().locale()) + word.substring(1);
  }

  private void columnHeads() {
    for (Side side : COLUMNS) {
      grid.add(SideHead.of(side, fields.home), COLUMNS.indexOf(side) + 1, line);
    }
    line++;
  }

  private void add(Group group) {
    Head head = new Head(group, fields.home, false);
    heads.add(head);
    grid.add(head, 0, line);
    VBox notes = new VBox();
    for (Side side : COLUMNS) {
      VBox cell = new VBox(4);
      cell.getStyleClass().add("side-cell");
      HBox first = new HBox(10);
      first.setAlignment(Pos.CENTER_LEFT);
      first.getChildren().add(SideHead.word(side, fields.home));
      cell.getChildren().add(first);
      for (Item item : group.items()) {
        if (item.sides().contains(side)) {
          place(group, item, side, first, cell, notes);
        }
      }
      grid.add(cell, COLUMNS.indexOf(side) + 1, line);
    }
    line++;
    grid.add(notes, 1, line++, 2, 1);
  }

  private void place(Group group, Item item, Side side, HBox first, VBox cell, VBox notes) {
    ItemKey key = item.keys(test, side).get(0);
    boolean inLine = Sections.always(item);
    boolean leads = item.equals(group.items().get(0));
    Field field =
        fields.make(group, item, key, inLine ? ChoiceField.Room.LINE : ChoiceField.Room.FLOW);
    notes.getChildren().add(field.note);
    if (inLine) {
      if (!leads) {
        first.getChildren().add(label(key));
      }
      first.getChildren().add(field.box);
      return;
    }
    HBox more = new HBox(8, label(key), field.box);
    more.setAlignment(Pos.CENTER_LEFT);
    more.getStyleClass().add("more");
    HBox.setHgrow(field.box, Priority.ALWAYS);
    cell.getChildren().add(more);
    rows.add(new Row(List.of(field), List.of(more)));
  }

  private Label label(ItemKey key) {
    Label label = new Label(fields.home.texts().item(key));
    label.getStyleClass().add("item-name");
    label.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
    return label;
  }

  @Override
  public Node node() {
    return grid;
  }

  @Override
  public void update() {
    heads.forEach(Head::update);
    rows.forEach(Row::update);
  }
}
