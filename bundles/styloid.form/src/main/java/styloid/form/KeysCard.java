package styloid.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import styloid.model.ItemKind;
import styloid.model.Side;
import styloid.spi.Texts;

/** Keys with what they do: those of a place of the form, or others that are named. */
public final class KeysCard extends GridPane {

  /** The keys named by their codes; their words are {@code keys.<code>} of the scope. */
  public KeysCard(Texts texts, String scope, List<String> codes) {
    getStyleClass().add("keys-card");
    setHgap(18);
    setVgap(6);
    ColumnConstraints words = new ColumnConstraints();
    words.setHgrow(Priority.ALWAYS);
    getColumnConstraints().addAll(new ColumnConstraints(), words);
    for (String code : codes) {
      add(texts, scope, code);
    }
  }

  /** The keys that do something at a place; all keys of the form where there is none. */
  static KeysCard of(Texts texts, Optional<Field> at) {
    ArrayList<String> codes = new ArrayList<>();
    if (at.filter(field -> !chooses(field)).isEmpty()) {
      codes.add("choose");
    }
    for (Command command : Command.values()) {
      if (at.filter(field -> !does(command, field)).isEmpty()) {
        codes.add(command.code());
      }
    }
    return new KeysCard(texts, FormView.SCOPE, codes);
  }

  private static boolean chooses(Field field) {
    return field instanceof ChoiceField || field.entering.mode() == Entering.Mode.REASON;
  }

  private static boolean does(Command command, Field field) {
    return switch (command) {
      case OTHER_SIDE -> field.key().side() != Side.UNSIDED;
      case UNIT -> field.stop.item().kind() instanceof ItemKind.Number n && n.units().size() > 1;
      case TIMER -> HoldControl.of(field).isPresent();
      case OVERRIDE -> field.withheld();
      default -> true;
    };
  }

  private void add(Texts texts, String scope, String code) {
    Label keys = new Label(texts.label(scope, "keys." + code + ".key"));
    keys.getStyleClass().add("key-cap");
    keys.setMinWidth(USE_PREF_SIZE);
    Label what = new Label(texts.label(scope, "keys." + code));
    what.setWrapText(true);
    addRow(getRowCount(), keys, what);
  }
}
