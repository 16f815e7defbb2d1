package styloid.form;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Texts;

/** Draws one group as a list, or as a grid of digits. */
final class Layouts {
  private final Group group;
  private final Fields fields;
  private final List<Row> rows;
  private final TestId test;
  private final Texts texts;

  Layouts(Group group, Fields fields, List<Row> rows) {
    this.group = group;
    this.fields = fields;
    this.rows = rows;
    this.test = fields.home.state().test().id();
    this.texts = fields.home.texts();
  }

  /** One block a limb, one row an item; room for long answers. */
  Node list() {
    VBox blocks = new VBox(10);
    for (Side side : fields.home.state().sides(group)) {
      GridPane grid = new GridPane();
      grid.getStyleClass().add("list-grid");
      ColumnConstraints value = new ColumnConstraints();
      value.setHgrow(Priority.ALWAYS);
      grid.getColumnConstraints().addAll(new ColumnConstraints(150, 190, 240), value);
      int line = 0;
      if (side != Side.UNSIDED) {
        grid.add(SideHead.of(side, fields.home), 0, line++, 2, 1);
      }
      for (Item item : group.items()) {
        if (!item.sides().contains(side)) {
          continue;
        }
        for (Digit digit : EnumSet.copyOf(item.digits())) {
          line = listRow(grid, line, item, side, digit);
        }
      }
      blocks.getChildren().add(grid);
    }
    return blocks;
  }

  private int listRow(GridPane grid, int line, Item item, Side side, Digit digit) {
    ArrayList<Field> made = new ArrayList<>();
    FlowPane values = new FlowPane(10, 6);
    VBox notes = new VBox();
    if (side != Side.UNSIDED) {
      values.getChildren().add(SideHead.word(side, fields.home));
    }
    for (ItemKey key : keys(item, side, digit)) {
      add(item, key, ChoiceField.Room.FLOW, made, values.getChildren(), notes);
    }
    Label name = name(item, digit);
    grid.add(name, 0, line);
    // A single text takes the width of the row, so that there is room to write.
    Node cell = values;
    if (made.size() == 1) {
      HBox single = new HBox(10);
      single.setAlignment(Pos.CENTER_LEFT);
      single.getChildren().addAll(List.copyOf(values.getChildren()));
      if (made.get(0).takesWords()) {
        HBox.setHgrow(made.get(0).box, Priority.ALWAYS);
        HBox.setHgrow(made.get(0).control(), Priority.ALWAYS);
      }
      cell = single;
    }
    cell.getStyleClass().add("list-cell");
    grid.add(cell, 1, line);
    grid.add(notes, 1, line + 1);
    rows.add(new Row(made, List.of(name, cell, notes)));
    return line + 2;
  }

  /** One block a limb, digits across. */
  Node grid() {
    FlowPane blocks = new FlowPane(18, 12);
    List<Digit> digits =
        Stream.of(Digit.values())
            .filter(
                d ->
                    d != Digit.NONE && group.items().stream().anyMatch(i -> i.digits().contains(d)))
            .toList();
    for (Side side : fields.home.state().sides(group)) {
      blocks.getChildren().add(block(side, digits));
    }
    return blocks;
  }

  private Node block(Side side, List<Digit> digits) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("digit-grid");
    grid.getColumnConstraints().add(new ColumnConstraints(96, 104, 130));
    if (side != Side.UNSIDED) {
      grid.add(SideHead.of(side, fields.home), 0, 0, digits.size() + 1, 1);
    }
    for (Digit digit : digits) {
      Label head = new Label(texts.place(side, digit).replace(" ", "\n"));
      head.setText(texts.place(side, Digit.NONE) + "\n" + texts.word(digit).split(" ")[0]);
      head.getStyleClass().add("digit-head");
      grid.add(head, digits.indexOf(digit) + 1, 1);
    }
    int line = 2;
    for (Item item : group.items()) {
      for (int trial = 1; trial <= item.trials() && item.sides().contains(side); trial++) {
        gridRow(grid, line, item, side, trial, digits);
        line += 2;
      }
    }
    return grid;
  }

  private void gridRow(
      GridPane grid, int line, Item item, Side side, int trial, List<Digit> digits) {
    ArrayList<Field> made = new ArrayList<>();
    ArrayList<Node> nodes = new ArrayList<>();
    VBox notes = new VBox();
    Label name = name(item, Digit.NONE);
    unit(item).ifPresent(sign -> name.setText(name.getText() + " (" + sign + ")"));
    if (item.trials() > 1) {
      name.setText(name.getText() + " " + trial);
    }
    name.getStyleClass().add("grid-name");
    nodes.add(name);
    nodes.add(notes);
    grid.add(name, 0, line);
    for (Digit digit : EnumSet.copyOf(item.digits())) {
      ItemKey key = new ItemKey(test, item.id(), side, digit, trial);
      HBox cell = new HBox();
      cell.getStyleClass().add("grid-cell");
      Field field = add(item, key, ChoiceField.Room.TIGHT, made, cell.getChildren(), notes);
      field.unitElsewhere();
      grid.add(cell, digit == Digit.NONE ? 1 : digits.indexOf(digit) + 1, line);
      nodes.add(cell);
    }
    notes.setMaxWidth(380);
    grid.add(notes, 0, line + 1, digits.size() + 1, 1);
    rows.add(new Row(made, nodes));
  }

  /** The unit all fields of a row share; it stands once, by the name. */
  private static Optional<String> unit(Item item) {
    return Optional.of(item.kind())
        .filter(k -> k instanceof ItemKind.Number n && n.units().size() == 1)
        .map(k -> ((ItemKind.Number) k).unit().sign())
        .filter(sign -> !sign.isEmpty());
  }

  private List<ItemKey> keys(Item item, Side side, Digit digit) {
    return item.keys(test, side).stream().filter(k -> k.digit() == digit).toList();
  }

  private Field add(
      Item item,
      ItemKey key,
      ChoiceField.Room room,
      List<Field> made,
      List<Node> into,
      VBox notes) {
    Field field = fields.make(group, item, key, room);
    made.add(field);
    into.add(field.box);
    notes.getChildren().add(field.note);
    return field;
  }

  private Label name(Item item, Digit digit) {
    String name = texts.label(test.value(), "item." + item.id());
    Label label = new Label(digit == Digit.NONE ? name : name + ", " + texts.word(digit));
    label.getStyleClass().add("item-name");
    label.setWrapText(true);
    return label;
  }
}
