package styloid.form;

import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import styloid.spi.Texts;

/** All keys of the form with what they do. */
public final class KeysCard extends GridPane {
  public KeysCard(Texts texts) {
    getStyleClass().add("keys-card");
    setHgap(18);
    setVgap(8);
    int line = 0;
    line = add(texts, "choose", line);
    for (Command command : Command.values()) {
      line = add(texts, command.code(), line);
    }
  }

  private int add(Texts texts, String code, int line) {
    Label keys = new Label(texts.label(FormView.SCOPE, "keys." + code + ".key"));
    keys.getStyleClass().add("key-cap");
    keys.setMinWidth(USE_PREF_SIZE);
    Label what = new Label(texts.label(FormView.SCOPE, "keys." + code));
    what.setWrapText(true);
    add(keys, 0, line);
    add(what, 1, line);
    return line + 1;
  }
}
