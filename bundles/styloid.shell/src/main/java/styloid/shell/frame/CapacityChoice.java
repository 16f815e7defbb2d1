package styloid.shell.frame;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import styloid.model.Capacity;
import styloid.spi.Texts;

/** As what somebody works. Nothing is chosen beforehand, and nothing need be. */
public final class CapacityChoice extends VBox {
  private final ToggleGroup group = new ToggleGroup();
  private final Map<Capacity, RadioButton> buttons = new EnumMap<>(Capacity.class);

  public CapacityChoice(Texts texts) {
    super(4);
    String question = Shell.say(texts, "who.capacity");
    Label label = Make.text(question, "field-label");
    FlowPane line = new FlowPane(14, 6);
    for (Capacity capacity : Capacity.values()) {
      RadioButton button = new RadioButton(words(capacity, texts));
      button.setAccessibleText(question + ": " + button.getText());
      button.setToggleGroup(group);
      buttons.put(capacity, button);
      line.getChildren().add(button);
    }
    getChildren().addAll(label, line, Make.text(Shell.say(texts, "who.unsaid"), "fine-print"));
  }

  static String words(Capacity capacity, Texts texts) {
    return Shell.say(texts, "capacity." + capacity.code());
  }

  public Optional<Capacity> chosen() {
    return buttons.entrySet().stream()
        .filter(b -> b.getValue().isSelected())
        .map(Map.Entry::getKey)
        .findFirst();
  }

  public void choose(Optional<Capacity> capacity) {
    group.selectToggle(capacity.map(buttons::get).orElse(null));
  }
}
