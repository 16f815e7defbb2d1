package styloid.form;

import java.util.List;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import styloid.model.Absence;
import styloid.model.InSpite;
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
  private TextField why;

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

  /** Opens the line for the reason; the reason of an entry made before stands in it. */
  void askWhy() {
    if (why == null) {
      why = new TextField(field.overridden().orElse(""));
      why.setAccessibleText(field.name() + ": " + field.say("note.override"));
      why.setOnAction(e -> reasonGiven());
      why.setOnKeyPressed(
          e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
              e.consume();
              closeWhy();
              field.draw();
              field.focusTarget().requestFocus();
            }
          });
      getChildren().add(1, why);
    }
    draw();
    why.requestFocus();
  }

  private void reasonGiven() {
    String reason = why.getText().strip();
    if (reason.isEmpty() || reason.length() > InSpite.LONGEST_REASON) {
      text.setText(withheld() + " " + field.say("note.override-refused", InSpite.LONGEST_REASON));
    } else {
      closeWhy();
      field.open(reason);
    }
  }

  private void closeWhy() {
    getChildren().remove(why);
    why = null;
  }

  void draw() {
    offers.getChildren().clear();
    if (why != null) {
      show("note-withheld", withheld() + " " + field.say("note.override"), List.of());
      offers.getChildren().add(hint("note.override-keys"));
      return;
    }
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
      show("note-withheld", withheld() + reason(), List.of());
      if (!field.home.state().readOnly()) {
        boolean may = field.home.port().mayOverride();
        offers.getChildren().add(hint(may ? "note.withheld" : "note.withheld-unlicensed"));
      }
    } else if (here && !field.precautions().isEmpty()) {
      show("note-withheld", withheld() + reason(), List.copyOf(answers));
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
    String all =
        field.precautions().stream()
            .map(p -> PrecautionText.of(p, texts) + author(p))
            .collect(Collectors.joining("; "));
    return place() + field.say("withheld", all + ".");
  }

  private String author(Precaution precaution) {
    return precaution.setBy().isBlank() ? ", " + field.say("set-by-nobody") : "";
  }

  private String reason() {
    return field.overridden().map(r -> " " + field.say("overridden", r)).orElse("");
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
