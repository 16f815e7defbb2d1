package styloid.shell.caseload;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.Precaution;
import styloid.model.Side;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** A new or known patient's facts and precautions. */
public final class PatientForm extends VBox {
  private static final double COLUMN = 270;
  private static final double GAP = 16;

  private final Shell shell;
  private final Texts texts;
  private final PatientId id;
  private final Consumer<PatientId> saved;
  private final Map<PatientInput.Field, TextField> fields = new EnumMap<>(PatientInput.Field.class);
  private final Map<PatientInput.Field, Label> problems = new EnumMap<>(PatientInput.Field.class);
  private final Answers<Patient.Sex> sex;
  private final Answers<Patient.Dominance> dominance;
  private final Answers<Side> involved;
  private final Precautions precautions;

  /**
   * @param known the patient to be changed; empty for a new one
   */
  public PatientForm(
      Shell shell,
      Texts texts,
      Optional<Patient> known,
      List<Precaution> limits,
      Consumer<PatientId> saved) {
    super(12);
    this.shell = shell;
    this.texts = texts;
    this.id = known.map(Patient::id).orElseGet(() -> new PatientId(UUID.randomUUID()));
    this.saved = saved;
    getStyleClass().add("cover-card");
    setMaxWidth(920);
    setMaxHeight(USE_PREF_SIZE);
    setMinHeight(320);
    sex = answers("patient.sex", List.of(Patient.Sex.values()), false);
    dominance = answers("patient.dominance", List.of(Patient.Dominance.values()), false);
    involved = answers("patient.involved", List.of(Side.RIGHT, Side.LEFT), true);
    precautions = new Precautions(texts);
    limits.forEach(precautions::add);
    VBox parts = new VBox(16, facts(), precautions);
    parts.setPadding(new Insets(4));
    ScrollPane scroll = new ScrollPane(parts);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    HBox actions =
        new HBox(
            10,
            Make.button(say("patient.save"), this::save, "primary"),
            Make.button(say("cancel"), shell.screens()::uncover));
    actions.setAlignment(Pos.CENTER_LEFT);
    String title = say(known.isPresent() ? "patient.edit-title" : "patient.new-title");
    getChildren().addAll(Make.text(title, "title"), scroll, actions);
    known.map(PatientInput::of).ifPresent(this::fill);
    focusedProperty()
        .addListener((o, was, is) -> fields.get(PatientInput.Field.RECORD).requestFocus());
  }

  private <T extends Enum<T>> Answers<T> answers(String key, List<T> values, boolean several) {
    return new Answers<>(say(key), values, texts::word, several);
  }

  /** Three in a row; fewer where there is little width. */
  private FlowPane facts() {
    FlowPane facts =
        new FlowPane(
            typed(PatientInput.Field.RECORD, 1),
            typed(PatientInput.Field.NAME, 2),
            typed(PatientInput.Field.BIRTH, 1),
            labelled("patient.sex", sex),
            labelled("patient.dominance", dominance),
            labelled("patient.involved", involved),
            typed(PatientInput.Field.DIAGNOSIS, 2),
            typed(PatientInput.Field.ONSET, 1),
            typed(PatientInput.Field.SURGERY, 1),
            typed(PatientInput.Field.HEIGHT, 1));
    facts.getStyleClass().add("facts");
    facts.setPrefWrapLength(3 * COLUMN + 2 * GAP);
    facts.setRowValignment(VPos.TOP);
    facts.setMinWidth(0);
    for (Node part : facts.getChildren()) {
      ((Region) part).maxWidthProperty().bind(facts.widthProperty());
    }
    return facts;
  }

  private Node typed(PatientInput.Field which, int columns) {
    String name = say("patient.field." + styloid.model.Codes.of(which));
    TextField field = new TextField();
    field.setAccessibleText(name);
    boolean day =
        which == PatientInput.Field.BIRTH
            || which == PatientInput.Field.ONSET
            || which == PatientInput.Field.SURGERY;
    field.setPromptText(day ? say("date.form") : "");
    Label problem = Make.text("", "problem");
    Make.shown(problem, false);
    fields.put(which, field);
    problems.put(which, problem);
    Label label = Make.text(name, "field-label");
    label.setLabelFor(field);
    VBox box = new VBox(4, label, field, problem);
    box.setPrefWidth(columns * COLUMN + (columns - 1) * GAP);
    return box;
  }

  private Node labelled(String key, Node answers) {
    VBox box = new VBox(4, Make.text(say(key), "field-label"), answers);
    box.setPrefWidth(COLUMN);
    return box;
  }

  private void fill(PatientInput input) {
    input.texts().forEach((field, text) -> fields.get(field).setText(text));
    input.sex().ifPresent(sex::choose);
    input.dominance().ifPresent(dominance::choose);
    input.involved().forEach(involved::choose);
  }

  private PatientInput input() {
    EnumMap<PatientInput.Field, String> typed = new EnumMap<>(PatientInput.Field.class);
    fields.forEach((field, box) -> typed.put(field, box.getText()));
    return new PatientInput(typed, sex.one(), dominance.one(), Set.copyOf(involved.chosen()));
  }

  private void save() {
    PatientInput input = input();
    Map<PatientInput.Field, String> wrong = input.problems(shell.today());
    problems.forEach(
        (field, label) -> {
          label.setText(wrong.containsKey(field) ? say(wrong.get(field)) : "");
          Make.shown(label, wrong.containsKey(field));
        });
    Optional<List<Precaution>> limits = precautions.read();
    if (!wrong.isEmpty()) {
      fields.get(wrong.keySet().iterator().next()).requestFocus();
    } else if (limits.isPresent()) {
      store(input.patient(id), limits.get());
    }
  }

  private void store(Patient patient, List<Precaution> limits) {
    setDisable(true);
    shell
        .work()
        .run(
            () -> {
              shell.session().savePatient(patient, limits);
              return patient.id();
            },
            stored -> {
              shell.screens().uncover();
              saved.accept(stored);
            },
            why -> {
              setDisable(false);
              Label problem = problems.get(PatientInput.Field.RECORD);
              problem.setText(String.valueOf(why.getMessage()));
              Make.shown(problem, true);
            });
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
