package styloid.shell.caseload;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import styloid.model.Evaluation;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.Precaution;
import styloid.session.Session;
import styloid.shell.frame.Banner;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.frame.Spread;
import styloid.spi.Texts;
import styloid.store.CaseloadRow;

/** The chosen patient: banner, diagnosis, evaluations, what can be done. */
final class PatientPane extends VBox {
  private final Shell shell;
  private final Texts texts;
  private final Consumer<PatientId> changed;
  private final Banner banner = new Banner();
  private final Label details = Make.text("", "quiet");
  private final ListView<Evaluation> visits = new ListView<>();
  private final VBox nobody;
  private final VBox somebody;
  private Optional<Patient> patient = Optional.empty();
  private List<Precaution> precautions = List.of();
  private int asked;

  /** What is kept of a patient apart from the facts. */
  private record More(List<Evaluation> evaluations, List<Precaution> precautions) {}

  PatientPane(Shell shell, Texts texts, Consumer<PatientId> changed) {
    this.shell = shell;
    this.texts = texts;
    this.changed = changed;
    getStyleClass().add("patient-pane");
    visits.setCellFactory(v -> new VisitCell());
    visits.setPlaceholder(Make.text(say("patient.no-evaluations"), "quiet"));
    visits.setAccessibleText(say("patient.evaluations"));
    visits.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER) {
            openChosen();
          }
        });
    visits.setOnMouseClicked(
        e -> {
          if (e.getClickCount() == 2) {
            openChosen();
          }
        });
    VBox.setVgrow(visits, Priority.ALWAYS);
    Spread actions =
        new Spread(
            110,
            Make.word(say("patient.evaluations"), "section-head"),
            Make.button(say("patient.edit"), this::edit),
            Make.button(say("patient.open"), this::openChosen),
            Make.button(say("patient.begin"), this::beginEvaluation, "primary"));
    visits.setMinHeight(60);
    details.setMinHeight(USE_PREF_SIZE);
    somebody = new VBox(12, banner, details, actions, visits);
    VBox.setVgrow(somebody, Priority.ALWAYS);
    nobody = new VBox(Make.text(say("patient.nobody"), "quiet"));
    nobody.setAlignment(Pos.CENTER);
    VBox.setVgrow(nobody, Priority.ALWAYS);
    getChildren().addAll(nobody, somebody);
    show(Optional.empty());
  }

  void show(Optional<CaseloadRow> row) {
    Optional<Patient> next = row.map(CaseloadRow::patient);
    Make.shown(nobody, next.isEmpty());
    Make.shown(somebody, next.isPresent());
    boolean same = next.equals(patient);
    patient = next;
    int question = ++asked;
    if (next.isEmpty()) {
      return;
    }
    if (!same) {
      visits.getItems().clear();
      precautions = List.of();
    }
    Session session = shell.session();
    PatientId id = next.get().id();
    shell
        .work()
        .run(
            () -> new More(session.evaluations(id), session.precautions(id)),
            more -> {
              if (question == asked) {
                showMore(more);
              }
            },
            shell.screens()::problem);
  }

  private void showMore(More more) {
    precautions = more.precautions();
    Patient who = patient.orElseThrow();
    banner.show(who, precautions, shell.today(), texts);
    details.setText(details(who));
    Make.shown(details, !details.getText().isEmpty());
    visits.getItems().setAll(more.evaluations());
    visits.getSelectionModel().selectFirst();
  }

  private String details(Patient who) {
    ArrayList<String> parts = new ArrayList<>();
    if (!who.diagnosis().isBlank()) {
      parts.add(who.diagnosis());
    }
    who.onset().ifPresent(day -> parts.add(say("patient.onset", texts.date(day))));
    who.surgery().ifPresent(day -> parts.add(say("patient.surgery", texts.date(day))));
    who.heightCm().ifPresent(cm -> parts.add(say("patient.height", cm)));
    return String.join("   ", parts);
  }

  /** Goes on with this patient: to the list of evaluations, or to a new one when there is none. */
  void enter() {
    if (visits.getItems().isEmpty()) {
      beginEvaluation();
    } else {
      visits.requestFocus();
    }
  }

  private void openChosen() {
    Evaluation chosen = visits.getSelectionModel().getSelectedItem();
    if (chosen != null) {
      setDisable(true);
      shell
          .work()
          .run(
              () -> shell.session().open(chosen.id()),
              open -> shell.screens().evaluation(),
              this::failed);
    }
  }

  private void failed(Exception why) {
    setDisable(false);
    shell.screens().problem(why);
  }

  private void edit() {
    patient.ifPresent(
        who ->
            shell
                .screens()
                .cover(new PatientForm(shell, texts, Optional.of(who), precautions, changed)));
  }

  private void beginEvaluation() {
    patient.ifPresent(
        who -> shell.screens().cover(new NewEvaluation(shell, texts, who, visits.getItems())));
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }

  /** One evaluation: date, therapist, state. */
  private final class VisitCell extends ListCell<Evaluation> {
    @Override
    protected void updateItem(Evaluation item, boolean empty) {
      super.updateItem(item, empty);
      if (empty || item == null) {
        setGraphic(null);
        setAccessibleText(null);
        return;
      }
      HBox row =
          new HBox(
              14,
              Make.word(texts.date(item.date()), "cell-name"),
              Make.word(item.therapist().value(), "cell-facts"),
              Make.gap(),
              Make.word(texts.word(item.state()), "cell-facts"));
      row.setAlignment(Pos.CENTER_LEFT);
      setGraphic(row);
      setAccessibleText(
          String.join(
              ", ", texts.date(item.date()), item.therapist().value(), texts.word(item.state())));
    }
  }
}
