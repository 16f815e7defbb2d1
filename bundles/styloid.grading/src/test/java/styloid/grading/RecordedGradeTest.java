package styloid.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Evaluation;
import styloid.model.Item;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Outcome;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Region;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.Group;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;
import styloid.testkit.SampleEvaluations;

/** Grades as they come out of a record, with the limits, measurements and remarks in it. */
class RecordedGradeTest {
  private final Grading grading = new Grading();
  private final TestDefinition definition = grading.definition();
  private final SampleEvaluations samples = new SampleEvaluations(5);
  private final ArrayList<Entry> entries = new ArrayList<>();
  private final ArrayList<Precaution> precautions = new ArrayList<>();
  private Map<String, String> choices = Map.of();

  private void record(String item, Side side, Digit digit, Value value) {
    TestId test =
        item.matches(".*-(active|passive)") ? GradingDefinition.GONIOMETRY : definition.id();
    entries.add(samples.entry(new ItemKey(test, new ItemId(item), side, digit, 1), value));
  }

  private void right(String item, String code) {
    record(item, Side.RIGHT, Digit.NONE, new Choice(code));
  }

  private void absent(String item, Absence.Reason reason) {
    record(item, Side.RIGHT, Digit.NONE, new Absence(reason));
  }

  private void degrees(String item, String degrees) {
    record(item, Side.RIGHT, Digit.NONE, Quantity.of(degrees, Unit.DEGREE));
  }

  private Result result(String id, Side side, Digit digit) {
    PatientContext plain = samples.context(samples.patient(), Snapshot.of(entries));
    Evaluation head = plain.evaluation();
    PatientContext context =
        new PatientContext(
            plain.patient(),
            new Evaluation(
                head.id(),
                head.patient(),
                head.date(),
                head.therapist(),
                head.state(),
                head.versions(),
                choices),
            precautions,
            plain.snapshot().limitedTo(definition.refs(), definition.reads()),
            plain.results(),
            List.of());
    return Results.of(grading.results(context))
        .result(new ResultKey(definition.id(), new ResultId(id), side, digit))
        .orElseThrow();
  }

  private Result right(String id) {
    return result(id, Side.RIGHT, Digit.NONE);
  }

  private static Optional<Value> grade(String code) {
    return Optional.of(new Choice(code));
  }

  private String said(Result result) {
    Texts texts = new Texts(Map.of("grading", definition.labels()), Locale.ENGLISH);
    StringBuilder said = new StringBuilder();
    result.why().steps().forEach(step -> said.append(texts.text(step)).append('\n'));
    return said.toString();
  }

  private void limit(Precaution.Kind kind, Region region, Side side, Digit digit) {
    precautions.add(
        new Precaution(
            kind, region, side, digit, Optional.empty(), Optional.empty(), "A. Surgeon", ""));
  }

  @Test
  void sameRecordIsReadUnderEitherScheme() {
    right("wrist-extension-range", "full");
    right("wrist-extension-hold", "slight");
    assertEquals(grade("4"), right("wrist-extension-grade").value());
    choices = Map.of("grading.scheme", "plus-minus");
    assertEquals(grade("3+"), right("wrist-extension-grade").value());
    assertTrue(said(right("wrist-extension-grade")).contains("rule version 1"));
  }

  @Test
  void precautionInForceGivesAtLeastThreeAndSaysWhoSetIt() {
    right("wrist-flexion-range", "full");
    limit(Precaution.Kind.NO_RESISTANCE, Region.WRIST, Side.RIGHT, Digit.NONE);
    Result grade = right("wrist-flexion-grade");
    assertEquals(grade("at-least-3"), grade.value());
    assertTrue(said(grade).contains("no resistance, set by A. Surgeon"), said(grade));
  }

  @Test
  void precautionOfTheOtherSideDoesNotWithhold() {
    right("wrist-flexion-range", "full");
    limit(Precaution.Kind.NO_RESISTANCE, Region.WRIST, Side.LEFT, Digit.NONE);
    assertTrue(right("wrist-flexion-grade").outcome() instanceof Outcome.Incomplete);
  }

  @Test
  void precautionOnOneDigitWithholdsThatDigitOnly() {
    record("pip-flexion-range", Side.RIGHT, Digit.RING, new Choice("full"));
    record("pip-flexion-range", Side.RIGHT, Digit.INDEX, new Choice("full"));
    limit(Precaution.Kind.NO_RESISTANCE, Region.FINGERS, Side.RIGHT, Digit.RING);
    assertEquals(grade("at-least-3"), result("pip-flexion-grade", Side.RIGHT, Digit.RING).value());
    assertEquals(Optional.empty(), result("pip-flexion-grade", Side.RIGHT, Digit.INDEX).value());
  }

  @Test
  void resistanceGivenInSpiteOfThePrecautionCountsAndTheLimitIsNamed() {
    right("wrist-flexion-range", "full");
    right("wrist-flexion-hold", "strong");
    limit(Precaution.Kind.NO_RESISTANCE, Region.WRIST, Side.RIGHT, Digit.NONE);
    assertEquals(grade("5"), right("wrist-flexion-grade").value());
    assertTrue(said(right("wrist-flexion-grade")).contains("Limit in force"));
  }

  @ParameterizedTest
  @EnumSource(Absence.Reason.class)
  void anAbsentHoldIsIncompleteUnlessAPrecautionIsTheReason(Absence.Reason reason) {
    right("elbow-extension-range", "full");
    absent("elbow-extension-hold", reason);
    Result grade = right("elbow-extension-grade");
    assertEquals(
        reason == Absence.Reason.PRECAUTION ? grade("at-least-3") : Optional.empty(),
        grade.value());
    assertEquals(
        reason != Absence.Reason.PRECAUTION, grade.outcome() instanceof Outcome.Incomplete);
  }

  @ParameterizedTest
  @EnumSource(Absence.Reason.class)
  void anAbsentRangeIsIncompleteWhateverTheReason(Absence.Reason reason) {
    absent("elbow-extension-range", reason);
    Outcome outcome = right("elbow-extension-grade").outcome();
    assertEquals(
        List.of("elbow-extension-range"),
        ((Outcome.Incomplete) outcome).missing().stream().map(k -> k.item().value()).toList());
  }

  @Test
  void contradictionGivesNoGradeAndNamesBothObservations() {
    right("elbow-extension-range", "none");
    right("elbow-extension-hold", "strong");
    Result grade = right("elbow-extension-grade");
    assertTrue(grade.outcome() instanceof Outcome.Unavailable);
    String said = said(grade);
    assertTrue(said.contains("Range against gravity: none; Resistance held: strong"), said);
    assertEquals(grade("observations-contradict"), right("elbow-extension-doubt").value());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # range, hold, typed -> doubt
          full, strong,   5,  no-doubt
          full, strong,   4,  typed-contradicted
          full, slight,   3+, no-doubt
          full, slight,   4,  no-doubt
          full, not-given,4-, no-doubt
          full, not-given,2,  typed-contradicted
          full, -,        4+, no-doubt
          none, -,        3,  typed-contradicted
          none, -,        2-, no-doubt
          -,    -,        3,  no-doubt
          none, strong,   3,  observations-contradict
          """)
  void typedGradeStandsAndIsDoubtedOnlyWhereWhatWasSeenExcludesIt(
      String range, String hold, String typed, String doubt) {
    if (!range.equals("-")) {
      right("elbow-extension-range", range);
    }
    if (!hold.equals("-")) {
      right("elbow-extension-hold", hold);
    }
    right("elbow-extension-typed", typed);
    assertEquals(grade(typed), right("elbow-extension-grade").value());
    assertTrue(said(right("elbow-extension-grade")).contains("The therapist typed"));
    assertEquals(grade(doubt), right("elbow-extension-doubt").value());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          strong,   substitution
          slight,   substitution
          gave-way, no-doubt
          """)
  void substitutionMakesOnlyAStrongGradeDoubtful(String hold, String doubt) {
    right("wrist-extension-range", "full");
    right("wrist-extension-hold", hold);
    right("wrist-extension-substitution", "yes");
    assertEquals(grade(doubt), right("wrist-extension-doubt").value());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # range called, active and passive measured, error set -> doubt
          full,           115,   120, ,   no-doubt
          full,           114.9, 120, ,   short-of-passive
          full,           110,   120, 10, no-doubt
          full,           -20,   0,   ,   short-of-passive
          more-than-half, 116,   120, ,   reaches-passive
          more-than-half, 80,    120, ,   no-doubt
          less-than-half, 30,    120, ,   no-doubt
          """)
  void rangeIsHeldAgainstThePassiveRangeMeasured(
      String range, String active, String passive, String error, String doubt) {
    right("elbow-flexion-mid-range", range);
    right(
        range.equals("full") ? "elbow-flexion-mid-hold" : "elbow-flexion-mid-reduced",
        range.equals("full") ? "moderate" : "full");
    degrees("elbow-flexion-active", active);
    degrees("elbow-flexion-passive", passive);
    choices = error == null ? Map.of() : Map.of("goniometry.error", error);
    assertEquals(grade(doubt), right("elbow-flexion-mid-doubt").value());
    assertTrue(said(right("elbow-flexion-mid-grade")).contains(passive.replace("-", "") + "°"));
  }

  @Test
  void rangeOfADigitIsHeldAgainstThePassiveRangeOfThatDigit() {
    for (String side : List.of("active", "passive")) {
      Value degrees = Quantity.of(side.equals("active") ? "40" : "80", Unit.DEGREE);
      record("thumb-ip-flexion-" + side, Side.RIGHT, Digit.THUMB, degrees);
      record("pip-flexion-" + side, Side.RIGHT, Digit.RING, degrees);
    }
    strength("thumb-ip-flexion", "strong");
    for (Digit digit : List.of(Digit.RING, Digit.LITTLE)) {
      record("pip-flexion-range", Side.RIGHT, digit, new Choice("full"));
      record("pip-flexion-hold", Side.RIGHT, digit, new Choice("strong"));
    }
    assertEquals(grade("short-of-passive"), right("thumb-ip-flexion-doubt").value());
    assertEquals(
        grade("short-of-passive"), result("pip-flexion-doubt", Side.RIGHT, Digit.RING).value());
    assertEquals(grade("no-doubt"), result("pip-flexion-doubt", Side.RIGHT, Digit.LITTLE).value());
  }

  @Test
  void severalDoubtsAreAllSaid() {
    right("elbow-flexion-mid-range", "full");
    right("elbow-flexion-mid-hold", "strong");
    right("elbow-flexion-mid-substitution", "yes");
    right("elbow-flexion-mid-typed", "4");
    degrees("elbow-flexion-active", "60");
    degrees("elbow-flexion-passive", "120");
    Result doubt = right("elbow-flexion-mid-doubt");
    assertEquals(grade("several-doubts"), doubt.value());
    assertEquals(3, doubt.why().steps().size());
  }

  @Test
  void rollUpGathersLowestMedianAndCountByNerveAndRootOfOneSide() {
    strength("wrist-extension-radial", "strong");
    strength("elbow-extension", "moderate");
    strength("wrist-extension-ulnar", "gave-way");
    strength("thumb-ip-extension", "gave-way");
    right("elbow-flexion-palm-up-range", "full");
    right("elbow-flexion-palm-up-hold", "strong");
    assertEquals(grade("3"), right("nerve-radial-lowest").value());
    assertEquals(grade("3"), right("nerve-radial-median").value());
    assertEquals(count(4), right("nerve-radial-count").value());
    assertEquals(count(2), right("nerve-posterior-interosseous-count").value());
    assertEquals(count(1), right("nerve-musculocutaneous-count").value());
    assertEquals(grade("5"), right("root-c5-lowest").value());
    assertTrue(said(right("nerve-radial-lowest")).contains("Elbow extension: 4"));
    assertTrue(said(right("nerve-radial-lowest")).contains("no diagnosis"));
    assertEquals(Optional.empty(), result("nerve-radial-lowest", Side.LEFT, Digit.NONE).value());
  }

  @Test
  void rollUpOfTheOtherSideRestsOnItsOwnMotionsOnly() {
    strength("elbow-extension", "strong");
    for (String motion : List.of("elbow-extension", "wrist-extension-radial")) {
      record(motion + "-range", Side.LEFT, Digit.NONE, new Choice("full"));
      record(motion + "-hold", Side.LEFT, Digit.NONE, new Choice("moderate"));
    }
    assertEquals(grade("5"), right("root-c7-lowest").value());
    assertEquals(count(1), right("root-c7-count").value());
    Result left = result("root-c7-lowest", Side.LEFT, Digit.NONE);
    assertEquals(grade("4"), left.value());
    assertEquals(count(2), result("root-c7-count", Side.LEFT, Digit.NONE).value());
    assertTrue(said(left).contains("Wrist extension to the thumb side"), said(left));
    assertFalse(said(right("root-c7-lowest")).contains("Wrist extension"));
  }

  private void strength(String motion, String hold) {
    right(motion + "-range", "full");
    right(motion + "-hold", hold);
  }

  private static Optional<Value> count(int number) {
    return Optional.of(Quantity.of(Integer.toString(number), Unit.COUNT));
  }

  @Test
  void aBoundIsNamedInARollUpButNotCounted() {
    strength("elbow-extension", "not-given");
    assertEquals(Optional.empty(), right("nerve-radial-lowest").value());
    strength("thumb-ip-extension", "moderate");
    assertEquals(count(1), right("nerve-radial-count").value());
    assertTrue(said(right("nerve-radial-count")).contains("at least 3"));
  }

  /** Walks every way through the questions as a form does, and asks what the rule asks. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # full: 8 holds; short of full: 3, 3, 4 ways with gravity
          whole,      wrist-flexion,    18
          # the share of the range is the grade: 1, 1, 4 ways
          plus-minus, wrist-flexion,    14
          # range alone: 1, 1, 2 ways
          whole,      thumb-opposition, 12
          plus-minus, thumb-opposition, 12
          """)
  void conditionsAskExactlyWhatTheRuleNeedsNextAndStopWhenItIsDecided(
      String scheme, String motion, int ends) {
    Snapshot nothing = Snapshot.empty().under(Map.of(Scheme.CHOICE, scheme));
    assertEquals(
        ends, walk(definition.groupOf(new ItemId(motion + "-range")).orElseThrow(), nothing));
  }

  private int walk(Group group, Snapshot snapshot) {
    Motion motion =
        Motion.catalogue(Muscle.table()).stream()
            .filter(m -> m.id().equals(group.id()))
            .findFirst()
            .orElseThrow();
    PatientContext plain = samples.context(samples.patient(), snapshot);
    PatientContext context = plain.withChoice(Scheme.CHOICE, Scheme.of(snapshot.choices()).code());
    Decision decision =
        new Place(context, motion, group, Side.LEFT, motion.digits().iterator().next()).decision();
    Optional<Item> asked =
        group.items().stream()
            .filter(item -> !item.optional() && snapshot.entry(key(item)).isEmpty())
            .filter(item -> item.askWhen().holds(snapshot, key(item)))
            .findFirst();
    if (!(decision instanceof Decision.Needs needs)) {
      assertTrue(asked.isEmpty(), () -> "still asks " + asked + " after " + decision);
      return 1;
    }
    assertEquals(group.id() + "-" + needs.next().code(), asked.orElseThrow().id().value());
    int ends = 0;
    for (String code : ((ItemKind.Choices) asked.get().kind()).codes()) {
      ends += walk(group, snapshot.with(samples.entry(key(asked.get()), new Choice(code))));
    }
    return ends;
  }

  private ItemKey key(Item item) {
    return new ItemKey(definition.id(), item.id(), Side.LEFT, item.digits().iterator().next(), 1);
  }

  @Test
  void anEntirelyNormalMotionCostsTwoKeys() {
    for (Group group : definition.groups()) {
      Item range = group.items().get(0);
      Item hold = group.items().get(1);
      assertEquals("full", ((ItemKind.Choices) range.kind()).codes().get(0));
      assertEquals("strong", ((ItemKind.Choices) hold.kind()).codes().get(0));
      Digit digit = range.digits().stream().sorted().findFirst().orElseThrow();
      Snapshot normal =
          Snapshot.of(
              List.of(
                  samples.entry(at(range, digit), new Choice("full")),
                  samples.entry(at(hold, digit), new Choice("strong"))));
      for (Item item : group.items().subList(2, group.items().size())) {
        assertTrue(
            item.optional() || !item.askWhen().holds(normal, at(item, digit)), item.id().value());
      }
    }
  }

  private ItemKey at(Item item, Digit digit) {
    return new ItemKey(definition.id(), item.id(), Side.RIGHT, digit, 1);
  }

  @Test
  void typingAGradeEndsTheAsking() {
    right("wrist-flexion-typed", "4");
    Snapshot typed = Snapshot.of(entries);
    Group group = definition.groupOf(new ItemId("wrist-flexion-typed")).orElseThrow();
    for (Item item : group.items()) {
      assertTrue(
          item.optional() || !item.askWhen().holds(typed, at(item, Digit.NONE)), item.id().value());
    }
    assertFalse(group.items().isEmpty());
  }

  @Test
  void allAbsentGivesNoGradeAndNoRollUp() {
    for (Side side : List.of(Side.RIGHT, Side.LEFT)) {
      for (ItemKey key : definition.keys()) {
        if (key.side() == side) {
          entries.add(samples.entry(key, new Absence(Absence.Reason.NOT_DONE)));
        }
      }
    }
    PatientContext context = samples.context(samples.patient(), Snapshot.of(entries));
    for (Result result : grading.results(context)) {
      assertTrue(result.outcome() instanceof Outcome.Incomplete, () -> "" + result.key());
    }
  }

  @Test
  void everyRuleStepHasWords() {
    for (Scheme scheme : Scheme.values()) {
      for (Criteria criteria : Criteria.values()) {
        for (Observed seen : Combinations.all(criteria)) {
          if (GradeRule.decide(seen, scheme, criteria) instanceof Decision.Given given) {
            Grade grade = given.grade();
            boolean own =
                criteria == Criteria.RANGE_ONLY && (grade == Grade.G2 || grade == Grade.G2_MINUS);
            String key = "rule." + (own ? "range-only" : scheme.code()) + "." + grade.code();
            assertTrue(definition.labels().find("en", key).isPresent(), key);
          }
        }
      }
    }
  }
}
