package styloid.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Value;
import styloid.plan.PlanStep;
import styloid.plan.StepId;
import styloid.session.Session;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.store.StoreException;

/** The whole window on the real session and modules, without a display. */
class ShellWindowTest {
  private static final TestId GRADING = new TestId("grading");
  private static final Choice FULL = new Choice("full");
  private static final String WITHHELD = "Left, Wrist flexion: Resistance";

  private Clinic clinic;
  private Patient patient;
  private Stage stage;
  private ShellWindow window;

  @BeforeEach
  void open() throws StoreException {
    clinic = new Clinic();
    patient = clinic.fill();
    Window.start();
    stage = Window.on(Stage::new);
    window = Window.on(() -> window(List.of("styloid.example waits for something")));
  }

  private ShellWindow window(List<String> report) {
    stage.setWidth(1366);
    stage.setHeight(768);
    return new ShellWindow(
        stage,
        Clinic.CLOCK,
        clinic.therapists,
        clinic.lengths,
        clinic.displays,
        Optional.of("all invented"),
        () -> report);
  }

  private void start(Optional<Session> session) {
    Window.run(
        () -> {
          window.open(session);
          stage.show();
        });
  }

  private void openEvaluation() throws StoreException {
    start(Optional.of(clinic.session()));
    clinic.openFirst(patient);
    Window.run(window::evaluation);
    Window.settle();
  }

  @AfterEach
  void close() {
    Window.run(
        () -> {
          window.dispose();
          stage.hide();
        });
  }

  private static void await(String what, BooleanSupplier there) {
    long end = System.nanoTime() + 20_000_000_000L;
    while (!Window.on(there::getAsBoolean)) {
      assertTrue(System.nanoTime() < end, "not there: " + what);
    }
  }

  private List<String> words() {
    ArrayList<String> all = new ArrayList<>();
    collect(stage.getScene().getRoot(), all);
    return all;
  }

  private static void collect(Node node, List<String> into) {
    if (!node.isVisible()) {
      return;
    } else if (node instanceof Labeled labeled && labeled.getText() != null) {
      into.add(labeled.getText());
    } else if (node instanceof TextInputControl text) {
      into.add(String.valueOf(text.getText()));
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, into));
    }
  }

  private void awaitWords(String part) {
    await(part, () -> words().stream().anyMatch(w -> w.contains(part)));
  }

  private void press(String button) {
    await(button, () -> button(button).isPresent());
    Window.run(() -> button(button).orElseThrow().fire());
    Window.settle();
  }

  private Optional<Button> button(String name) {
    return stage.getScene().getRoot().lookupAll(".button").stream()
        .filter(n -> n instanceof Button b && name.equals(b.getText()) && b.isVisible())
        .map(Button.class::cast)
        .findFirst();
  }

  private void fill(String name, String text) {
    Window.run(
        () ->
            stage.getScene().getRoot().lookupAll(".text-field").stream()
                .filter(n -> name.equals(n.getAccessibleText()))
                .map(TextField.class::cast)
                .findFirst()
                .orElseThrow()
                .setText(text));
  }

  private void type(String characters) {
    for (char c : characters.toCharArray()) {
      fire(
          new KeyEvent(
              KeyEvent.KEY_TYPED,
              String.valueOf(c),
              "",
              KeyCode.UNDEFINED,
              false,
              false,
              false,
              false));
    }
  }

  private void key(KeyCode code, boolean control) {
    fire(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, control, false, false));
  }

  private void fire(KeyEvent event) {
    Window.run(() -> Event.fireEvent(stage.getScene().getFocusOwner(), event));
    Window.settle();
  }

  private Optional<Value> value(String item, Side side) {
    ItemKey key = new ItemKey(new TestId("screen"), new ItemId(item), side, Digit.NONE, 1);
    return clinic.session().current().orElseThrow().context().snapshot().value(key);
  }

  @Test
  void caseloadIsFoundWhileTypingAndShowsTheBanner() {
    start(Optional.of(clinic.session()));
    awaitWords("16 found");
    awaitWords("no resistance: left wrist");
    fill("Search name, record number or birth date (year-month-day)", "madeup");
    awaitWords("1 found");
    awaitWords("Flexor tendon repair");
    assertTrue(Window.on(() -> words().contains("all invented")));
    assertTrue(Window.on(() -> words().contains("styloid.example waits for something")));
  }

  @Test
  void aNewPatientIsRefusedWithReasonsThenStored() {
    start(Optional.of(clinic.session()));
    awaitWords("16 found");
    press("New patient");
    press("Save patient");
    awaitWords("Type a record number of 1 to 60 characters.");
    fill("Record number", "00999");
    fill("Name", "Newly Invented");
    fill("Birth date", "1999-09-09");
    press("Save patient");
    awaitWords("17 found");
    awaitWords("Newly Invented");
    press("New evaluation");
    awaitWords("New evaluation of Newly Invented");
    press("Begin evaluation");
    awaitWords("Screen of active motion");
    awaitWords("Mar 2, 2026, A. Therapist, draft");
  }

  @Test
  void theSearchHasTheFocusAtTheStartAndAfterAnEvaluationIsClosed() throws StoreException {
    start(Optional.of(clinic.session()));
    awaitWords("16 found");
    await("focus in the search", () -> searching());
    clinic.openFirst(patient);
    Window.run(window::evaluation);
    Window.settle();
    key(KeyCode.W, true);
    awaitWords("16 found");
    await("focus in the search", () -> searching());
  }

  private boolean searching() {
    return stage.getScene().getFocusOwner() instanceof TextField field
        && field.getPromptText().startsWith("Search");
  }

  @Test
  void whatIsTypedIsRecordedSavedAndThereAfterReopening() throws StoreException {
    openEvaluation();
    awaitWords("Shoulder");
    await("focus", () -> stage.getScene().getFocusOwner() != null);
    Window.settle();
    type("1");
    assertEquals(Optional.of(new Choice("full")), value("shoulder-flexion", Side.RIGHT));
    type("2");
    assertEquals(Optional.of(new Choice("limited")), value("shoulder-flexion", Side.LEFT));
    awaitWords("All entries saved");
    key(KeyCode.Z, true);
    assertEquals(Optional.empty(), value("shoulder-flexion", Side.LEFT));
    key(KeyCode.Y, true);
    press("Close");
    awaitWords("16 found");
    assertTrue(clinic.session().current().isEmpty());
    clinic.openFirst(patient);
    assertEquals(Optional.of(new Choice("limited")), value("shoulder-flexion", Side.LEFT));
  }

  @Test
  void theRestIsRecordedAfterAskingOnce() throws StoreException {
    openEvaluation();
    awaitWords("Rest as full (70)");
    press("Rest as full (70)");
    assertEquals(Optional.empty(), value("shoulder-flexion", Side.LEFT));
    press("Record full for 70");
    await("rest", () -> value("reach-behind-back", Side.LEFT).isPresent());
    assertEquals(Optional.of(new Choice("limited")), value("wrist-flexion", Side.LEFT));
    await("offer gone", () -> words().stream().noneMatch(w -> w.startsWith("Rest as full")));
  }

  @Test
  void aPageJustBuiltTakesTheFocusAtOnce() throws StoreException {
    start(Optional.of(clinic.session()));
    clinic.openFirst(patient);
    Window.run(window::evaluation);
    Window.settle();
    String focus = Window.on(() -> stage.getScene().getFocusOwner().getAccessibleText());
    assertEquals("Right, Shoulder flexion", focus);
  }

  private List<StepId> order() {
    clinic.session().settle();
    return clinic.session().current().orElseThrow().order().orElseThrow().steps().stream()
        .map(PlanStep::id)
        .toList();
  }

  private ListView<?> orderList() {
    return (ListView<?>) stage.getScene().getRoot().lookup(".cover-card .list-view");
  }

  @Test
  void theOrderShowsByKeyOpensAStepAndLeadsToTheNext() throws StoreException {
    openEvaluation();
    await("focus", () -> stage.getScene().getFocusOwner() != null);
    List<StepId> before = order();
    Window.settle();
    key(KeyCode.T, true);
    awaitWords("changes of position");
    await("list", () -> orderList().isFocused());
    StepId thumb =
        before.stream()
            .filter(id -> id.group().equals("thumb-palmar-abduction"))
            .filter(id -> id.test().value().equals("goniometry") && id.side() == Side.LEFT)
            .findFirst()
            .orElseThrow();
    Window.run(() -> orderList().getSelectionModel().select(before.indexOf(thumb)));
    Window.run(
        () -> ((CheckBox) stage.getScene().getRoot().lookup(".cover-card .check-box")).fire());
    key(KeyCode.ENTER, false);
    await("card gone", () -> orderList() == null);
    assertEquals(thumb, order().get(0), "the step chosen is in progress, so it comes first");
    StepId next = order().get(1);
    type("4");
    type("5");
    key(KeyCode.ENTER, false);
    List<StepId> after = order();
    assertEquals(next, after.get(0));
    assertFalse(after.contains(thumb));
    awaitWords("Test order, followed");
  }

  @Test
  void aFullDiskIsSaidAndTriedAgain() throws StoreException {
    openEvaluation();
    awaitWords("Shoulder");
    Window.settle();
    clinic.store.refuse(
        new StoreException(StoreException.Cause.DISK_FULL, "The disk is full.", null));
    type("1");
    awaitWords("Not saved: 1");
    awaitWords("The disk is full.");
    clinic.store.refuse(null);
    press("Try again");
    awaitWords("All entries saved");
    assertEquals(Optional.of(new Choice("full")), value("shoulder-flexion", Side.RIGHT));
  }

  @Test
  void theWindowStaysWhileEntriesAreNotSaved() throws StoreException {
    openEvaluation();
    awaitWords("Shoulder");
    Window.settle();
    clinic.store.refuse(
        new StoreException(StoreException.Cause.DISK_FULL, "The disk is full.", null));
    type("1");
    awaitWords("Not saved: 1");
    Window.run(window::leave);
    awaitWords("The last entries are not saved");
    assertTrue(Window.on(stage::isShowing));
    clinic.store.refuse(null);
    press("Stay");
    awaitWords("Shoulder");
    Window.run(window::leave);
    await("window closed", () -> !stage.isShowing());
    assertEquals(Optional.empty(), clinic.session().current(), "closed only once all is stored");
  }

  @Test
  void aFaultyModuleShowsACardAndTheRestGoesOn() throws StoreException {
    TestDefinition screen = clinic.session().tests().get(0);
    TestDefinition broken =
        new TestDefinition(
            new TestId("broken"),
            "1.0",
            99,
            screen.groups(),
            screen.cautions(),
            screen.testCautions(),
            List.of(),
            Set.of(),
            screen.labels());
    clinic.give(
        "addModule",
        TestModule.class,
        new TestModule() {
          @Override
          public TestDefinition definition() {
            return broken;
          }

          @Override
          public List<Result> results(PatientContext context) {
            throw new IllegalStateException("made to fail");
          }
        });
    clinic.session().settle();
    openEvaluation();
    awaitWords("Entries are safe.");
    type("1");
    assertEquals(Optional.of(new Choice("full")), value("shoulder-flexion", Side.RIGHT));
  }

  @Test
  void exportSaysWhereTheFileLies(@TempDir Path folder) throws Exception {
    openEvaluation();
    awaitWords("Shoulder");
    press("Export");
    Path file = folder.resolve("out.txt");
    fill("File", file.toString());
    press2("Export");
    awaitWords("Written to " + file);
    assertEquals("Imke Invented", Files.readString(file));
  }

  @Test
  void anExportThatFailsSaysWhy(@TempDir Path folder) throws Exception {
    openEvaluation();
    awaitWords("Shoulder");
    press("Export");
    fill("File", folder.resolve("missing").resolve("out.txt").toString());
    press2("Export");
    awaitWords("Nothing was written.");
  }

  /** The button of the card that covers the screen. */
  private void press2(String button) {
    Window.run(
        () ->
            stage.getScene().getRoot().lookupAll(".cover-card .button").stream()
                .filter(n -> n instanceof Button b && button.equals(b.getText()))
                .map(Button.class::cast)
                .findFirst()
                .orElseThrow()
                .fire());
  }

  @Test
  void withoutSessionTheWindowSaysWhatIsWrong() {
    start(Optional.empty());
    awaitWords("A part the window needs did not start");
    assertTrue(Window.on(() -> words().contains("styloid.example waits for something")));
    Window.run(() -> window.use(clinic.session()));
    awaitWords("16 found");
  }

  @Test
  void aStoreThatCannotBeOpenedIsReportedAndTriedAgain() {
    clinic.store.refuse(
        new StoreException(StoreException.Cause.IN_USE, "Another window uses it.", null));
    start(Optional.of(clinic.session()));
    awaitWords("The patient store cannot be used");
    awaitWords("Another window uses it.");
    clinic.store.refuse(null);
    press("Try again");
    awaitWords("16 found");
  }

  private void leafTo(String title) {
    for (int page = 0; page < 24 && !onPage(title); page++) {
      Window.run(
          () ->
              Event.fireEvent(
                  stage.getScene().getFocusOwner(),
                  new KeyEvent(
                      KeyEvent.KEY_PRESSED, "", "", KeyCode.PAGE_DOWN, false, true, false, false)));
      Window.settle();
    }
    assertTrue(onPage(title), title);
  }

  private boolean onPage(String title) {
    return Window.on(
        () -> ((Labeled) stage.getScene().lookup(".page-title")).getText().startsWith(title));
  }

  @SuppressWarnings("unchecked")
  private <T> ComboBox<T> box(String name) {
    return Window.on(
        () ->
            stage.getScene().getRoot().lookupAll(".combo-box").stream()
                .filter(n -> name.equals(n.getAccessibleText()))
                .map(n -> (ComboBox<T>) n)
                .findFirst()
                .orElseThrow());
  }

  @Test
  void aSettingIsChosenForTheEvaluationAndForThoseToCome() throws StoreException {
    openEvaluation();
    awaitWords("Shoulder");
    leafTo("Grip and pinch");
    press("Settings");
    ComboBox<String> norm = box("Norm for grip");
    assertEquals("mathiowetz-1985", Window.on(norm::getValue));
    Window.run(() -> norm.setValue("dodds-2014"));
    clinic.session.settle();
    var evaluation = clinic.session.current().orElseThrow().context().evaluation();
    assertEquals("dodds-2014", evaluation.choices().get("grip.norm"));
    assertEquals("dodds-2014", clinic.store.lastChoices().get("grip.norm"));
    assertEquals(
        "dodds-2014",
        clinic
            .store
            .evaluation(evaluation.id())
            .orElseThrow()
            .evaluation()
            .choices()
            .get("grip.norm"));
  }

  @Test
  void theSchemeChosenDecidesWhatIsStillAskedAndPlanned() throws StoreException {
    openEvaluation();
    TestId grading = new TestId("grading");
    StepId reduced = new StepId(grading, "shoulder-flexion", Side.LEFT, true);
    ItemKey range =
        new ItemKey(grading, new ItemId("shoulder-flexion-range"), Side.LEFT, Digit.NONE, 1);
    clinic.session.record(range, new Choice("more-than-half"), false);
    String asked = "gravity reduced";
    leafTo("Manual grading");
    await("asked", () -> words().contains(asked));
    assertTrue(order().contains(reduced));
    press("Settings");
    ComboBox<String> scheme = box("Grades given");
    Window.run(() -> scheme.setValue("plus-minus"));
    press("Close");
    await("not asked", () -> !words().contains(asked));
    assertFalse(order().contains(reduced));
  }

  @Test
  void onlyALicensedTherapistOpensWhatAPrecautionWithholds() throws StoreException {
    openEvaluation();
    ItemKey hold = new ItemKey(GRADING, new ItemId("wrist-flexion-hold"), Side.LEFT, Digit.NONE, 1);
    clinic.session.record(hold.sibling(new ItemId("wrist-flexion-range")), FULL, false);
    leafTo("Manual grading of strength: wrist");
    Supplier<String> here = () -> stage.getScene().getFocusOwner().getAccessibleText();
    for (int step = 0; step < 40 && !Window.on(here::get).startsWith(WITHHELD); step++) {
      key(KeyCode.ENTER, false);
    }
    assertTrue(Window.on(here::get).startsWith(WITHHELD), Window.on(here::get));
    awaitWords("set by Dr Example");
    awaitWords("Only a licensed therapist may record it all the same");
    awaitWords("Nobody has said who works");
    type("o");
    awaitWords("Who works from now on?");
    assertEquals(Optional.empty(), clinic.session.worker());
    type("2");
    awaitWords("At work: B. Colleague, learner or assistant");
    type("o");
    awaitWords("Who works from now on?");
    // whoever worked last stands first
    type("2");
    awaitWords("At work: A. Therapist, licensed therapist");
    type("o");
    awaitWords("You override this as a licensed therapist");
    TextField why = (TextField) Window.on(() -> stage.getScene().getFocusOwner());
    Window.run(() -> why.setText("released today"));
    key(KeyCode.ENTER, false);
    type("1");
    clinic.session.settle();
    Entry entry = clinic.session.current().orElseThrow().context().snapshot().entry(hold).get();
    assertEquals("A. Therapist", entry.by().value());
    assertEquals("released today", entry.override().orElseThrow().reason());
    assertEquals(
        List.of("Dr Example"),
        entry.override().orElseThrow().precautions().stream().map(Precaution::setBy).toList());
  }

  @Test
  void aNewEvaluationIsBegunByWhoSaysAsWhatTheyWork() {
    start(Optional.of(clinic.session()));
    awaitWords("16 found");
    press("New evaluation");
    awaitWords("Works as");
    assertEquals(Optional.empty(), clinic.session.worker());
    press("B. Colleague, learner or assistant");
    press("Begin evaluation");
    awaitWords("At work: B. Colleague, learner or assistant");
    assertFalse(clinic.session.worker().orElseThrow().licensed());
  }

  @Test
  void theLengthOfTheRestIsSetAndKept() throws StoreException {
    openEvaluation();
    awaitWords("Shoulder");
    leafTo("Grip and pinch");
    press("Settings");
    ComboBox<Integer> rest = box("Rest between trials of one hand, on this machine");
    assertEquals(60, Window.on(rest::getValue));
    Window.run(() -> rest.setValue(15));
    press("Close");
    press("Settings");
    ComboBox<Integer> again = box("Rest between trials of one hand, on this machine");
    assertEquals(15, Window.on(again::getValue));
  }

  @Test
  void everyFocusableNodeOfTheEvaluationHasAName() throws StoreException {
    openEvaluation();
    awaitWords("Shoulder");
    List<String> silent = new ArrayList<>();
    Window.run(() -> silent(stage.getScene().getRoot(), silent));
    assertEquals(List.of(), silent);
    assertFalse(Window.on(() -> words().isEmpty()));
  }

  private static void silent(Node node, List<String> into) {
    boolean named =
        node.getAccessibleText() != null && !node.getAccessibleText().isBlank()
            || node instanceof Labeled l && l.getText() != null && !l.getText().isBlank();
    if (node.isFocusTraversable() && !named) {
      into.add(node.toString());
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> silent(child, into));
    }
  }
}
