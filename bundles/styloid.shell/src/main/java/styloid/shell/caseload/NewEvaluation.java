package styloid.shell.caseload;

import java.time.LocalDate;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import styloid.model.Evaluation;
import styloid.model.Patient;
import styloid.model.Therapist;
import styloid.model.TherapistId;
import styloid.shell.frame.CapacityChoice;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.shell.frame.WhoCard;
import styloid.spi.Texts;

/** Asks for therapist, as what they work, and date, then begins an evaluation. */
final class NewEvaluation extends VBox {
  private final Shell shell;
  private final Texts texts;
  private final Patient patient;
  private final TextField therapist = new TextField();
  private final TextField date = new TextField();
  private final CapacityChoice capacity;
  private Optional<String> fullName = Optional.empty();
  private final Label problem = Make.text("", "problem");

  NewEvaluation(Shell shell, Texts texts, Patient patient, List<Evaluation> before) {
    super(12);
    this.shell = shell;
    this.texts = texts;
    this.patient = patient;
    getStyleClass().add("cover-card");
    setMaxSize(520, javafx.scene.layout.Region.USE_PREF_SIZE);
    this.capacity = new CapacityChoice(texts);
    Map<TherapistId, Therapist> people = new LinkedHashMap<>();
    shell.therapists().known().forEach(t -> people.put(t.id(), t));
    before.forEach(e -> people.putIfAbsent(e.therapist(), Therapist.unsaid(e.therapist())));
    // The name may be right; as what they work, everybody says for themselves.
    people.keySet().stream().findFirst().ifPresent(id -> therapist.setText(id.value()));
    date.setText(shell.today().toString());
    Make.shown(problem, false);
    HBox actions =
        new HBox(
            10,
            Make.button(say("begin.go"), this::go, "primary"),
            Make.button(say("cancel"), shell.screens()::uncover));
    actions.setAlignment(Pos.CENTER_LEFT);
    getChildren()
        .addAll(
            Make.text(say("begin.title", patient.name()), "title"),
            labelled("begin.therapist", therapist),
            choices(people.values()),
            capacity,
            labelled("begin.date", date),
            problem,
            actions);
    therapist.setOnAction(e -> go());
    therapist.textProperty().addListener((o, was, is) -> fullName = Optional.empty());
    date.setOnAction(e -> go());
    focusedProperty().addListener((o, was, is) -> therapist.requestFocus());
  }

  private Node labelled(String key, TextField field) {
    Label label = Make.text(say(key), "field-label");
    label.setLabelFor(field);
    field.setAccessibleText(say(key));
    return new VBox(4, label, field);
  }

  private Node choices(Collection<Therapist> people) {
    FlowPane pane = new FlowPane(6, 6);
    people.stream()
        .limit(6)
        .forEach(
            who ->
                pane.getChildren()
                    .add(Make.button(WhoCard.words(who, texts), () -> fill(who), "quiet-button")));
    Make.shown(pane, !people.isEmpty());
    return pane;
  }

  private void fill(Therapist who) {
    therapist.setText(who.id().value());
    capacity.choose(who.capacity());
    fullName = who.name();
  }

  private void go() {
    Optional<LocalDate> day = PatientInput.date(date.getText());
    String name = therapist.getText().strip();
    if (name.isEmpty() || name.length() > 200) {
      refuse("begin.no-therapist", therapist);
    } else if (day.isEmpty()) {
      refuse("problem.date", date);
    } else if (day.get().isAfter(shell.today())) {
      refuse("begin.future", date);
    } else {
      begin(day.get(), new Therapist(new TherapistId(name), fullName, capacity.chosen()));
    }
  }

  private void refuse(String key, TextField field) {
    problem.setText(say(key));
    Make.shown(problem, true);
    field.requestFocus();
    field.selectAll();
  }

  private void begin(LocalDate day, Therapist by) {
    setDisable(true);
    shell
        .work()
        .run(
            () -> {
              shell.therapists().used(by);
              shell.session().workAs(by);
              return shell.session().begin(patient.id(), day, by.id());
            },
            open -> shell.screens().evaluation(),
            shell.screens()::problem);
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
