package styloid.shell.evaluation;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import styloid.session.ModuleFault;
import styloid.session.Session;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** What modules could not do, a card each, with a way to try again. */
final class FaultStrip extends VBox {
  private final Texts texts;
  private final Session session;
  private List<ModuleFault> shown = List.of();

  FaultStrip(Texts texts, Session session) {
    super(6);
    this.texts = texts;
    this.session = session;
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
    HBox card = new HBox(12, text, Make.gap());
    if (!fault.muted()) {
      card.getChildren().add(button("fault.aside", name, () -> session.mute(fault)));
    }
    card.getChildren().add(button("fault.again", name, () -> session.tryAgain(fault)));
    return styled(card);
  }

  private Button button(String key, String name, Runnable act) {
    String words = Shell.say(texts, key);
    Button button = Make.button(words, act);
    button.setAccessibleText(words + ": " + name);
    return button;
  }

  private static HBox styled(HBox card) {
    card.setAlignment(Pos.CENTER_LEFT);
    card.getStyleClass().add("fault-card");
    return card;
  }
}
