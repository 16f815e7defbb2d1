package styloid.shell.look;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;

/** A few answers of which exactly one holds; choosing one takes effect at once. */
public final class Pick<T> extends FlowPane {
  public Pick(String what, List<T> values, T now, Function<T, String> words, Consumer<T> chosen) {
    super(6, 6);
    ToggleGroup group = new ToggleGroup();
    for (T value : values) {
      ToggleButton button = new ToggleButton(words.apply(value));
      button.setAccessibleText(what + ": " + words.apply(value));
      button.setMinWidth(USE_PREF_SIZE);
      button.setToggleGroup(group);
      button.setSelected(value.equals(now));
      button.setUserData(value);
      getChildren().add(button);
    }
    group
        .selectedToggleProperty()
        .addListener(
            (o, was, is) -> {
              if (is == null) {
                was.setSelected(true);
              } else if (was != null && was != is) {
                chosen.accept(values.get(group.getToggles().indexOf(is)));
              }
            });
  }
}
