package styloid.shell.progress;

import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.session.OpenEvaluation;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** Any measure of the patient against time; the list chooses which. */
public final class ProgressCard {
  private final Texts texts;
  private final ListView<Course> list = new ListView<>();
  private final Chart chart;
  private final VBox words = new VBox(3);
  private final HBox legend = new HBox(18);
  private final Button close;

  private ProgressCard(Texts texts) {
    this.texts = texts;
    this.chart = new Chart(texts);
    this.close = Make.button(say("progress.close"), () -> {}, "primary");
  }

  /**
   * Shows the card over the screen.
   *
   * @param at the place of entry, whose measure is shown first; null for none
   */
  public static void show(Shell shell, OpenEvaluation open, ItemKey at) {
    List<Course> courses = new Courses(open.context()).all(open.tests());
    ProgressCard card = new ProgressCard(shell.texts());
    shell.screens().cover(card.node(shell, courses, at));
    // After the card itself, which is given the focus when it comes up.
    Platform.runLater(card::focus);
  }

  private Node node(Shell shell, List<Course> courses, ItemKey at) {
    close.setOnAction(e -> shell.screens().uncover());
    if (courses.isEmpty()) {
      return Make.card(
          520, Make.text(say("progress.title"), "title"), Make.text(say("progress.empty")), close);
    }
    list.getItems().setAll(courses);
    list.setCellFactory(view -> new Cell());
    list.setAccessibleText(say("progress.list"));
    list.setFixedCellSize(50);
    list.setMinWidth(290);
    list.setPrefSize(290, 520);
    list.getSelectionModel().selectedItemProperty().addListener((o, was, is) -> choose(is));
    chart.setPrefSize(700, 330);
    legend.setAlignment(Pos.CENTER_LEFT);
    ScrollPane said = new ScrollPane(words);
    said.setFitToWidth(true);
    said.setFocusTraversable(false);
    said.setPrefHeight(150);
    VBox shown = new VBox(8, legend, chart, said);
    VBox.setVgrow(chart, Priority.ALWAYS);
    HBox.setHgrow(shown, Priority.ALWAYS);
    HBox foot = new HBox(10, Make.text(say("progress.keys"), "hint"), Make.gap(), close);
    foot.setAlignment(Pos.CENTER_LEFT);
    VBox card =
        Make.card(1080, Make.text(say("progress.title"), "title"), new HBox(16, list, shown), foot);
    card.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.F3) {
            event.consume();
            shell.screens().uncover();
          }
        });
    start(courses, at);
    return card;
  }

  private void start(List<Course> courses, ItemKey at) {
    int first = 0;
    boolean found = false;
    for (int i = courses.size() - 1; i >= 0 && at != null; i--) {
      boolean nearer = courses.get(i).test().equals(at.test()) && !found;
      found |= courses.get(i).isOf(at);
      first = nearer || courses.get(i).isOf(at) ? i : first;
    }
    list.getSelectionModel().select(first);
  }

  private void focus() {
    if (list.getItems().isEmpty()) {
      close.requestFocus();
    } else {
      list.applyCss();
      list.layout();
      list.scrollTo(list.getSelectionModel().getSelectedIndex());
      list.requestFocus();
    }
  }

  private void choose(Course course) {
    if (course == null) {
      return;
    }
    chart.show(course);
    CourseWords said = new CourseWords(course, texts);
    legend.getChildren().setAll(Make.text(said.name(), "result-value"));
    for (Side side : course.sides()) {
      Pane sample = new Pane(Strokes.line(side, 0, 9, 40, 9), Strokes.mark(side, 20, 9, 5));
      sample.setMinSize(40, 18);
      sample.setMaxSize(40, 18);
      HBox one =
          new HBox(8, sample, Make.word(side == Side.UNSIDED ? said.name() : said.side(side)));
      one.setAlignment(Pos.CENTER_LEFT);
      legend.getChildren().add(one);
    }
    words.getChildren().clear();
    course.visits().forEach(v -> words.getChildren().add(Make.text(said.visit(v), "topic-text")));
    said.error().forEach(line -> words.getChildren().add(Make.text(line, "quiet")));
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }

  /** A measure by its name and how many visits have it. */
  private final class Cell extends ListCell<Course> {
    @Override
    protected void updateItem(Course course, boolean empty) {
      super.updateItem(course, empty);
      boolean none = empty || course == null;
      setText(
          none
              ? ""
              : say(
                  "progress.choice",
                  new CourseWords(course, texts).name(),
                  Math.toIntExact(course.measured())));
      setWrapText(true);
      setPrefWidth(260);
    }
  }
}
