package styloid.form;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
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

/**
 * Groups as one table with both limbs side by side: a row an item; what only follows from its
 * answer unfolds under it, on the side it is asked for.
 */
final class TableSection implements Sections.Section {
  private static final List<Side> COLUMNS = List.of(Side.RIGHT, Side.LEFT);
  private static final int KEY_LENGTH = 4;

  /** Characters of answers that fit half the width on one line, and on two. */
  private static final int ONE_LINE = 30;

  private static final int TWO_LINES = 52;

  private static final int NAMES = 170;
  private static final int NAME_WIDTH = 92;
  private static final double BESIDE_ANSWERS = 44 + 66;

  private final GridPane grid = new GridPane();
  private final List<Head> heads = new ArrayList<>();
  private final List<Row> rows = new ArrayList<>();
  private final List<Field> leading = new ArrayList<>();
  private final List<Follower> followers = new ArrayList<>();
  private final Fields fields;
  private final TestId test;
  private int line;

  /** A field made when it is first needed, most never are. */
  private record Follower(
      Group group, Item item, ItemKey key, String name, VBox cell, VBox notes) {}

  TableSection(List<Group> groups, Fields fields) {
    this.fields = fields;
    this.test = fields.home.state().test().id();
    grid.getStyleClass().addAll("card", "table-grid");
    ColumnConstraints names = new ColumnConstraints(120, NAMES, NAMES + 20);
    ColumnConstraints side = new ColumnConstraints(288, 300, Double.MAX_VALUE);
    side.setHgrow(Priority.ALWAYS);
    grid.getColumnConstraints().addAll(names, side, side);
    grid.widthProperty().addListener((o, was, is) -> fit());
    boolean sided = groups.stream().anyMatch(g -> !g.sides().equals(Item.NO_SIDE));
    if (sided) {
      COLUMNS.forEach(s -> grid.add(SideHead.of(s, fields.home), COLUMNS.indexOf(s) + 1, 0));
      line++;
    }
    for (Group group : groups) {
      Head head = new Head(group, fields.home);
      heads.add(head);
      head.getStyleClass().add("table-head");
      grid.add(head, 0, line++, 3, 1);
      Leads.of(group).forEach((lead, follow) -> add(group, lead, follow));
    }
  }

  private void add(Group group, Item lead, List<Item> follow) {
    for (Digit digit : EnumSet.copyOf(lead.digits())) {
      String name = fields.home.texts().label(test.value(), "item." + lead.id());
      Label label = new Label(named(rowName(group, name), digit));
      label.getStyleClass().add("row-name");
      label.setWrapText(true);
      GridPane.setValignment(label, VPos.TOP);
      VBox notes = new VBox();
      ArrayList<Field> made = new ArrayList<>();
      ArrayList<Node> nodes = new ArrayList<>(List.of(label, notes));
      grid.add(label, 0, line);
      for (Side side : EnumSet.copyOf(lead.sides())) {
        VBox cell = cell(group, lead, side, digit, made, notes);
        for (Item item : follow) {
          ItemKey key = new ItemKey(test, item.id(), side, digit, 1);
          String own = fields.home.texts().item(key);
          followers.add(new Follower(group, item, key, Leads.shortName(name, own), cell, notes));
        }
        boolean wide = side == Side.UNSIDED;
        grid.add(cell, wide ? 1 : COLUMNS.indexOf(side) + 1, line, wide ? 2 : 1, 1);
        nodes.add(cell);
      }
      grid.add(notes, 1, line + 1, 2, 1);
      line += 2;
      rows.add(new Row(made, nodes));
    }
  }

  /** "Flexion" under the heading "Elbow". */
  private String rowName(Group group, String item) {
    String heading = fields.home.texts().label(test.value(), "group." + group.id());
    String rest = Leads.shortName(heading, item);
    return rest.substring(0, 1).toUpperCase(fields.home.texts().locale()) + rest.substring(1);
  }

  private String named(String name, Digit digit) {
    return digit == Digit.NONE ? name : name + ", " + fields.home.texts().word(digit);
  }

  private VBox cell(Group group, Item lead, Side side, Digit digit, List<Field> made, VBox notes) {
    HBox values = new HBox(8);
    values.setAlignment(Pos.TOP_LEFT);
    if (side != Side.UNSIDED) {
      values.getChildren().add(SideHead.word(side, fields.home));
    }
    for (int trial = 1; trial <= lead.trials(); trial++) {
      ItemKey key = new ItemKey(test, lead.id(), side, digit, trial);
      Field field = fields.make(group, lead, key, room(lead));
      made.add(field);
      leading.add(field);
      values.getChildren().add(field.box);
      notes.getChildren().add(field.note);
    }
    VBox cell = new VBox(4, values);
    cell.getStyleClass().add("side-cell");
    GridPane.setValignment(cell, VPos.TOP);
    return cell;
  }

  private ChoiceField.Room room(Item item) {
    if (item.trials() > 1) {
      return ChoiceField.Room.TIGHT;
    } else if (!(item.kind() instanceof ItemKind.Choices) || length(item) <= ONE_LINE) {
      return ChoiceField.Room.LINE;
    }
    return length(item) <= TWO_LINES ? ChoiceField.Room.FLOW : ChoiceField.Room.CLOSED;
  }

  /** Room of what follows from an answer, which has a name beside it. */
  private ChoiceField.Room narrowRoom(Item item) {
    boolean list = item.kind() instanceof ItemKind.Choices;
    return list && length(item) > ONE_LINE ? ChoiceField.Room.CLOSED : ChoiceField.Room.NARROW;
  }

  /** Characters of all answers and their keys together. */
  private int length(Item item) {
    List<String> answers = fields.home.texts().choices(item.keys(test).get(0), item);
    return String.join("", answers).length() + KEY_LENGTH * answers.size();
  }

  /** Answers break where their half of the table ends. */
  private void fit() {
    double half = (grid.getWidth() - grid.getInsets().getLeft() * 2 - NAMES) / 2;
    leading.forEach(field -> field.atMost(half - BESIDE_ANSWERS));
  }

  @Override
  public Node node() {
    return grid;
  }

  @Override
  public void update() {
    heads.forEach(Head::update);
    for (Follower follower : List.copyOf(followers)) {
      if (Row.needed(fields.home.state(), follower.item(), follower.key())) {
        followers.remove(follower);
        unfold(follower);
      }
    }
    rows.forEach(Row::update);
  }

  private void unfold(Follower follower) {
    Field field =
        fields.make(follower.group(), follower.item(), follower.key(), narrowRoom(follower.item()));
    Label name = new Label(follower.name());
    name.getStyleClass().add("item-name");
    name.setWrapText(true);
    name.setMinWidth(NAME_WIDTH);
    name.setMaxWidth(NAME_WIDTH);
    HBox more = new HBox(8, SideHead.word(follower.key().side(), fields.home), name, field.box);
    more.setAlignment(Pos.CENTER_LEFT);
    more.getProperties().put(Follower.class, place(follower));
    if (field.takesWords()) {
      HBox.setHgrow(field.box, Priority.ALWAYS);
      HBox.setHgrow(field.control(), Priority.ALWAYS);
    }
    follower.cell().getChildren().add(at(follower), more);
    follower.notes().getChildren().add(field.note);
    rows.add(new Row(List.of(field), List.of(more)));
  }

  /** Followers stand in the order of their group, whichever unfolded first. */
  private int at(Follower follower) {
    List<Node> there = follower.cell().getChildren();
    for (int at = 1; at < there.size(); at++) {
      if (there.get(at).getProperties().get(Follower.class) instanceof Integer place
          && place > place(follower)) {
        return at;
      }
    }
    return there.size();
  }

  private static int place(Follower follower) {
    return follower.group().items().indexOf(follower.item());
  }
}
