package styloid.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Absence;
import styloid.model.Capacity;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EvaluationId;
import styloid.model.InSpite;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.Therapist;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.testkit.SampleEvaluations;

/** Who may record what while precautions are in force. */
class DutyTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final Therapist LICENSED =
      new Therapist(
          new TherapistId("A. L."),
          Optional.of("Ada Licensed"),
          Optional.of(Capacity.LICENSED_THERAPIST));
  private static final Therapist LEARNER =
      new Therapist(
          new TherapistId("L. L."), Optional.empty(), Optional.of(Capacity.LEARNER_OR_ASSISTANT));

  private final MemoryStore store = new MemoryStore();
  private final Patient patient = new SampleEvaluations(3).patient();
  private final SampleModule spans = new SampleModule("spans");
  private final ItemKey right = spans.key(Side.RIGHT);
  private final Precaution still =
      limit(Precaution.Kind.NO_ACTIVE_MOTION, Region.HAND, Side.RIGHT, "Dr. Example");
  private SessionService session;
  private EvaluationId id;

  private static Precaution limit(Precaution.Kind kind, Region region, Side side, String setBy) {
    return new Precaution(
        kind,
        region,
        side,
        Digit.NONE,
        Optional.empty(),
        Optional.of(DAY.plusDays(7)),
        setBy,
        "after repair");
  }

  @BeforeEach
  void begin() throws Exception {
    session =
        new SessionService(Clock.fixed(Instant.parse("2026-03-02T09:00:00Z"), ZoneOffset.UTC));
    session.setStore(store);
    session.addModule(spans);
    session.settle();
    session.savePatient(patient, List.of(still));
    id = session.begin(patient.id(), DAY, new TherapistId("B. Begun")).context().evaluation().id();
  }

  @AfterEach
  void end() {
    session.deactivate();
  }

  private static Value mm(String digits) {
    return Quantity.of(digits, Unit.MILLIMETRE);
  }

  private List<Entry> stored() throws Exception {
    session.settle();
    return store.evaluation(id).orElseThrow().ledger().entries();
  }

  @Test
  void aValueThatAPrecautionWithholdsIsRefusedWithoutAnOverrideWhoeverWorks() throws Exception {
    assertThrows(IllegalArgumentException.class, () -> session.record(right, mm("180"), false));
    session.workAs(LICENSED);
    String why =
        assertThrows(IllegalArgumentException.class, () -> session.record(right, mm("180"), false))
            .getMessage();
    assertEquals("spans/span/right/none/1 is withheld: Dr. Example", why);
    assertEquals(List.of(), stored());
  }

  @Test
  void whatIsNotWithheldNeedsNeitherLicenceNorReason() throws Exception {
    session.record(spans.key(Side.LEFT), mm("180"), false);
    session.recordInSpite(spans.key(Side.LEFT), mm("181"), false, "no limit here");
    assertEquals(
        List.of(Optional.empty(), Optional.empty()),
        stored().stream().map(Entry::override).toList());
  }

  @Test
  void thatNothingWasDoneMayAlwaysBeRecorded() throws Exception {
    session.record(right, new Absence(Absence.Reason.PRECAUTION), false);
    assertEquals(Optional.empty(), stored().get(0).override());
  }

  @ParameterizedTest
  @CsvSource({"nobody", "unsaid", "learner"})
  void onlyWhoSaidThatTheyAreLicensedMayOverride(String who) throws Exception {
    switch (who) {
      case "unsaid" -> session.workAs(Therapist.unsaid(new TherapistId("B. Begun")));
      case "learner" -> session.workAs(LEARNER);
      default -> assertEquals(Optional.empty(), session.worker());
    }
    assertThrows(
        IllegalStateException.class,
        () -> session.recordInSpite(right, mm("180"), false, "released"));
    assertEquals(List.of(), stored());
  }

  @Test
  void anOverrideKeepsReasonAndPrecautionsEvenOnceTheyAreLifted() throws Exception {
    Precaution other = limit(Precaution.Kind.NO_ACTIVE_MOTION, Region.LIMB, Side.UNSIDED, "");
    Precaution elsewhere = limit(Precaution.Kind.NO_RESISTANCE, Region.HAND, Side.RIGHT, "X");
    session.savePatient(patient, List.of(still, elsewhere, other));
    session.workAs(LICENSED);
    session.recordInSpite(right, mm("180"), false, "released by telephone");
    session.savePatient(patient, List.of());
    Entry entry = stored().get(0);
    assertEquals(
        Optional.of(new InSpite("released by telephone", List.of(still, other))), entry.override());
    assertEquals(LICENSED.id(), entry.by());
  }

  @Test
  void aReasonSaysSomethingAndNotTooMuch() {
    session.workAs(LICENSED);
    for (String reason : List.of("", " ", "x".repeat(501))) {
      assertThrows(
          IllegalArgumentException.class,
          () -> session.recordInSpite(right, mm("180"), false, reason));
    }
  }

  @Test
  void entriesAreSignedByWhoWorksAndByTheEvaluationsTherapistWhileNobodySaid() throws Exception {
    ItemKey left = spans.key(Side.LEFT);
    session.record(left, mm("180"), false);
    session.workAs(LEARNER);
    session.record(left, mm("181"), false);
    session.workAs(LICENSED);
    session.undo();
    assertEquals(
        List.of("B. Begun", "L. L.", "A. L."), stored().stream().map(e -> e.by().value()).toList());
    assertEquals(Optional.of(LICENSED), session.worker());
  }

  @Test
  void whoWorksIsKnownToTheNextEvaluationToo() throws Exception {
    session.workAs(LICENSED);
    session.begin(patient.id(), DAY, new TherapistId("C. Other"));
    assertEquals(Optional.of(LICENSED), session.worker());
  }

  @Test
  void theOverrideComesBackWithItsValueThroughUndo() throws Exception {
    session.workAs(LICENSED);
    session.recordInSpite(right, mm("180"), false, "released");
    session.recordInSpite(right, mm("182"), false, "typing error");
    session.undo();
    assertEquals(
        List.of("released", "typing error", "released"),
        stored().stream().map(e -> e.override().orElseThrow().reason()).toList());
  }

  @Test
  void whoIsNotLicensedTakesAnOverrideBackButDoesNotBringItAgain() throws Exception {
    session.workAs(LICENSED);
    session.recordInSpite(right, mm("180"), false, "released");
    session.recordInSpite(right, mm("182"), false, "typing error");
    session.workAs(LEARNER);
    assertEquals(Optional.empty(), session.undo());
    session.workAs(LICENSED);
    session.undo();
    session.workAs(LEARNER);
    assertEquals(Optional.of(right), session.undo());
    assertEquals(Optional.empty(), session.redo());
    assertEquals(4, stored().size());
    assertEquals(Optional.empty(), stored().get(3).value());
  }
}
