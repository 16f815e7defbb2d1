package styloid.form;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import styloid.model.Absence;
import styloid.model.Precaution;
import styloid.spi.Texts;

/**
 * The line under a field: a question, why something was refused, the reasons of an absence, or why
 * the place is withheld. Never takes the focus.
 */
final class Note extends VBox {
  private final Field field;
  private final Label text = new Label();
  private final FlowPane offers = new FlowPane(6, 6);
  private List<Label> answers = List.of();

  Note(Field field) {
    super(4);
    this.field = field;
    getStyleClass().add("note");
    text.setWrapText(true);
    text.getStyleClass().add("note-text");
    getChildren().addAll(text, offers);
    hide();
  }

  /** Answers shown here while the field has the focus. */
  void offer(List<Label> chips) {
    answers = chips;
  }

  private void hide() {
    setVisible(false);
    setManaged(false);
  }

  void draw() {
    offers.getChildren().clear();
    switch (field.entering.mode()) {
      case QUESTION -> {
        show("note-question", asked(), List.of());
        offers.getChildren().add(hint("note.question"));
      }
      case REFUSED -> show("note-refused", asked(), List.of(hint("note.refused")));
      case REASON -> show("note-reason", field.say("note.reason"), reasons());
      case TEXT -> plain();
    }
  }

  private String asked() {
    String message = field.entering.message().map(field.home.texts()::text).orElse("");
    return place() + message;
  }

  private String place() {
    String place = field.home.texts().place(field.key().side(), field.key().digit());
    return place.isEmpty() ? "" : place + ": ";
  }

  private void plain() {
    boolean here = field.focused();
    if (here && field.withheld()) {
      show("note-withheld", withheld(), List.of());
      if (!field.home.state().readOnly()) {
        offers.getChildren().add(hint("note.withheld"));
      }
    } else if (here && !answers.isEmpty()) {
      show("note-answers", field.name(), List.copyOf(answers));
    } else if (!field.roomy && field.fieldStatus() == FieldStatus.NOT_SAVED) {
      show("note-refused", field.name() + ": " + field.word(FieldStatus.NOT_SAVED), List.of());
    } else if (!here && field.entering.dirty()) {
      show("note-answers", field.name() + ": " + field.word(FieldStatus.UNFINISHED), List.of());
    } else {
      hide();
    }
  }

  private String withheld() {
    Texts texts = field.home.texts();
    Optional<Precaution> first = field.precautions().stream().findFirst();
    String what = first.map(p -> PrecautionText.of(p, texts)).orElse("");
    return place() + field.say("withheld", what);
  }

  private void show(String style, String words, List<Node> nodes) {
    getStyleClass().setAll("note", style);
    text.setText(words);
    offers.getChildren().setAll(nodes);
    setVisible(true);
    setManaged(true);
  }

  private Label hint(String messageKey) {
    Label hint = new Label(field.say(messageKey));
    hint.getStyleClass().add("hint");
    return hint;
  }

  private List<Node> reasons() {
    java.util.ArrayList<Node> chips = new java.util.ArrayList<>();
    int place = 1;
    for (Absence.Reason reason : Absence.Reason.values()) {
      Label digit = new Label(Integer.toString(place++));
      digit.getStyleClass().add("chip-key");
      Label chip = new Label(field.home.texts().word(reason), digit);
      chip.getStyleClass().add("chip");
      chip.setOnMousePressed(
          e -> {
            // Pressed, not clicked: a click would first move the focus and close these reasons.
            e.consume();
            field.act(entry -> entry.absent(reason));
          });
      chips.add(chip);
    }
    chips.add(hint("note.reason-keys"));
    return chips;
  }
}
