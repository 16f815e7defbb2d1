package styloid.shell.map;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Polygon;
import styloid.form.PrecautionText;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Finding;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Precaution;
import styloid.shell.frame.Banner;
import styloid.shell.frame.Make;
import styloid.shell.frame.ResultText;
import styloid.spi.Texts;

/**
 * Everything about one joint: limits and cautions first, then findings, then test by test what was
 * recorded now and before, what follows, and the way to each step.
 */
final class PartCard extends VBox {
  private final MapWords words;
  private final Consumer<ItemKey> goTo;
  private final Label title = Make.text("", "title");
  private final Label state = Make.text("", "quiet");
  private final VBox body = new VBox(12);
  private final ScrollPane scroll = new ScrollPane(body);
  private PartSheet shown;
  private boolean why;

  /**
   * The card.
   *
   * @param goTo told where entry is to go
   */
  PartCard(MapWords words, Consumer<ItemKey> goTo) {
    super(4);
    this.words = words;
    this.goTo = goTo;
    getStyleClass().add("part-card");
    body.getStyleClass().add("part-body");
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(title, state, scroll);
  }

  void show(PartSheet sheet) {
    if (sheet.equals(shown)) {
      return;
    }
    boolean moved = shown == null || !shown.at().equals(sheet.at());
    shown = sheet;
    draw();
    if (moved) {
      scroll.setVvalue(0);
    }
  }

  /** Shows or hides how the results came about. */
  void toggleWhy() {
    why = !why;
    draw();
  }

  /** Turns one page of what does not fit. */
  void page(boolean forward) {
    double all = body.getHeight() - scroll.getViewportBounds().getHeight();
    if (all > 0) {
      double step = 0.85 * scroll.getViewportBounds().getHeight() / all;
      double to = scroll.getVvalue() + (forward ? step : -step);
      scroll.setVvalue(Math.max(0, Math.min(1, to)));
    }
  }

  private void draw() {
    title.setText(shown.at().words(words.texts()));
    state.setText(words.state(shown.state()));
    body.getChildren().clear();
    limits();
    findings();
    List<PartSheet.Step> toDo = shown.toDo();
    for (PartSheet.Step step : shown.steps()) {
      body.getChildren().add(step(step, toDo.indexOf(step)));
    }
    if (shown.steps().isEmpty()) {
      body.getChildren().add(Make.text(words.say("map.no-test"), "quiet"));
    }
  }

  private void limits() {
    VBox box = new VBox(5);
    for (Precaution limit : shown.limits()) {
      box.getChildren().add(warning(PrecautionText.of(limit, words.texts()), "caution-head"));
    }
    for (PartSheet.TestCaution caution : shown.cautions()) {
      String id = "caution." + caution.id();
      box.getChildren()
          .add(warning(words.texts().label(caution.test().id().value(), id), "caution-text"));
    }
    if (!box.getChildren().isEmpty()) {
      box.getStyleClass().add("cautions");
      body.getChildren().add(box);
    }
  }

  private static HBox warning(String text, String style) {
    return new HBox(8, Banner.warning(), Make.text(text, style));
  }

  private void findings() {
    for (Finding finding : shown.findings()) {
      String side = words.texts().place(finding.side(), Digit.NONE);
      String text = words.texts().text(finding.text());
      body.getChildren().add(Make.text(side.isEmpty() ? text : side + ": " + text, "finding"));
    }
  }

  private VBox step(PartSheet.Step step, int number) {
    String name = words.group(step);
    Button go = Make.button(words.say("map.go"), () -> goTo.accept(step.start()));
    if (number >= 0) {
      go.setText(words.say("map.go-key", number + 1));
    }
    String state = step.putForward() ? words.state(step.state()) : words.say("map.left-out");
    go.setAccessibleText(
        words.say("map.step", words.test(step), name, shown.at().words(words.texts()), state));
    VBox names =
        new VBox(
            Make.text(words.say("map.step-name", words.test(step), name), "group-name"),
            Make.text(state, "group-state"));
    HBox.setHgrow(names, Priority.ALWAYS);
    HBox head = new HBox(10, names, go);
    head.setAlignment(Pos.CENTER_LEFT);
    VBox box = new VBox(6, head);
    box.getStyleClass().add("part-step");
    if (!step.readings().isEmpty()) {
      box.getChildren().add(readings(step));
    }
    for (PartSheet.Line line : step.results()) {
      box.getChildren().add(result(step, line));
    }
    return box;
  }

  private GridPane readings(PartSheet.Step step) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("part-grid");
    for (int share : new int[] {46, 27, 27}) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(share);
      grid.getColumnConstraints().add(column);
    }
    grid.addRow(
        0,
        Make.text(words.say("map.item"), "topic"),
        Make.text(words.say("map.now"), "topic"),
        Make.text(words.say("map.last"), "topic"));
    int row = 1;
    Texts texts = words.texts();
    for (PartSheet.Reading reading : step.readings()) {
      int trials = step.test().item(reading.key().item()).map(Item::trials).orElse(1);
      String now =
          reading
              .now()
              .flatMap(Entry::value)
              .map(value -> texts.value(reading.key(), value))
              .orElse(words.say("map.no-value"));
      String last =
          reading
              .last()
              .map(
                  was ->
                      words.say(
                          "map.last-value",
                          texts.value(reading.key(), was.value()),
                          texts.date(was.date())))
              .orElse(words.say("map.no-value"));
      grid.addRow(
          row++,
          Make.text(words.item(reading.key(), trials), "item-name"),
          marked(Make.text(now, "part-value"), reading.notable()),
          Make.text(last, "item-name"));
    }
    return grid;
  }

  private VBox result(PartSheet.Step step, PartSheet.Line line) {
    Texts texts = words.texts();
    Label name = Make.text(ResultText.name(line.result().key(), texts), "result-name");
    Label value = Make.text(ResultText.value(line.result(), step.test(), texts), "part-value");
    String status = texts.word(line.result().why().status());
    VBox box =
        new VBox(
            1,
            new FlowPane(
                8, 1, name, marked(value, line.notable()), Make.text(status, "fine-print")));
    if (why) {
      ResultText.why(line.result(), texts).forEach(s -> box.getChildren().add(Make.text(s, "why")));
    }
    return box;
  }

  /** What is out of the ordinary has a diamond before it, and the words for who hears it. */
  private HBox marked(Label value, boolean notable) {
    HBox box = new HBox(6, value);
    box.setAlignment(Pos.CENTER_LEFT);
    if (notable) {
      box.getChildren().add(0, diamond());
      value.setAccessibleText(value.getText() + ", " + words.say("map.notable"));
    }
    return box;
  }

  /** The shape of what is out of the ordinary. */
  static Polygon diamond() {
    Polygon diamond = new Polygon(5, 0, 10, 5, 5, 10, 0, 5);
    diamond.getStyleClass().add("notable-mark");
    return diamond;
  }
}
