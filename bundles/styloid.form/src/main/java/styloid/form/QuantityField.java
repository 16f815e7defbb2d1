package styloid.form;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import styloid.model.ItemKind;
import styloid.model.Quantity;
import styloid.model.Unit;
import styloid.model.Value;

/** A number as typed, with the unit a bare number is taken in beside it. */
final class QuantityField extends Field {
  private final TextField text = new TextField();
  private final Label sign = new Label();
  private final ItemKind.Number kind;
  private Optional<Unit> chosen = Optional.empty();
  private boolean drawing;

  QuantityField(Stop stop, ItemKind.Number kind, Home home, ChoiceField.Room room) {
    super(stop, home, room);
    this.kind = kind;
    text.getStyleClass().add("number");
    text.setPrefColumnCount(room == ChoiceField.Room.NARROW ? 4 : roomy ? 5 : 3);
    text.textProperty().addListener((o, was, is) -> edited(is));
    sign.getStyleClass().add("unit");
    if (kind.units().size() > 1) {
      sign.getStyleClass().add("unit-choice");
      sign.setOnMouseClicked(e -> nextUnit());
    }
    boolean signless = kind.units().size() == 1 && kind.unit().sign().isEmpty();
    assemble(signless ? new Node[] {text} : new Node[] {text, sign});
  }

  private void edited(String typed) {
    if (!drawing) {
      change(e -> e.type(typed));
    }
  }

  @Override
  void unitElsewhere() {
    if (kind.units().size() == 1) {
      box.getChildren().remove(sign);
    }
  }

  @Override
  Node control() {
    return text;
  }

  @Override
  Unit unit() {
    return chosen.orElseGet(() -> home.state().unitFor(key(), kind));
  }

  @Override
  void nextUnit() {
    List<Unit> units = kind.units();
    Unit shown = recorded().map(Quantity::unit).orElseGet(this::unit);
    chosen = Optional.of(units.get((units.indexOf(shown) + 1) % units.size()));
    // a recorded reading keeps its unit: under another one it is a new reading, still to be kept
    recorded().ifPresent(q -> entering.type(home.texts().number(q.amount())));
    draw();
  }

  /** The reading on record, while no text is under way. */
  private Optional<Quantity> recorded() {
    return home.state()
        .value(key())
        .filter(v -> !entering.dirty() && v instanceof Quantity)
        .map(Quantity.class::cast);
  }

  @Override
  void drawControl(Optional<Value> value) {
    String shown =
        entering.dirty()
            ? entering.text()
            : value
                .map(v -> v instanceof Quantity q ? home.texts().number(q.amount()) : words(v))
                .orElse("");
    if (!text.getText().equals(shown)) {
      drawing = true;
      text.setText(shown);
      if (text.isFocused()) {
        text.selectAll();
      }
      drawing = false;
    }
    sign.setText(recorded().map(Quantity::unit).orElseGet(this::unit).sign());
  }

  private String words(Value value) {
    return home.texts().value(key(), value);
  }
}
