package styloid.form;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import styloid.spi.Group;

/** One group with its heading, drawn as its layout says. */
final class GroupSection implements Sections.Section {
  private final VBox box = new VBox(8);
  private final Head head;
  private final Label folded = new Label();
  private final List<Row> rows = new ArrayList<>();
  private final Field.Home home;

  GroupSection(Group group, Fields fields) {
    home = fields.home;
    head = new Head(group, home);
    box.getStyleClass().add("card");
    Layouts layouts = new Layouts(group, fields, rows);
    boolean digits = group.layout() == Group.Layout.DIGIT_GRID;
    Node body = digits ? layouts.grid() : layouts.list();
    folded.getStyleClass().add("folded");
    folded.setWrapText(true);
    box.getChildren().addAll(head, body, folded);
  }

  @Override
  public Node node() {
    return box;
  }

  @Override
  public void update() {
    head.update();
    rows.forEach(Row::update);
    String names =
        rows.stream()
            .filter(Row::folded)
            .map(row -> home.texts().item(row.fields().get(0).key()))
            .distinct()
            .collect(Collectors.joining(", "));
    folded.setText(names.isEmpty() ? "" : say(names));
    folded.setVisible(!names.isEmpty());
    folded.setManaged(!names.isEmpty());
  }

  private String say(String names) {
    return home.texts().text(styloid.model.Message.of(FormView.SCOPE, "folded", names));
  }
}
