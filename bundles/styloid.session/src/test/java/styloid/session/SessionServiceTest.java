package styloid.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import styloid.exchange.DefinitionFile;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientRecord;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.plan.Plan;
import styloid.spi.Progress;
import styloid.spi.Report;
import styloid.store.StoreException;
import styloid.testkit.SampleEvaluations;

class SessionServiceTest {
  private static final TherapistId THERAPIST = new TherapistId("A. Therapist");
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private final MemoryStore store = new MemoryStore();
  private final SampleModule spans = new SampleModule("spans");
  private final ItemKey right = spans.key(Side.RIGHT);
  private final SessionService session =
      new SessionService(Clock.fixed(Instant.parse("2026-03-02T09:00:00Z"), ZoneOffset.UTC));
  private final Patient patient = new SampleEvaluations(3).patient();

  @BeforeEach
  void begin() throws Exception {
    session.setStore(store);
    session.addModule(spans);
    session.settle();
    session.savePatient(patient, List.of());
  }

  @AfterEach
  void end() {
    store.fill(false);
    session.deactivate();
  }

  private OpenEvaluation beginOne() throws Exception {
    return session.begin(patient.id(), DAY, THERAPIST);
  }

  private static Value mm(String digits) {
    return Quantity.of(digits, Unit.MILLIMETRE);
  }

  private OpenEvaluation settled() {
    session.settle();
    return session.current().orElseThrow();
  }

  @Test
  void whatIsRecordedIsSeenAtOnceAndSavedSoonAfter() throws Exception {
    beginOne();
    OpenEvaluation now = session.record(right, mm("180"), false);
    assertEquals(Optional.of(mm("180")), now.context().snapshot().value(right));
    OpenEvaluation later = settled();
    assertEquals(Set.of(), later.unsaved());
    EvaluationId id = later.context().evaluation().id();
    assertEquals(1, store.evaluation(id).orElseThrow().ledger().size());
  }

  @Test
  void resultsFollowTheEntries() throws Exception {
    beginOne();
    session.record(right, mm("180"), false);
    OpenEvaluation open = settled();
    assertFalse(open.calculating());
    Result twice = open.context().results().result(spans.twice(Side.RIGHT)).orElseThrow();
    assertEquals(Optional.of(mm("360")), twice.value());
    Result other = open.context().results().result(spans.twice(Side.LEFT)).orElseThrow();
    assertTrue(other.value().isEmpty());
  }

  @Test
  void aChoiceIsPartOfTheRecordAndResultsFollowIt() throws Exception {
    EvaluationId id = beginOne().context().evaluation().id();
    session.record(right, mm("180"), false);
    settled();
    OpenEvaluation now = session.choose("spans.factor", "3");
    assertEquals(Map.of("spans.factor", "3"), now.context().evaluation().choices());
    OpenEvaluation later = settled();
    assertFalse(later.calculating());
    assertEquals(
        Optional.of(mm("540")),
        later.context().results().result(spans.twice(Side.RIGHT)).orElseThrow().value());
    assertEquals(
        Map.of("spans.factor", "3"), store.evaluation(id).orElseThrow().evaluation().choices());
  }

  @Test
  void whatWasChosenLastHoldsForEvaluationsBegunLaterIfItIsStillKnown() throws Exception {
    beginOne();
    session.choose("spans.factor", "3");
    session.settle();
    EvaluationId first = session.current().orElseThrow().context().evaluation().id();
    store.choose(first, "gone.norm", "a-1985");
    assertEquals(Map.of("spans.factor", "3"), beginOne().context().evaluation().choices());
    store.choose(first, "spans.factor", "4");
    assertEquals(Map.of(), beginOne().context().evaluation().choices());
  }

  @Test
  void onlyACodeOfADeclaredSettingCanBeChosen() throws Exception {
    assertThrows(IllegalStateException.class, () -> session.choose("spans.factor", "3"));
    beginOne();
    assertThrows(IllegalArgumentException.class, () -> session.choose("spans.factor", "4"));
    assertThrows(IllegalArgumentException.class, () -> session.choose("spans.other", "3"));
  }

  @Test
  void aChoiceOutlastsAFullDisk() throws Exception {
    EvaluationId id = beginOne().context().evaluation().id();
    store.fill(true);
    session.choose("spans.factor", "3");
    assertTrue(settled().savingFault().isPresent());
    store.fill(false);
    session.retrySaving();
    session.settle();
    assertEquals(
        Map.of("spans.factor", "3"), store.evaluation(id).orElseThrow().evaluation().choices());
  }

  @Test
  void aCorrectionSupersedesAndKeepsWhatItReplaced() throws Exception {
    beginOne();
    session.record(right, mm("180"), false);
    session.record(right, mm("182"), false);
    OpenEvaluation open = settled();
    assertEquals(2, open.ledger().size());
    assertEquals(Optional.of(mm("182")), open.context().snapshot().value(right));
  }

  @Test
  void undoAndRedoAppendAndNeverRemove() throws Exception {
    beginOne();
    session.record(right, mm("180"), false);
    session.record(right, new Absence(Absence.Reason.PAIN), false);
    assertEquals(Optional.of(right), session.undo());
    assertEquals(Optional.of(mm("180")), settled().context().snapshot().value(right));
    session.undo();
    assertEquals(Optional.empty(), settled().context().snapshot().value(right));
    assertEquals(Optional.empty(), session.undo());
    session.redo();
    assertEquals(Optional.of(mm("180")), settled().context().snapshot().value(right));
    assertTrue(settled().canRedo());
    assertEquals(5, settled().ledger().size());
  }

  @Test
  void aNewEntryEndsRedo() throws Exception {
    beginOne();
    session.record(right, mm("180"), false);
    session.undo();
    session.record(right, mm("90"), false);
    assertFalse(settled().canRedo());
    assertEquals(Optional.empty(), session.redo());
  }

  @Test
  void whatCannotBeStoredIsKeptAndStoredWhenThereIsRoom() throws Exception {
    beginOne();
    store.fill(true);
    session.record(right, mm("180"), false);
    OpenEvaluation open = settled();
    assertEquals(Set.of(right), open.unsaved());
    assertEquals(Optional.of("The disk is full."), open.savingFault());
    store.fill(false);
    session.record(spans.key(Side.LEFT), mm("170"), false);
    OpenEvaluation after = settled();
    assertEquals(Set.of(), after.unsaved());
    assertEquals(Optional.empty(), after.savingFault());
    assertEquals(
        after.ledger(), store.evaluation(after.context().evaluation().id()).orElseThrow().ledger());
  }

  @Test
  void anEvaluationThatCannotBeStoredStaysOpen() throws Exception {
    EvaluationId first = beginOne().context().evaluation().id();
    store.fill(true);
    session.record(right, mm("180"), false);
    session.settle();
    StoreException refused = assertThrows(StoreException.class, session::close);
    assertTrue(refused.getMessage().contains("The disk is full."), refused.getMessage());
    assertThrows(StoreException.class, () -> session.open(first));
    assertEquals(Set.of(right), session.current().orElseThrow().unsaved());
    store.fill(false);
    session.close();
    assertEquals(Optional.empty(), session.current());
    assertEquals(1, store.evaluation(first).orElseThrow().ledger().size());
  }

  @Test
  void textUnderWayIsKeptUntilItBecomesAnEntry() throws Exception {
    EvaluationId id = beginOne().context().evaluation().id();
    session.draft(right, "18");
    assertEquals(Map.of(right, "18"), settled().drafts());
    assertEquals(Map.of(right, "18"), session.open(id).drafts());
    session.record(right, mm("180"), false);
    assertEquals(Map.of(), settled().drafts());
    assertEquals(Map.of(), store.evaluation(id).orElseThrow().drafts());
  }

  @Test
  void anImpossibleOrForeignValueIsRefused() throws Exception {
    beginOne();
    assertThrows(IllegalArgumentException.class, () -> session.record(right, mm("401"), false));
    assertThrows(
        IllegalArgumentException.class, () -> session.record(right, new Choice("x"), false));
    ItemKey foreign = new SampleModule("other").key(Side.RIGHT);
    assertThrows(IllegalArgumentException.class, () -> session.record(foreign, mm("100"), false));
    assertEquals(0, settled().ledger().size());
  }

  @Test
  void nothingIsRecordedWithoutAnOpenEvaluation() {
    assertThrows(IllegalStateException.class, () -> session.record(right, mm("100"), false));
  }

  @Test
  void aReopenedEvaluationIsAsItWasLeft() throws Exception {
    EvaluationId id = beginOne().context().evaluation().id();
    session.record(right, mm("180"), true);
    session.close();
    assertEquals(Optional.empty(), session.current());
    OpenEvaluation open = session.open(id);
    assertEquals(Optional.of(mm("180")), open.context().snapshot().value(right));
    assertTrue(open.context().snapshot().entry(right).orElseThrow().confirmed());
    assertFalse(open.canUndo());
  }

  @Test
  void earlierVisitsAreThePastNewestFirst() throws Exception {
    for (int month : List.of(1, 3, 2)) {
      session.begin(patient.id(), LocalDate.of(2025, month, 1), THERAPIST);
    }
    OpenEvaluation open = beginOne();
    assertEquals(
        List.of(3, 2, 1),
        open.context().past().stream().map(p -> p.evaluation().date().getMonthValue()).toList());
  }

  @Test
  void aRecordOutlivesItsModule() throws Exception {
    EvaluationId id = beginOne().context().evaluation().id();
    session.record(right, mm("180"), false);
    session.removeModule(spans);
    session.settle();
    OpenEvaluation open = session.open(id);
    assertEquals(Set.of(spans.definition().id()), open.withoutModule());
    assertEquals(List.of(spans.definition()), open.tests());
    assertEquals(
        "Span", session.texts(Locale.ENGLISH).item(right), "the stored labels still speak");
    Report report = session.report(open, Locale.ENGLISH);
    assertEquals(1, report.parts().size());
    assertEquals(1, report.faults().size());
  }

  @Test
  void aModuleThatFailsIsNamedAndTheOthersGoOn() throws Exception {
    session.addModule(
        new SampleModule("broken") {
          @Override
          public List<Result> results(PatientContext context) {
            throw new NoSuchMethodError("gone");
          }
        });
    session.settle();
    beginOne();
    session.record(right, mm("180"), false);
    OpenEvaluation open = settled();
    assertEquals(List.of("broken"), open.faults().stream().map(ModuleFault::module).toList());
    assertEquals(
        Optional.of(mm("360")),
        open.context().results().result(spans.twice(Side.RIGHT)).orElseThrow().value());
  }

  @Test
  void aModuleMayNotLookAtWhatItDidNotDeclare() throws Exception {
    session.addModule(
        new SampleModule("nosy") {
          @Override
          public List<Result> results(PatientContext context) {
            context.snapshot().entry(right);
            return super.results(context);
          }
        });
    session.settle();
    beginOne();
    assertEquals(List.of("nosy"), settled().faults().stream().map(ModuleFault::module).toList());
  }

  @Test
  void aReportNamesTheCautionsOfWhatWasDone() throws Exception {
    OpenEvaluation empty = beginOne();
    assertEquals(List.of(), session.report(empty, Locale.ENGLISH).cautions());
    session.record(right, mm("180"), false);
    Report report = session.report(settled(), Locale.ENGLISH);
    assertEquals(List.of("Gently."), report.cautions().stream().map(c -> c.text()).toList());
    assertEquals("Hand span", report.cautions().get(0).step());
  }

  @Test
  void anExportWithoutAWriterSaysSo() throws Exception {
    Report report = session.report(beginOne(), Locale.ENGLISH);
    ExecutionException failed =
        assertThrows(
            ExecutionException.class,
            () -> session.export(report, "xlsx", Path.of("x.xlsx"), Progress.none()).get());
    assertInstanceOf(IOException.class, failed.getCause());
  }

  @Test
  void aRecordIsCalculatedWithoutTheStore() throws Exception {
    EvaluationId id = beginOne().context().evaluation().id();
    session.record(right, mm("180"), false);
    session.close();
    PatientRecord record = session.patientRecord(patient.id()).orElseThrow();
    OpenEvaluation calculated = session.calculate(record, id);
    assertEquals(
        Optional.of(mm("360")),
        calculated.context().results().result(spans.twice(Side.RIGHT)).orElseThrow().value());
    assertEquals(Optional.empty(), session.current());
  }

  @Test
  void anImportedRecordGetsTheDefinitionsItLacks() throws Exception {
    EvaluationId id = beginOne().context().evaluation().id();
    session.record(right, mm("180"), false);
    session.close();
    PatientRecord full = session.patientRecord(patient.id()).orElseThrow();
    EvaluationRecord bare =
        new EvaluationRecord(
            full.evaluations().get(0).evaluation(),
            full.evaluations().get(0).ledger(),
            List.of(),
            Map.of());
    session.importRecords(List.of(new PatientRecord(full.patient(), List.of(), List.of(bare))));
    assertEquals(
        List.of(DefinitionFile.write(spans.definition())),
        store.evaluation(id).orElseThrow().definitions());
  }

  @Test
  void changedPrecautionsShowInTheOpenEvaluation() throws Exception {
    beginOne();
    Patient renamed =
        new Patient(
            patient.id(),
            patient.recordNumber(),
            "Another Name",
            patient.birthDate(),
            patient.sex(),
            patient.dominance(),
            patient.involved(),
            patient.diagnosis(),
            patient.onset(),
            patient.surgery(),
            patient.heightCm());
    session.savePatient(renamed, List.of());
    assertEquals("Another Name", settled().context().patient().name());
  }

  private static List<String> steps(OpenEvaluation open) {
    return open.order().orElseThrow().steps().stream().map(s -> s.id().toString()).toList();
  }

  @Test
  void theOrderFollowsTheEntries() throws Exception {
    beginOne();
    assertEquals(2, steps(settled()).size());
    session.record(right, mm("180"), false);
    assertEquals(List.of("spans/spans/left"), steps(settled()));
    session.undo();
    assertEquals(2, steps(settled()).size());
    session.addModule(new SampleModule("other"));
    assertEquals(4, steps(settled()).size());
  }

  @Test
  void theStepUnderWayStaysFirstWhateverIsRecorded() throws Exception {
    beginOne();
    session.workOn(Optional.of(spans.key(Side.LEFT)));
    assertEquals(List.of("spans/spans/left", "spans/spans/right"), steps(settled()));
    session.record(spans.key(Side.LEFT), mm("170"), false);
    assertEquals(List.of("spans/spans/left", "spans/spans/right"), steps(settled()));
    session.workOn(Optional.of(right));
    assertEquals(List.of("spans/spans/right"), steps(settled()));
    session.workOn(Optional.empty());
    assertEquals(List.of("spans/spans/right"), steps(settled()));
  }

  @Test
  void whatAnotherTestDecidesAgainstIsNotInTheOrder() throws Exception {
    session.addModule(new DecidingModule("look", Side.RIGHT));
    session.settle();
    beginOne();
    assertEquals(
        Set.of("look/spans/right", "look/spans/left", "spans/spans/left"),
        Set.copyOf(steps(settled())));
  }

  @Test
  void anOrderThatStaysTheSameIsNotToldAgain() throws Exception {
    beginOne();
    session.record(right, mm("180"), false);
    OpenEvaluation first = settled();
    AtomicInteger told = new AtomicInteger();
    session.listen(change -> told.incrementAndGet());
    session.record(right, mm("181"), false);
    OpenEvaluation second = settled();
    assertSame(first.order().orElseThrow(), second.order().orElseThrow());
    assertEquals(3, told.get(), "entry, results, saved");
  }

  @Test
  void withoutAnEvaluationThereIsNoStepToWorkOn() {
    session.workOn(Optional.of(right));
    assertEquals(Optional.empty(), session.current());
  }

  @Test
  void aCalculatedRecordHasItsOrder() throws Exception {
    EvaluationId id = beginOne().context().evaluation().id();
    session.record(right, mm("180"), false);
    session.close();
    PatientRecord record = session.patientRecord(patient.id()).orElseThrow();
    assertEquals(List.of("spans/spans/left"), steps(session.calculate(record, id)));
  }

  @Test
  void theOrderIsSaidInWords() throws Exception {
    beginOne();
    Plan order = settled().order().orElseThrow();
    assertEquals(
        "0 changes of position: body 0, limb support 0, forearm 0. The order from proximal to"
            + " distal needs 0.",
        session.texts(Locale.ENGLISH).text(order.summary()));
  }
}
