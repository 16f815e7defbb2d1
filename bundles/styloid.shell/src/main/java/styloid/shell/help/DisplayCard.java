package styloid.shell.help;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import styloid.form.Palette;
import styloid.form.Pedals;
import styloid.model.Codes;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.look.Display;
import styloid.shell.look.Pick;
import styloid.spi.Texts;

/** How the window looks to this user: colours, size, room, language, pedals. Holds at once. */
public final class DisplayCard extends VBox {
  private final Shell shell;
  private final Texts texts;

  public DisplayCard(Shell shell, Texts texts) {
    super(12);
    this.shell = shell;
    this.texts = texts;
    getStyleClass().add("cover-card");
    setMaxSize(620, USE_PREF_SIZE);
    Display now = shell.displays().now();
    Button close = Make.button(say("display.close"), shell.screens()::uncover, "primary");
    getChildren()
        .addAll(
            Make.text(say("display.title"), "title"),
            Make.text(say("display.words"), "quiet"),
            pick(
                "palette",
                List.of(Palette.values()),
                now.palette(),
                p -> say("display.palette." + Codes.of(p)),
                p -> set(shell.displays().now().with(p))),
            pick(
                "scale",
                Display.SCALES,
                now.scale(),
                percent -> say("display.percent", percent),
                percent -> set(shell.displays().now().withScale(percent))),
            pick(
                "density",
                List.of(Display.Density.values()),
                now.density(),
                d -> say("display.density." + d.code()),
                d -> set(shell.displays().now().with(d))),
            new FlowPane(14, 10, language(now), pedal("next", now), pedal("timer", now)),
            Make.text(say("display.pedal-words"), "fine-print"),
            close);
    Platform.runLater(close::requestFocus);
  }

  private void set(Display display) {
    shell.displays().set(display);
    shell.screens().lookAnew();
  }

  private <T> Node pick(
      String key,
      List<T> values,
      T now,
      java.util.function.Function<T, String> words,
      Consumer<T> chosen) {
    String name = say("display." + key);
    return new VBox(
        4, Make.text(name, "field-label"), new Pick<>(name, values, now, words, chosen));
  }

  private Node language(Display now) {
    ArrayList<Optional<String>> offered = new ArrayList<>(List.of(Optional.empty()));
    Shell.languages().forEach(code -> offered.add(Optional.of(code)));
    return box(
        "language",
        offered,
        now.language(),
        code -> code.map(DisplayCard::named).orElse(say("display.language.system")),
        code -> set(shell.displays().now().withLanguage(code)));
  }

  /** A language in its own words, so that who speaks it finds it. */
  private static String named(String code) {
    Locale locale = Locale.forLanguageTag(code);
    String name = locale.getDisplayLanguage(locale);
    return name.substring(0, 1).toUpperCase(locale) + name.substring(1);
  }

  private Node pedal(String which, Display display) {
    ArrayList<Optional<KeyCode>> offered = new ArrayList<>(List.of(Optional.empty()));
    Pedals.OFFERED.forEach(code -> offered.add(Optional.of(code)));
    boolean next = which.equals("next");
    return box(
        "pedal-" + which,
        offered,
        next ? display.pedals().next() : display.pedals().timer(),
        code -> code.map(KeyCode::getName).orElse(say("display.no-pedal")),
        code -> {
          Display now = shell.displays().now();
          Pedals other =
              next ? new Pedals(code, now.pedals().timer()) : new Pedals(now.pedals().next(), code);
          set(now.with(other));
        });
  }

  private <T> Node box(
      String key,
      List<T> values,
      T now,
      java.util.function.Function<T, String> words,
      Consumer<T> chosen) {
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
    box.setValue(now);
    box.setAccessibleText(say("display." + key));
    box.valueProperty().addListener((o, was, is) -> chosen.accept(is));
    Label label = Make.word(say("display." + key), "field-label");
    label.setLabelFor(box);
    return new VBox(4, label, box);
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
