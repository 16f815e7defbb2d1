package styloid.spi.slip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Absence;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Quantity;
import styloid.model.Region;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Texts;

/** Made-up readings; what is asked about them and in which words. */
class SlipsTest {
  private static final TestId TEST = new TestId("pull");
  private static final Item FORCE =
      Item.bothSides(
              "pull",
              new ItemKind.Number(
                  List.of(Unit.KILOGRAM_FORCE, Unit.POUND_FORCE),
                  BigDecimal.ZERO,
                  new BigDecimal("120"),
                  new BigDecimal("1"),
                  new BigDecimal("80"),
                  1),
              Demand.GRIP_OR_PINCH)
          .withTrials(3);
  private static final Item ANGLE =
      Item.bothSides(
          "bend", ItemKind.Number.of(Unit.DEGREE, -30, 0, 160, 170, 1), Demand.ACTIVE_MOTION);
  private static final Group GROUP =
      new Group(
          "both",
          Region.WRIST,
          Set.of(),
          List.of(FORCE, ANGLE),
          Group.Walk.SIDE_BY_SIDE,
          Group.Layout.LIST,
          List.of(),
          Guide.none());

  private final List<Entry> now = new ArrayList<>();
  private final List<Entry> last = new ArrayList<>();

  private static ItemKey key(Item item, Side side, int trial) {
    return new ItemKey(TEST, item.id(), side, Digit.NONE, trial);
  }

  private static Quantity quantity(Item item, String amount) {
    return Quantity.of(amount, ((ItemKind.Number) item.kind()).unit());
  }

  private static Entry entry(ItemKey key, Value value, boolean confirmed) {
    return new Entry(
        new EntryId(new UUID(4, key.hashCode())),
        key,
        Optional.of(value),
        Instant.EPOCH,
        new TherapistId("T. Example"),
        confirmed);
  }

  /** Trials from the first on, such as "38 39"; a dash is none. */
  private static void put(List<Entry> into, Item item, Side side, String trials) {
    int trial = 1;
    for (String amount : trials == null ? new String[0] : trials.split(" ")) {
      if (!amount.equals("-")) {
        into.add(entry(key(item, side, trial), quantity(item, amount), false));
      }
      trial++;
    }
  }

  private PatientContext context() {
    LocalDate day = LocalDate.of(2026, 3, 2);
    Patient patient =
        new Patient(
            new PatientId(new UUID(1, 1)),
            "1",
            "Made-up Person",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Set.of(Side.LEFT),
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    List<PatientContext.Past> past =
        last.isEmpty()
            ? List.of()
            : List.of(
                new PatientContext.Past(evaluation(patient, day.minusDays(21)), Snapshot.of(last)));
    return new PatientContext(
        patient, evaluation(patient, day), List.of(), Snapshot.of(now), Results.empty(), past);
  }

  private static Evaluation evaluation(Patient patient, LocalDate day) {
    return new Evaluation(
        new EvaluationId(new UUID(2, day.toEpochDay())),
        patient.id(),
        day,
        new TherapistId("T. Example"),
        Evaluation.State.DRAFT,
        Map.of(),
        Map.of());
  }

  private Optional<String> question(Item item, ItemKey key, Value value) {
    Texts texts = new Texts(Map.of(), Locale.ENGLISH);
    return Slips.look(GROUP, item, key, value, context()).map(d -> texts.text(d.question()));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          38 38    | 17   | 17 kg? The other trials were about 38 kg; 38 lb would be 17.2 kg.
          20 21    | 45   | 45 kg? The other trials were about 20.5 kg; 45 lb would be 20.4 kg.
          38       | 3.8  | 3.8 kg? The other trial was 38 kg; with the decimal point moved it would be 38 kg.
          27 28    | 72   | 72 kg? The other trials were about 27.5 kg; with two digits swapped it would be 27 kg.
          """)
  void aTrialFarFromItsSetIsAskedAboutWithWhatWasMeant(String trials, String third, String words) {
    put(now, FORCE, Side.RIGHT, trials);
    assertEquals(
        Optional.of(words), question(FORCE, key(FORCE, Side.RIGHT, 3), quantity(FORCE, third)));
  }

  @ParameterizedTest
  @CsvSource({"38 40, 36", "38 40, 30", "38 40, 45", "12 9, 14", "4 5, 6.5"})
  void trialsVaryWithoutAQuestion(String trials, String third) {
    put(now, FORCE, Side.RIGHT, trials);
    assertEquals(
        Optional.empty(), question(FORCE, key(FORCE, Side.RIGHT, 3), quantity(FORCE, third)));
  }

  @Test
  void aValueLikeTheOtherSidesAndUnlikeThisOnesIsAskedAbout() {
    put(last, FORCE, Side.RIGHT, "44 45 43");
    put(now, FORCE, Side.LEFT, "26 25 27");
    assertEquals(
        Optional.of(
            "26 kg? For comparison: the right side had 44 kg at the last visit, the left side has"
                + " 26 kg. Is this the left side?"),
        question(FORCE, key(FORCE, Side.RIGHT, 1), quantity(FORCE, "26")));
  }

  @Test
  void anAngleIsHeldAgainstTheLastVisitByDegrees() {
    put(last, ANGLE, Side.RIGHT, "85");
    put(last, ANGLE, Side.LEFT, "70");
    assertEquals(
        Optional.of("58°? The last visit had 85°; with two digits swapped it would be 85°."),
        question(ANGLE, key(ANGLE, Side.RIGHT, 1), quantity(ANGLE, "58")));
    assertEquals(
        Optional.empty(), question(ANGLE, key(ANGLE, Side.LEFT, 1), quantity(ANGLE, "82")));
  }

  @Test
  void nothingAroundItMeansNoQuestion() {
    assertEquals(
        Optional.empty(), question(FORCE, key(FORCE, Side.RIGHT, 1), quantity(FORCE, "3.8")));
  }

  @Test
  void absencesAreNeitherAskedAboutNorHeldAgainst() {
    now.add(entry(key(FORCE, Side.RIGHT, 1), new Absence(Absence.Reason.PAIN), false));
    assertEquals(
        Optional.empty(), question(FORCE, key(FORCE, Side.RIGHT, 2), quantity(FORCE, "3.8")));
    put(now, FORCE, Side.RIGHT, "- 38");
    assertEquals(
        Optional.empty(),
        question(FORCE, key(FORCE, Side.RIGHT, 3), new Absence(Absence.Reason.PAIN)));
  }

  @Test
  void whatWasKeptOnceIsNotAskedAgain() {
    put(now, FORCE, Side.RIGHT, "38 38");
    ItemKey third = key(FORCE, Side.RIGHT, 3);
    now.add(entry(third, quantity(FORCE, "17"), true));
    assertEquals(Optional.empty(), question(FORCE, third, quantity(FORCE, "17.0")));
    assertTrue(question(FORCE, third, quantity(FORCE, "3.8")).isPresent());
  }

  @Test
  void unitsOfTheOtherValuesAreConvertedNotMistaken() {
    now.add(entry(key(FORCE, Side.RIGHT, 1), Quantity.of("84", Unit.POUND_FORCE), false));
    assertEquals(
        Optional.empty(), question(FORCE, key(FORCE, Side.RIGHT, 2), quantity(FORCE, "38")));
  }
}
