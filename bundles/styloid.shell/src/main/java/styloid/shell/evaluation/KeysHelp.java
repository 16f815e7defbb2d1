package styloid.shell.evaluation;

import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import styloid.form.KeysCard;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** The card with all keys of form and screen. */
final class KeysHelp extends VBox {
  KeysHelp(Shell shell, Texts texts) {
    super(12);
    getStyleClass().add("cover-card");
    setMaxSize(660, USE_PREF_SIZE);
    Button close = Make.button(Shell.say(texts, "keys.close"), shell.screens()::uncover, "primary");
    getChildren()
        .addAll(
            Make.text(Shell.say(texts, "keys.title"), "title"),
            new KeysCard(texts),
            Make.text(Shell.say(texts, "keys.screen"), "quiet"),
            close);
    Platform.runLater(close::requestFocus);
  }
}
