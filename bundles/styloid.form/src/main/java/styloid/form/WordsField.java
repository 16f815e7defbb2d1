package styloid.form;

import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import styloid.model.ItemKind;
import styloid.model.Value;

/** Free text, on one line when it is short by its limit. */
final class WordsField extends Field {
  private static final int ONE_LINE = 120;
  private final TextInputControl text;
  private boolean drawing;

  WordsField(Stop stop, ItemKind.Words kind, Home home, ChoiceField.Room room) {
    super(stop, home, room);
    if (kind.longest() <= ONE_LINE || room != ChoiceField.Room.FLOW) {
      TextField line = new TextField();
      line.setPrefColumnCount(columns(room));
      text = line;
    } else {
      TextArea area = new TextArea();
      area.setWrapText(true);
      area.setPrefRowCount(2);
      area.setPrefColumnCount(24);
      text = area;
    }
    HBox.setHgrow(text, Priority.SOMETIMES);
    text.textProperty().addListener((o, was, is) -> edited(is));
    assemble(text);
  }

  /** A line that has a name beside it grows from little, so that it stays in its half. */
  private static int columns(ChoiceField.Room room) {
    return switch (room) {
      case TIGHT -> 8;
      case NARROW, CLOSED -> 10;
      case LINE, FLOW -> 18;
    };
  }

  private void edited(String typed) {
    if (!drawing) {
      change(e -> e.type(typed));
    }
  }

  @Override
  Node control() {
    return text;
  }

  @Override
  boolean takesWords() {
    return true;
  }

  @Override
  void drawControl(Optional<Value> value) {
    String shown =
        entering.dirty()
            ? entering.text()
            : value.map(v -> home.texts().value(key(), v)).orElse("");
    if (!text.getText().equals(shown)) {
      drawing = true;
      text.setText(shown);
      drawing = false;
    }
  }
}
