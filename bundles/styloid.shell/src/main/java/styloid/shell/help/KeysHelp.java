package styloid.shell.help;

import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import styloid.form.KeysCard;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** The card with the keys of the place one is in. */
public final class KeysHelp extends VBox {
  private static final double COLUMN = 490;

  /** Keys that work on every screen; their words are {@code keys.<code>}. */
  private static final List<String> EVERYWHERE = List.of("display", "larger", "smaller", "help");

  /**
   * The card.
   *
   * @param place keys of the place of entry, where there is one
   * @param screen codes of the keys of the screen
   */
  public KeysHelp(Shell shell, Texts texts, Optional<KeysCard> place, List<String> screen) {
    super(12);
    getStyleClass().add("cover-card");
    setMaxSize(place.isPresent() ? 1060 : 560, USE_PREF_SIZE);
    VBox more =
        new VBox(
            10,
            head(texts, "keys.of-screen"),
            new KeysCard(texts, Shell.SCOPE, screen),
            head(texts, "keys.everywhere"),
            new KeysCard(texts, Shell.SCOPE, EVERYWHERE));
    FlowPane columns = new FlowPane(28, 14);
    columns.setMinWidth(0);
    columns.setRowValignment(javafx.geometry.VPos.TOP);
    columns.setPrefWrapLength(place.isPresent() ? 2 * COLUMN + 28 : COLUMN);
    place.ifPresent(keys -> columns.getChildren().add(column(texts, keys)));
    columns.getChildren().add(more);
    for (Node column : columns.getChildren()) {
      ((Region) column).prefWidthProperty().bind(Bindings.min(COLUMN, columns.widthProperty()));
    }
    Button close = Make.button(Shell.say(texts, "keys.close"), shell.screens()::uncover, "primary");
    Button display = Make.button(Shell.say(texts, "display.title"), shell.screens()::display);
    Button guide = Make.button(Shell.say(texts, "guide.title"), shell.screens()::guide);
    getChildren()
        .addAll(
            Make.text(Shell.say(texts, "keys.title"), "title"),
            columns,
            new FlowPane(10, 8, close, display, guide));
    Platform.runLater(close::requestFocus);
  }

  private static VBox column(Texts texts, KeysCard keys) {
    return new VBox(10, head(texts, "keys.of-place"), keys);
  }

  private static javafx.scene.control.Label head(Texts texts, String key) {
    return Make.text(Shell.say(texts, key), "section-head");
  }
}
