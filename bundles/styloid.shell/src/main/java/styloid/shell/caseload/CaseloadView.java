package styloid.shell.caseload;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import styloid.model.PatientId;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.frame.Spread;
import styloid.spi.Texts;
import styloid.store.CaseloadRow;

/** All patients, found while typing, and the chosen one beside them. */
public final class CaseloadView extends BorderPane {
  /** Codes of the keys of this screen. */
  public static final List<String> KEYS = List.of("search", "choose-patient", "open-visit");

  private static final int MOST = 200;
  private static final double BESIDE = 960;
  private static final double LEAST = 240;
  private static final Duration TYPING = Duration.millis(120);

  private final Shell shell;
  private final Texts texts;
  private final Consumer<Exception> storeFault;
  private final TextField search = new TextField();
  private final ListView<CaseloadRow> list = new ListView<>();
  private final Label count = new Label();
  private final PatientPane patient;
  private final PauseTransition typing = new PauseTransition(TYPING);
  private int asked;

  public CaseloadView(
      Shell shell, Supplier<List<String>> startReport, Consumer<Exception> storeFault) {
    this.shell = shell;
    this.texts = shell.texts();
    this.storeFault = storeFault;
    this.patient = new PatientPane(shell, texts, this::changed);
    getStyleClass().add("caseload");
    setTop(head(startReport));
    VBox left = left();
    patient.setMinHeight(LEAST);
    // In the scene from the start, so that the search can take the focus before any layout.
    arrange(left, BESIDE);
    widthProperty().addListener((o, was, is) -> arrange(left, is.doubleValue()));
  }

  /** Side by side; one over the other where there is little width, as in a large text size. */
  private void arrange(VBox left, double width) {
    boolean beside = width >= BESIDE;
    // What moves to another parent would lose the focus.
    Node focus = getScene() == null ? null : getScene().getFocusOwner();
    if (beside && getLeft() != left) {
      setCenter(null);
      setLeft(left);
      setCenter(patient);
    } else if (!beside && (getCenter() == null || getLeft() == left)) {
      setLeft(null);
      setCenter(new VBox(left, patient));
    }
    if (focus != null && focus.getScene() != null) {
      focus.requestFocus();
    }
  }

  private VBox head(Supplier<List<String>> startReport) {
    Label note = Make.text(shell.note().orElse(""), "note-chip");
    Make.shown(note, shell.note().isPresent());
    FlowPane title = new FlowPane(14, 4, Make.word(say("caseload.title"), "title"), note);
    title.setRowValignment(VPos.CENTER);
    Spread bar =
        new Spread(
            330,
            title,
            Make.button(say("display.title"), shell.screens()::display),
            Make.button(say("caseload.export"), this::export),
            Make.button(say("caseload.new"), this::newPatient, "primary"));
    VBox head = new VBox(8, bar);
    head.getStyleClass().add("screen-head");
    List<String> faults = startReport.get();
    if (!faults.isEmpty()) {
      head.getChildren().add(Make.text(String.join("\n", faults), "fault-strip"));
    }
    return head;
  }

  private VBox left() {
    search.setPromptText(say("caseload.search"));
    search.setAccessibleText(say("caseload.search"));
    search.textProperty().addListener((o, was, is) -> typing.playFromStart());
    search.addEventFilter(KeyEvent.KEY_PRESSED, this::inSearch);
    typing.setOnFinished(e -> find(Optional.empty()));
    list.setCellFactory(v -> new PatientCell(texts));
    list.setPlaceholder(Make.text(say("caseload.none"), "quiet"));
    list.setAccessibleText(say("caseload.list"));
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener((o, was, is) -> patient.show(Optional.ofNullable(is)));
    list.addEventFilter(KeyEvent.KEY_PRESSED, this::inList);
    list.setOnMouseClicked(e -> enterWhenTwice(e.getClickCount()));
    VBox.setVgrow(list, Priority.ALWAYS);
    VBox.setVgrow(patient, Priority.ALWAYS);
    list.setMinHeight(110);
    count.getStyleClass().add("quiet");
    VBox left = new VBox(8, search, list, count);
    left.getStyleClass().add("caseload-left");
    left.setPrefWidth(470);
    return left;
  }

  private void enterWhenTwice(int clicks) {
    if (clicks == 2) {
      patient.enter();
    }
  }

  private void inSearch(KeyEvent event) {
    boolean down = event.getCode() == KeyCode.DOWN || event.getCode() == KeyCode.ENTER;
    if (down && !list.getItems().isEmpty()) {
      event.consume();
      if (list.getSelectionModel().isEmpty()) {
        list.getSelectionModel().select(0);
      }
      list.requestFocus();
    }
  }

  private void inList(KeyEvent event) {
    if (event.getCode() == KeyCode.ENTER) {
      event.consume();
      patient.enter();
    } else if (event.getCode() == KeyCode.UP && list.getSelectionModel().getSelectedIndex() == 0) {
      event.consume();
      search.requestFocus();
    }
  }

  /** Puts the focus where work begins and shows the first page. */
  public void begin() {
    find(Optional.empty());
    Platform.runLater(search::requestFocus);
  }

  private void changed(PatientId id) {
    find(Optional.of(id));
  }

  /** Looks again; an answer to an older question is dropped. */
  private void find(Optional<PatientId> select) {
    int question = ++asked;
    String text = search.getText().strip();
    shell
        .work()
        .run(
            () -> shell.session().caseload(text, MOST),
            rows -> {
              if (question == asked) {
                showRows(rows, select);
              }
            },
            storeFault);
  }

  private void showRows(List<CaseloadRow> rows, Optional<PatientId> select) {
    Optional<PatientId> wanted =
        select.or(
            () ->
                Optional.ofNullable(list.getSelectionModel().getSelectedItem())
                    .map(row -> row.patient().id()));
    list.getItems().setAll(rows);
    count.setText(
        rows.size() < MOST ? say("caseload.count", rows.size()) : say("caseload.first", MOST));
    rows.stream()
        .filter(row -> wanted.filter(row.patient().id()::equals).isPresent())
        .findFirst()
        .ifPresentOrElse(
            row -> list.getSelectionModel().select(row),
            () -> {
              if (!rows.isEmpty()) {
                list.getSelectionModel().select(0);
              }
            });
  }

  private void export() {
    shell.screens().cover(new CaseloadExport(shell, texts, search.getText().strip()));
  }

  private void newPatient() {
    shell.screens().cover(new PatientForm(shell, texts, Optional.empty(), List.of(), this::saved));
  }

  private void saved(PatientId id) {
    search.clear();
    typing.stop();
    find(Optional.of(id));
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
