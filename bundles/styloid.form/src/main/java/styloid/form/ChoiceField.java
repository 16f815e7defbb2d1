package styloid.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import styloid.model.Choice;
import styloid.model.ItemKind;
import styloid.model.Value;

/**
 * Listed answers, each with the key that chooses it. In a tight place only the answer shows, and
 * the list stands in the note while the field has the focus.
 */
final class ChoiceField extends Field {
  /** How much room the answers have. */
  enum Room {
    /** All in one line. */
    LINE,
    /** As many lines as it takes. */
    FLOW,
    /** As many lines as it takes, with no room kept for words beside them. */
    NARROW,
    /** Only the chosen one, with room for a word beside it. */
    CLOSED,
    /** Only the chosen one, as narrow as it goes. */
    TIGHT
  }

  /** Letters of an answer so short that its box may be wider than its words. */
  private static final int SHORT = 2;

  private final ItemKind.Choices kind;
  private final ChoiceKeys keys;
  private final Pane answers;
  private final List<Label> chips = new ArrayList<>();
  private final Label shown = new Label();

  ChoiceField(Stop stop, ItemKind.Choices kind, Home home, Room room) {
    super(stop, home, room);
    this.kind = kind;
    this.keys = ChoiceKeys.of(kind);
    this.answers =
        room == Room.FLOW || room == Room.NARROW ? new Flow() : new HBox(room == Room.LINE ? 3 : 0);
    boolean closed = room == Room.TIGHT || room == Room.CLOSED;
    answers.getStyleClass().addAll("answers", closed ? "closed" : "open");
    answers.getStyleClass().add(room == Room.CLOSED ? "wide" : "narrow");
    answers.setFocusTraversable(true);
    answers.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
    answers.setOnMouseClicked(e -> answers.requestFocus());
    shown.getStyleClass().add("chosen-word");
    shown.setWrapText(true);
    if (closed) {
      answers.getChildren().add(shown);
      note.offer(chips());
    } else {
      answers.getChildren().addAll(chips());
      answers.getChildren().add(shown);
    }
    if (answers instanceof HBox line) {
      line.setAlignment(Pos.CENTER_LEFT);
    }
    assemble(answers);
  }

  /** As wide as one line takes; narrower only where there is no room. */
  private static final class Flow extends FlowPane {
    private double most = Double.MAX_VALUE;

    Flow() {
      super(4, 4);
    }

    @Override
    protected double computePrefWidth(double height) {
      double all = getInsets().getLeft() + getInsets().getRight();
      for (Node chip : getManagedChildren()) {
        all += chip.prefWidth(-1) + getHgap();
      }
      return snapSizeX(Math.min(all, Math.max(most, minWidth(-1))));
    }
  }

  @Override
  void atMost(double width) {
    if (answers instanceof Flow flow && flow.most != width) {
      flow.most = width;
      flow.requestLayout();
    }
  }

  private List<Label> chips() {
    List<String> words = home.texts().choices(key(), stop.item());
    for (int place = 0; place < words.size(); place++) {
      Label digit = new Label(keys.keys().get(place));
      digit.getStyleClass().add("chip-key");
      boolean same = words.get(place).startsWith(keys.keys().get(place));
      Label chip = same ? new Label(words.get(place)) : new Label(words.get(place), digit);
      chip.getStyleClass().add("chip");
      if (words.get(place).length() <= SHORT) {
        chip.getStyleClass().add("short");
      }
      chip.setMinWidth(Region.USE_PREF_SIZE);
      Choice choice = new Choice(kind.codes().get(place));
      chip.setOnMouseClicked(
          e -> {
            e.consume();
            answers.requestFocus();
            if (!home.state().readOnly() && !withheld()) {
              change(entry -> entry.choose(choice));
            }
          });
      chips.add(chip);
    }
    return chips;
  }

  @Override
  Node control() {
    return answers;
  }

  @Override
  void typed(String character) {
    String typed = entering.dirty() ? entering.text() + character : character;
    if (!keys.begins(typed)) {
      typed = character;
    }
    String text = typed;
    Optional<String> code = keys.code(text);
    if (code.isPresent() && !keys.canGrow(text)) {
      act(e -> e.choose(new Choice(code.get())));
    } else {
      change(e -> e.type(text));
      if (!keys.begins(text)) {
        act(e -> e.enter(unit()));
      }
    }
  }

  @Override
  void drawControl(Optional<Value> value) {
    Optional<String> code =
        value.filter(Choice.class::isInstance).map(chosen -> ((Choice) chosen).code());
    boolean inChips = code.filter(kind.codes()::contains).isPresent();
    for (int place = 0; place < chips.size(); place++) {
      Label chip = chips.get(place);
      chip.getStyleClass().remove("chosen");
      if (code.filter(kind.codes().get(place)::equals).isPresent()) {
        chip.getStyleClass().add("chosen");
      }
    }
    boolean closed = answers.getStyleClass().contains("closed");
    String word = value.map(v -> home.texts().value(key(), v)).orElse("");
    shown.setText(entering.dirty() ? entering.text() : inChips && !closed ? "" : word);
    shown.setManaged(closed || !shown.getText().isEmpty());
  }
}
