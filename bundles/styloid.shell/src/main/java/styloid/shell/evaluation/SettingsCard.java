package styloid.shell.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import styloid.shell.frame.Make;
import styloid.shell.frame.ResultText;
import styloid.shell.frame.Shell;
import styloid.shell.frame.TimerLengths;
import styloid.spi.Setting;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;
import styloid.spi.Timer;

/** What the results of a test go by, and how long its timers run. Holds at once. */
final class SettingsCard extends VBox {
  private final Shell shell;
  private final Texts texts;

  SettingsCard(Shell shell, Texts texts, Stand stand, TestDefinition test) {
    super(14);
    this.shell = shell;
    this.texts = texts;
    getStyleClass().add("cover-card");
    setMaxSize(560, USE_PREF_SIZE);
    String scope = test.id().value();
    getChildren()
        .add(
            Make.text(
                Shell.say(texts, "settings.title", texts.label(scope, "test.title")), "title"));
    if (!test.settings().isEmpty()) {
      getChildren().add(Make.text(Shell.say(texts, "settings.words"), "quiet"));
    }
    for (Setting setting : test.settings()) {
      getChildren().add(setting(stand, scope, setting));
    }
    timers(test);
    Button close = Make.button(Shell.say(texts, "settings.close"), this::close, "primary");
    getChildren().add(close);
    Platform.runLater(close::requestFocus);
  }

  /** Whether there is anything to set. */
  static boolean isFor(TestDefinition test) {
    return !test.settings().isEmpty() || !test.timers().isEmpty();
  }

  private void close() {
    shell.screens().uncover();
  }

  private Node setting(Stand stand, String scope, Setting setting) {
    var choices = stand.open().context().evaluation().choices();
    return box(
        texts.label(scope, setting.labelKey()),
        setting.codes(),
        setting.in(choices).orElse(null),
        code -> texts.label(scope, setting.labelKey(code)),
        code -> shell.session().choose(setting.key(), code));
  }

  private void timers(TestDefinition test) {
    for (Timer.Kind kind : Timer.Kind.values()) {
      test.timers().stream()
          .filter(timer -> timer.kind() == kind)
          .findFirst()
          .ifPresent(timer -> getChildren().add(length(timer)));
    }
  }

  private Node length(Timer timer) {
    int now = shell.lengths().seconds(timer);
    TreeSet<Integer> offered = new TreeSet<>(TimerLengths.offered(timer.kind()));
    offered.addAll(List.of(now, timer.seconds()));
    Node box =
        box(
            Shell.say(texts, "settings." + timer.kind().code()),
            new ArrayList<>(offered),
            now,
            seconds -> Shell.say(texts, "settings.seconds", seconds),
            seconds -> shell.lengths().set(timer.kind(), seconds));
    String source =
        Shell.say(
            texts, "settings.usual", timer.seconds(), ResultText.source(timer.source(), texts));
    return new VBox(3, box, Make.text(source, "fine-print"));
  }

  private <T> Node box(
      String name, List<T> values, T chosen, Function<T, String> words, Consumer<T> then) {
    ComboBox<T> box = new ComboBox<>();
    box.getItems().setAll(values);
    box.setConverter(
        new StringConverter<>() {
          @Override
          public String toString(T value) {
            return value == null ? "" : words.apply(value);
          }

          @Override
          public T fromString(String text) {
            throw new UnsupportedOperationException("the box is not editable");
          }
        });
    box.setValue(chosen);
    box.setAccessibleText(name);
    box.setMaxWidth(Double.MAX_VALUE);
    box.valueProperty().addListener((o, was, is) -> then.accept(is));
    Label label = Make.text(name, "field-label");
    label.setLabelFor(box);
    return new VBox(4, label, box);
  }
}
