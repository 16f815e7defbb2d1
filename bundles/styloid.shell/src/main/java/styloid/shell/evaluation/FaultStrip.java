package styloid.shell.evaluation;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import styloid.session.ModuleFault;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** What modules could not do, a card each, with a way to try again. */
final class FaultStrip extends VBox {
  private final Texts texts;
  private final Consumer<ModuleFault> again;
  private List<ModuleFault> shown = List.of();

  FaultStrip(Texts texts, Consumer<ModuleFault> again) {
    super(6);
    this.texts = texts;
    this.again = again;
    getStyleClass().add("faults");
    Make.shown(this, false);
  }

  void show(List<ModuleFault> faults) {
    if (faults.equals(shown)) {
      return;
    }
    shown = faults;
    getChildren().clear();
    faults.forEach(fault -> getChildren().add(card(fault)));
    Make.shown(this, !faults.isEmpty());
  }

  private HBox card(ModuleFault fault) {
    String name = texts.find(fault.module(), "test.title").orElse(fault.module());
    boolean ofFile = fault.stage().equals(ModuleFault.FILE);
    String key = ofFile ? "fault.file" : fault.muted() ? "fault.muted" : "fault";
    String words = Shell.say(texts, key, name, fault.reason(), fault.code());
    var text = Make.text(words);
    HBox.setHgrow(text, Priority.ALWAYS);
    if (ofFile) {
      return styled(new HBox(12, text));
    }
    var button = Make.button(Shell.say(texts, "fault.again"), () -> again.accept(fault));
    button.setAccessibleText(Shell.say(texts, "fault.again") + ": " + name);
    return styled(new HBox(12, text, Make.gap(), button));
  }

  private static HBox styled(HBox card) {
    card.setAlignment(Pos.CENTER_LEFT);
    card.getStyleClass().add("fault-card");
    return card;
  }
}
