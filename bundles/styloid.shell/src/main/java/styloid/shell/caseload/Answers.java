package styloid.shell.caseload;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;

/** A few answers side by side, of which one, none or several are chosen. */
final class Answers<T> extends FlowPane {
  private final List<T> values;

  Answers(String what, List<T> values, Function<T, String> words, boolean several) {
    super(6, 6);
    this.values = values;
    for (T value : values) {
      ToggleButton button = new ToggleButton(words.apply(value));
      button.setAccessibleText(what + ": " + words.apply(value));
      button.setMinWidth(USE_PREF_SIZE);
      button
          .selectedProperty()
          .addListener(
              (o, was, is) -> {
                if (is && !several) {
                  others(button);
                }
              });
      getChildren().add(button);
    }
  }

  private void others(ToggleButton chosen) {
    buttons().stream().filter(b -> b != chosen).forEach(b -> b.setSelected(false));
  }

  private List<ToggleButton> buttons() {
    return getChildren().stream().map(ToggleButton.class::cast).toList();
  }

  List<T> chosen() {
    return values.stream().filter(v -> buttons().get(values.indexOf(v)).isSelected()).toList();
  }

  Optional<T> one() {
    return chosen().stream().findFirst();
  }

  void choose(T value) {
    buttons().get(values.indexOf(value)).setSelected(true);
  }
}
