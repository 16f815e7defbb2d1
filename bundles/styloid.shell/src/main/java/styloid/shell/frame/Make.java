package styloid.shell.frame;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Short ways to make the nodes the screens consist of. */
public final class Make {
  private Make() {}

  /** Text that breaks into lines where it must. */
  public static Label text(String words, String... styles) {
    Label label = new Label(words);
    label.setWrapText(true);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** Text that keeps its width. */
  public static Label word(String words, String... styles) {
    Label label = new Label(words);
    label.setMinWidth(Region.USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }

  public static Button button(String words, Runnable action, String... styles) {
    Button button = new Button(words);
    button.getStyleClass().addAll(styles);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(e -> action.run());
    return button;
  }

  /** Takes whatever room is left in a row. */
  public static Region gap() {
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    return gap;
  }

  public static VBox card(double width, Node... parts) {
    VBox card = new VBox(12, parts);
    card.getStyleClass().add("cover-card");
    card.setMaxWidth(width);
    card.setMaxHeight(Region.USE_PREF_SIZE);
    return card;
  }

  /** Shows or takes away without leaving a hole. */
  public static void shown(Node node, boolean shown) {
    node.setVisible(shown);
    node.setManaged(shown);
  }
}
