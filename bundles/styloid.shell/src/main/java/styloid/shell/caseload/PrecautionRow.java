package styloid.shell.caseload;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import styloid.model.Digit;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** One precaution under edit. Side and kind have no default: they must be said. */
final class PrecautionRow extends VBox {
  private final Texts texts;
  private final ComboBox<Precaution.Kind> kind;
  private final ComboBox<Side> side;
  private final ComboBox<Region> region;
  private final ComboBox<Digit> digit;
  private final TextField from = new TextField();
  private final TextField until = new TextField();
  private final TextField setBy = new TextField();
  private final TextField note = new TextField();
  private final Label problem = Make.text("", "problem");

  PrecautionRow(Texts texts, Optional<Precaution> known, Consumer<PrecautionRow> remove) {
    super(6);
    this.texts = texts;
    getStyleClass().add("precaution-row");
    kind = box("precautions.kind", List.of(Precaution.Kind.values()), texts::word);
    side = box("precautions.side", List.of(Side.values()), this::sideWord);
    region = box("precautions.region", List.of(Region.values()), texts::word);
    digit = box("precautions.digit", List.of(Digit.values()), this::digitWord);
    digit.setValue(Digit.NONE);
    setBy.setPrefColumnCount(14);
    note.setPrefColumnCount(18);
    from.setPrefColumnCount(8);
    until.setPrefColumnCount(8);
    Node take = Make.button(say("precautions.remove"), () -> remove.accept(this), "quiet-button");
    FlowPane line = new FlowPane(8, 8);
    line.setPrefWrapLength(820);
    line.setRowValignment(javafx.geometry.VPos.BOTTOM);
    line.getChildren()
        .addAll(
            named("precautions.kind", kind),
            named("precautions.side", side),
            named("precautions.region", region),
            named("precautions.digit", digit),
            named("precautions.from", from),
            named("precautions.until", until),
            named("precautions.set-by", setBy),
            named("precautions.note", note),
            take);
    line.setAlignment(Pos.BOTTOM_LEFT);
    Make.shown(problem, false);
    getChildren().addAll(line, problem);
    known.ifPresent(this::fill);
  }

  void begin() {
    kind.requestFocus();
  }

  private String sideWord(Side which) {
    return which == Side.UNSIDED ? say("precautions.both") : texts.word(which);
  }

  private String digitWord(Digit which) {
    return which == Digit.NONE ? say("precautions.all-digits") : texts.word(which);
  }

  private <T> ComboBox<T> box(String key, List<T> values, Function<T, String> words) {
    ComboBox<T> box = new ComboBox<>();
    box.getItems().addAll(values);
    box.setAccessibleText(say(key));
    box.setConverter(
        new StringConverter<T>() {
          @Override
          public String toString(T value) {
            return value == null ? "" : words.apply(value);
          }

          @Override
          public T fromString(String text) {
            return values.stream()
                .filter(v -> words.apply(v).equals(text))
                .findFirst()
                .orElse(null);
          }
        });
    return box;
  }

  private Node named(String key, Node control) {
    if (control instanceof TextField field) {
      field.setAccessibleText(say(key));
      field.setPromptText(field == from || field == until ? say("date.form") : "");
    }
    return new VBox(3, Make.word(say(key), "field-label"), control);
  }

  private void fill(Precaution known) {
    kind.setValue(known.kind());
    side.setValue(known.side());
    region.setValue(known.region());
    digit.setValue(known.digit());
    from.setText(known.from().map(LocalDate::toString).orElse(""));
    until.setText(known.until().map(LocalDate::toString).orElse(""));
    setBy.setText(known.setBy());
    note.setText(known.note());
  }

  /** The precaution as said; empty, with the reason shown, when something is missing. */
  Optional<Precaution> read() {
    Optional<LocalDate> first = PatientInput.date(from.getText());
    Optional<LocalDate> last = PatientInput.date(until.getText());
    boolean wrongDay =
        first.isEmpty() && !from.getText().isBlank()
            || last.isEmpty() && !until.getText().isBlank();
    String wrong = "";
    if (kind.getValue() == null || side.getValue() == null || region.getValue() == null) {
      wrong = say("precautions.incomplete");
    } else if (wrongDay) {
      wrong = say("problem.date");
    } else if (first.isPresent() && last.isPresent() && last.get().isBefore(first.get())) {
      wrong = say("precautions.order");
    } else if (setBy.getText().isBlank()) {
      wrong = say("precautions.no-author");
    }
    problem.setText(wrong);
    Make.shown(problem, !wrong.isEmpty());
    if (!wrong.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Precaution(
            kind.getValue(),
            region.getValue(),
            side.getValue(),
            digit.getValue(),
            first,
            last,
            setBy.getText().strip(),
            note.getText().strip()));
  }

  private String say(String key) {
    return Shell.say(texts, key);
  }
}
