package styloid.shell.progress;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.ErrorRange;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.Explanation;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;

/** Series over invented visits. */
class CoursesTest {
  private static final TestId TEST = new TestId("pull");
  private static final LocalDate FIRST = LocalDate.of(2026, 1, 5);
  private static final Item PULL =
      Item.bothSides(
              "pull",
              new ItemKind.Number(
                  List.of(Unit.KILOGRAM_FORCE, Unit.POUND_FORCE),
                  BigDecimal.ZERO,
                  new BigDecimal("120"),
                  BigDecimal.ONE,
                  new BigDecimal("80"),
                  1),
              Demand.GRIP_OR_PINCH)
          .withTrials(2);

  private final List<PatientContext.Past> visits = new ArrayList<>();
  private Results results = Results.empty();

  private static ItemKey key(Side side, int trial) {
    return new ItemKey(TEST, PULL.id(), side, Digit.NONE, trial);
  }

  /** A visit so many days after the first; values are right 1, right 2, left 1, left 2. */
  private void visit(int days, Object... values) {
    List<ItemKey> keys =
        List.of(key(Side.RIGHT, 1), key(Side.RIGHT, 2), key(Side.LEFT, 1), key(Side.LEFT, 2));
    ArrayList<Entry> entries = new ArrayList<>();
    for (int at = 0; at < values.length; at++) {
      if (values[at] != null) {
        Value value =
            values[at] instanceof String kg
                ? Quantity.of(kg, Unit.KILOGRAM_FORCE)
                : (Value) values[at];
        entries.add(
            new Entry(
                new EntryId(new UUID(days, at)),
                keys.get(at),
                Optional.of(value),
                Instant.EPOCH,
                new TherapistId("T. Example"),
                false));
      }
    }
    Evaluation head =
        new Evaluation(
            new EvaluationId(new UUID(7, days)),
            new PatientId(new UUID(1, 1)),
            FIRST.plusDays(days),
            new TherapistId("T. Example"),
            Evaluation.State.DRAFT,
            Map.of(),
            Map.of());
    visits.add(0, new PatientContext.Past(head, Snapshot.of(entries)));
  }

  private Course course() {
    Patient patient =
        new Patient(
            new PatientId(new UUID(1, 1)),
            "1",
            "Made-up Person",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Set.of(),
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    PatientContext.Past now = visits.get(0);
    PatientContext context =
        new PatientContext(
            patient,
            now.evaluation(),
            List.of(),
            now.snapshot(),
            results,
            visits.subList(1, visits.size()));
    return new Courses(context).of(TEST, PULL).get(0);
  }

  private static double[] values(List<Course.Point> points) {
    return points.stream().mapToDouble(Course.Point::value).toArray();
  }

  @Test
  void aVisitIsTheMeanOfItsTrialsOldestFirst() {
    visit(0, "10", "12", "30", "32");
    visit(21, "20", "22", "31", "33");
    Course course = course();
    assertArrayEquals(new double[] {11, 21}, values(course.points(Side.RIGHT)), 1e-9);
    assertArrayEquals(new double[] {31, 32}, values(course.points(Side.LEFT)), 1e-9);
    assertEquals(2, course.measured());
  }

  @Test
  void aVisitWithoutAllTrialsOrWithAnAbsenceIsAGapAndNeverZero() {
    visit(0, "10", "12");
    visit(21, new Absence(Absence.Reason.PAIN), new Absence(Absence.Reason.PAIN));
    visit(42, "20", null);
    visit(63);
    visit(84, "30", "30");
    Course course = course();
    List<List<Course.Point>> runs = course.runs(Side.RIGHT);
    assertEquals(2, runs.size(), "the line breaks at the gap");
    assertArrayEquals(new double[] {11}, values(runs.get(0)), 1e-9);
    assertArrayEquals(new double[] {30}, values(runs.get(1)), 1e-9);
    assertEquals(
        List.of(
            Reading.State.MEASURED,
            Reading.State.ABSENT,
            Reading.State.INCOMPLETE,
            Reading.State.NOTHING,
            Reading.State.MEASURED),
        course.visits().stream().map(v -> v.readings().get(Side.RIGHT).state()).toList());
    assertTrue(course.runs(Side.LEFT).isEmpty());
    assertTrue(course.numbers().allMatch(n -> n > 0));
  }

  @Test
  void allNumbersAreInTheUnitTypedLast() {
    visit(0, Quantity.of("22", Unit.POUND_FORCE), Quantity.of("22", Unit.POUND_FORCE));
    visit(21, "10", "10");
    assertEquals(Unit.KILOGRAM_FORCE, course().unit());
    assertArrayEquals(
        new double[] {22 * 0.45359237, 10}, values(course().points(Side.RIGHT)), 1e-9);
  }

  @Test
  void theErrorIsTheOneAResultStatesForItsSideAndNoOther() {
    visit(0, "10", "12", "30", "32");
    visit(21, "20", "22", "31", "33");
    Explanation why =
        new Explanation(
                List.of(Message.verbatim("invented")),
                List.of(Source.commonPractice()),
                "pull-change",
                Optional.empty())
            .withError(
                new ErrorRange(
                    PULL.id(),
                    Quantity.of("6", Unit.KILOGRAM_FORCE),
                    Quantity.of("8", Unit.KILOGRAM_FORCE)));
    ResultKey key = new ResultKey(TEST, new ResultId("change"), Side.RIGHT, Digit.NONE);
    results = Results.of(List.of(Result.computed(key, new Choice("gain"), why)));
    Course course = course();
    assertArrayEquals(new double[] {6, 8}, course.error(Side.RIGHT).orElseThrow(), 1e-9);
    assertTrue(course.error(Side.LEFT).isEmpty());
    assertEquals(11, course.reference(Side.RIGHT).orElseThrow().value(), 1e-9);
    assertEquals(5, course.numbers().min().orElseThrow(), 1e-9, "the band has room");
  }

  @ParameterizedTest
  @CsvSource({"0, 100", "21, 310", "30, 400"})
  void timeIsTrueToScale(int days, double x) {
    visit(0, "10", "12");
    visit(21, "10", "12");
    visit(30, "10", "12");
    Plot plot = Plot.of(course(), course().numbers(), 100, 0, 300, 50);
    assertEquals(x, plot.x(FIRST.plusDays(days)), 1e-9);
  }

  @ParameterizedTest
  @CsvSource({"10, 12", "3, 97", "-40, 150", "0.1, 0.3"})
  void ticksAreRoundFewAndInRange(double low, double high) {
    Plot plot = new Plot(0, 0, 10, 10, FIRST, 0, low, high);
    List<Double> ticks = plot.ticks(6);
    assertTrue(ticks.size() >= 2 && ticks.size() <= 7, ticks::toString);
    assertTrue(ticks.stream().allMatch(t -> t >= low - 1e-9 && t <= high + 1e-9));
  }

  @Test
  void aSingleVisitStandsInTheMiddle() {
    visit(0, "10", "12");
    Plot plot = Plot.of(course(), course().numbers(), 100, 0, 300, 50);
    assertEquals(250, plot.x(FIRST), 1e-9);
    assertEquals(25, plot.y(11), 1e-9);
  }
}
