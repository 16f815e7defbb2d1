package styloid.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Choice;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.Region;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Guide;
import styloid.spi.Labels;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;

class PutForwardTest {
  private static final TestId LOOK = new TestId("look");
  private static final TestId MEASURE = new TestId("measure");
  private static final Explanation WHY =
      new Explanation(
          List.of(Message.verbatim("seen")),
          List.of(Source.commonPractice()),
          "rule",
          Optional.empty());
  private static final TestDefinition LOOKED =
      test(LOOK, List.of("bend", "stretch"), group("joint", "bend", "stretch"));
  private static final TestDefinition MEASURED =
      test(
          MEASURE,
          List.of(),
          group("joint", "bend-active", "stretch-active"),
          group("one", "bend"),
          group("other", "bending-active"));

  private final List<Result> results = new ArrayList<>();

  private static Group group(String id, String... items) {
    return new Group(
        id,
        Region.ELBOW,
        Set.of(Region.ELBOW),
        List.of(items).stream()
            .map(i -> Item.bothSides(i, ItemKind.Choices.of("full", "part"), Demand.NONE))
            .toList(),
        Group.Walk.SIDE_BY_SIDE,
        Group.Layout.LIST,
        List.of(),
        Guide.none());
  }

  private static TestDefinition test(TestId id, List<String> motions, Group... groups) {
    List<ResultDefinition> results =
        motions.stream()
            .map(
                motion ->
                    new ResultDefinition(
                        new ResultId(motion + "-next"),
                        Optional.empty(),
                        0,
                        Item.BOTH,
                        Item.NO_DIGIT,
                        Optional.empty()))
            .toList();
    return new TestDefinition(
        id,
        "1",
        1,
        List.of(groups),
        List.of(),
        List.of(),
        results,
        Set.of(),
        new Labels(Map.of("en", Map.of())));
  }

  private static ResultKey key(String motion, Side side) {
    return new ResultKey(LOOK, new ResultId(motion + "-next"), side, Digit.NONE);
  }

  private void decide(String motion, Side side, String code) {
    results.add(Result.computed(key(motion, side), new Choice(code), WHY));
  }

  private boolean wanted(TestId test, String group, Side side) {
    return PutForward.of(List.of(LOOKED, MEASURED), Results.of(results))
        .test(new StepId(test, group, side, false));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          put-forward, true
          added,       true
          not-needed,  false
          dropped,     false
          something,   true
          """)
  void whatIsDecidedForAMotionHoldsForItsGroupsElsewhereOnThatSide(String code, boolean in) {
    decide("bend", Side.RIGHT, code);
    assertEquals(in, wanted(MEASURE, "one", Side.RIGHT));
    assertTrue(wanted(MEASURE, "one", Side.LEFT));
  }

  @Test
  void beforeAnythingWasLookedAtEverythingIsWanted() {
    for (String group : List.of("joint", "one", "other")) {
      assertTrue(wanted(MEASURE, group, Side.LEFT), group);
    }
  }

  @Test
  void anOpenDecisionKeepsTheStep() {
    Message reason = Message.verbatim("not looked at");
    results.add(Result.incomplete(key("bend", Side.RIGHT), reason, List.of(), WHY));
    assertTrue(wanted(MEASURE, "one", Side.RIGHT));
  }

  @Test
  void aGroupOfTwoMotionsIsLeftOutOnlyWhenBothAre() {
    decide("bend", Side.RIGHT, "not-needed");
    assertTrue(wanted(MEASURE, "joint", Side.RIGHT));
    decide("stretch", Side.RIGHT, "dropped");
    assertEquals(false, wanted(MEASURE, "joint", Side.RIGHT));
  }

  @Test
  void whatNoMotionNamesIsAlwaysWanted() {
    decide("bend", Side.RIGHT, "not-needed");
    assertTrue(wanted(MEASURE, "other", Side.RIGHT));
  }

  @Test
  void theTestThatDecidesIsNotLeftOutByItsOwnWord() {
    decide("bend", Side.RIGHT, "not-needed");
    decide("stretch", Side.RIGHT, "not-needed");
    assertTrue(wanted(LOOK, "joint", Side.RIGHT));
  }

  @Test
  void theGravityReducedStepGoesWithItsGroup() {
    decide("bend", Side.LEFT, "dropped");
    PutForward wanted = PutForward.of(List.of(LOOKED, MEASURED), Results.of(results));
    assertEquals(false, wanted.test(new StepId(MEASURE, "one", Side.LEFT, true)));
  }
}
