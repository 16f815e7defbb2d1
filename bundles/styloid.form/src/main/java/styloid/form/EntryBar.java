package styloid.form;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.Value;
import styloid.spi.Texts;

/** The line below the form: where one is, how it stands, what was there last time, which keys. */
final class EntryBar extends HBox {
  /** Below this width the names of the place come before the keys, which F1 shows as well. */
  private static final double ROOM_FOR_KEYS = 560;

  private final Texts texts;
  private final Label place = new Label();
  private final Label stands = new Label();
  private final Label rest = new Label();

  EntryBar(Texts texts) {
    super(12);
    this.texts = texts;
    getStyleClass().add("entry-bar");
    setAlignment(Pos.CENTER_LEFT);
    place.getStyleClass().add("entry-place");
    place.setWrapText(true);
    stands.getStyleClass().add("entry-stands");
    stands.setMinWidth(Region.USE_PREF_SIZE);
    Label keys = new Label(texts.label(FormView.SCOPE, "bar.keys"));
    keys.getStyleClass().add("hint");
    keys.setMinWidth(Region.USE_PREF_SIZE);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    rest.getStyleClass().add("entry-rest");
    rest.setMinWidth(Region.USE_PREF_SIZE);
    rest(Optional.empty());
    widthProperty().addListener((o, was, is) -> shown(keys, is.doubleValue() >= ROOM_FOR_KEYS));
    getChildren().addAll(place, stands, gap, rest, keys);
  }

  void show(Field field) {
    place.setText(field.name());
    StringBuilder text = new StringBuilder();
    Optional<Value> value = field.home.state().value(field.key());
    value.ifPresent(v -> text.append(texts.value(field.key(), v)).append(", "));
    text.append(field.word(field.fieldStatus()));
    if (value.isEmpty() && field.stop.item().kind() instanceof ItemKind.Number n) {
      text.append(text.length() == 0 ? "" : ", ").append(range(n));
    }
    stands.setText(text.toString());
  }

  /** How long the hand should still rest; a hint that stops nobody. */
  void rest(Optional<Integer> seconds) {
    rest.setText(
        seconds.map(s -> texts.text(Message.of(FormView.SCOPE, "bar.rest", s))).orElse(""));
    shown(rest, seconds.isPresent());
  }

  private static void shown(Label label, boolean shown) {
    label.setVisible(shown);
    label.setManaged(shown);
  }

  private String range(ItemKind.Number kind) {
    String low = texts.number(kind.likelyMin());
    String high = texts.number(kind.likelyMax()) + " " + kind.unit().sign();
    return texts.text(Message.of(FormView.SCOPE, "bar.expected", low, high.trim()));
  }
}
