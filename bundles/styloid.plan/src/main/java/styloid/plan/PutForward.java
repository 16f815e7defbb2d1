package styloid.plan;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import styloid.model.Choice;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;

/**
 * Which steps are part of an evaluation, as far as results say. A result whose id is {@code
 * <motion>}{@value #NEXT} decides on a motion for one side: a choice of {@link #AGAINST} is against
 * it, every other value is not, and without a value nothing is decided. It speaks for every group
 * of other tests that has an item named after the motion. A step is left out only when all motions
 * that are named for its group and side are decided against, so that what was not looked at stays
 * in.
 */
public final class PutForward implements Predicate<StepId> {
  public static final String NEXT = "-next";
  public static final Set<String> AGAINST = Set.of("not-needed", "dropped");

  private final Set<StepId> leftOut;

  private PutForward(Set<StepId> leftOut) {
    this.leftOut = leftOut;
  }

  /** A result that decides on a motion. */
  private record Decider(TestId test, ResultId result) {
    String motion() {
      String id = result.value();
      return id.substring(0, id.length() - NEXT.length());
    }
  }

  /** What is decided for one side. */
  private record Decision(Decider decider, Side side) {}

  /** What these results decide on the steps of these tests. */
  public static PutForward of(List<TestDefinition> tests, Results results) {
    List<Decider> deciders = deciders(tests);
    Map<Decision, Boolean> against = against(results);
    HashSet<StepId> leftOut = new HashSet<>();
    for (TestDefinition test : tests) {
      for (Group group : test.groups()) {
        List<Decider> named =
            deciders.stream()
                .filter(d -> !d.test().equals(test.id()))
                .filter(d -> EvaluationSteps.isAbout(group, d.motion()))
                .toList();
        for (Side side : group.sides()) {
          if (!named.isEmpty()
              && named.stream().allMatch(d -> against.getOrDefault(new Decision(d, side), false))) {
            leftOut.add(new StepId(test.id(), group.id(), side, false));
          }
        }
      }
    }
    return new PutForward(Set.copyOf(leftOut));
  }

  @Override
  public boolean test(StepId id) {
    return !leftOut.contains(new StepId(id.test(), id.group(), id.side(), false));
  }

  private static List<Decider> deciders(List<TestDefinition> tests) {
    ArrayList<Decider> deciders = new ArrayList<>();
    for (TestDefinition test : tests) {
      for (ResultDefinition result : test.results()) {
        if (decides(result.id())) {
          deciders.add(new Decider(test.id(), result.id()));
        }
      }
    }
    return deciders;
  }

  private static boolean decides(ResultId id) {
    return id.value().endsWith(NEXT);
  }

  /** Digits of one side are against it only together. */
  private static Map<Decision, Boolean> against(Results results) {
    HashMap<Decision, Boolean> against = new HashMap<>();
    for (Result result : results.all()) {
      if (decides(result.key().result())) {
        Decider decider = new Decider(result.key().test(), result.key().result());
        against.merge(
            new Decision(decider, result.key().side()), isAgainst(result), Boolean::logicalAnd);
      }
    }
    return against;
  }

  private static boolean isAgainst(Result result) {
    return result
        .value()
        .filter(value -> value instanceof Choice choice && AGAINST.contains(choice.code()))
        .isPresent();
  }
}
