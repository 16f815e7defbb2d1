package styloid.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import styloid.model.Codes;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.plan.PlanStep.State;
import styloid.spi.Position;
import styloid.spi.Position.Body;
import styloid.spi.Position.Rotation;
import styloid.spi.Position.Support;

/**
 * A whole evaluation of both arms, the left involved, in the positions such tests are usually done
 * in (common practice, no source): one line a group, as region, position and, where motion with
 * gravity reduced is tested at all, that position.
 */
final class FullEvaluation {
  private static final String SCREEN =
      """
            shoulder sitting/free/any -
            elbow sitting/free/any -
            forearm sitting/elbow-bent/any -
            wrist sitting/elbow-bent/any -
            fingers sitting/elbow-bent/any -
            thumb sitting/elbow-bent/any -
            hand sitting/elbow-bent/any -
            hand sitting/elbow-bent/any -
            limb sitting/free/any -
      """;
  private static final String GONIOMETRY =
      """
            shoulder sitting/free/mid -
            shoulder sitting/free/palm-up -
            shoulder sitting/held/palm-down -
            shoulder supine/held/mid -
            elbow sitting/upper-arm-on-table/palm-up -
            forearm sitting/elbow-bent/mid -
            wrist sitting/forearm-on-table/palm-down -
            wrist sitting/hand-on-table/palm-down -
            fingers sitting/hand-on-table/mid -
            fingers sitting/hand-on-table/mid -
            fingers sitting/hand-on-table/mid -
            thumb sitting/hand-on-table/mid -
            thumb sitting/hand-on-table/mid -
            thumb sitting/hand-on-table/mid -
            thumb sitting/hand-on-table/palm-down -
            hand sitting/hand-on-table/palm-up -
            hand sitting/hand-on-table/palm-up -
            hand sitting/hand-on-table/palm-down -
      """;
  private static final String GRADING =
      """
            shoulder sitting/free/mid side-lying/held/any
            shoulder prone/free/palm-up side-lying/held/any
            shoulder sitting/free/mid supine/held/mid
            shoulder side-lying/free/any supine/held/any
            shoulder sitting/free/mid side-lying/held/mid
            shoulder prone/upper-arm-on-table/any sitting/upper-arm-on-table/any
            shoulder supine/free/any sitting/upper-arm-on-table/any
            shoulder prone/upper-arm-on-table/any sitting/elbow-bent/mid
            shoulder prone/upper-arm-on-table/any sitting/elbow-bent/mid
            shoulder sitting/free/any prone/held/any
            shoulder prone/upper-arm-on-table/any sitting/upper-arm-on-table/any
            shoulder sitting/free/mid sitting/upper-arm-on-table/mid
            shoulder prone/free/mid prone/held/mid
            elbow sitting/free/palm-up sitting/upper-arm-on-table/palm-up
            elbow sitting/free/palm-down sitting/upper-arm-on-table/palm-down
            elbow sitting/free/mid sitting/upper-arm-on-table/mid
            elbow prone/upper-arm-on-table/mid sitting/upper-arm-on-table/mid
            forearm sitting/elbow-bent/mid -
            forearm sitting/elbow-bent/mid -
            wrist sitting/forearm-on-table/palm-up sitting/hand-on-table/mid
            wrist sitting/forearm-on-table/palm-up sitting/hand-on-table/mid
            wrist sitting/forearm-on-table/palm-up sitting/hand-on-table/mid
            wrist sitting/forearm-on-table/palm-down sitting/hand-on-table/mid
            wrist sitting/forearm-on-table/palm-down sitting/hand-on-table/mid
            wrist sitting/forearm-on-table/palm-down sitting/hand-on-table/mid
            wrist sitting/forearm-on-table/mid sitting/hand-on-table/palm-down
            wrist sitting/held/palm-down sitting/hand-on-table/palm-down
            fingers sitting/forearm-on-table/palm-up -
            fingers sitting/hand-on-table/palm-down -
            fingers sitting/hand-on-table/palm-up -
            fingers sitting/hand-on-table/palm-up -
            fingers sitting/hand-on-table/palm-down -
            fingers sitting/hand-on-table/palm-down -
            thumb sitting/hand-on-table/palm-up -
            thumb sitting/hand-on-table/palm-up -
            thumb sitting/hand-on-table/mid -
            thumb sitting/hand-on-table/mid -
            thumb sitting/hand-on-table/palm-up -
            thumb sitting/hand-on-table/mid -
            thumb sitting/hand-on-table/palm-down -
            thumb sitting/hand-on-table/palm-up -
            fingers sitting/hand-on-table/palm-up -
      """;
  private static final String GRIP =
      """
            hand sitting/elbow-bent/mid -
            hand sitting/elbow-bent/mid -
            hand sitting/elbow-bent/mid -
            hand sitting/elbow-bent/mid -
      """;

  private FullEvaluation() {}

  /**
   * The steps.
   *
   * @param reduced how many of a hundred motions of the left arm need the gravity-reduced position
   * @param painful how many of a hundred steps of the left arm hurt
   */
  static List<PlanStep> steps(long seed, int reduced, int painful) {
    Random random = new Random(seed);
    ArrayList<PlanStep> steps = new ArrayList<>();
    add(steps, "screen", Stage.SCREEN, SCREEN, random, 0, painful);
    add(steps, "goniometry", Stage.GONIOMETRY, GONIOMETRY, random, 0, painful);
    add(steps, "grading", Stage.RESISTANCE, GRADING, random, reduced, painful);
    add(steps, "grip", Stage.RESISTANCE, GRIP, random, 0, painful);
    return steps;
  }

  private static void add(
      List<PlanStep> steps,
      String test,
      Stage stage,
      String groups,
      Random random,
      int reduced,
      int painful) {
    int order = 0;
    for (String line : groups.strip().split("\\R")) {
      String[] parts = line.strip().split(" ");
      for (Side side : new Side[] {Side.RIGHT, Side.LEFT}) {
        boolean left = side == Side.LEFT;
        boolean hurts = left && random.nextInt(100) < painful;
        StepId id = new StepId(new TestId(test), "group-" + order, side, false);
        steps.add(step(id, stage, order, parts[0], parts[1], hurts));
        if (left && !parts[2].equals("-") && random.nextInt(100) < reduced) {
          StepId other = new StepId(id.test(), id.group(), side, true);
          steps.add(step(other, stage, order, parts[0], parts[2], hurts));
        }
      }
      order++;
    }
  }

  private static PlanStep step(
      StepId id, Stage stage, int order, String region, String position, boolean hurts) {
    boolean involved = id.side() == Side.LEFT;
    return new PlanStep(
        id,
        Region.valueOf(region.toUpperCase(Locale.ROOT)),
        stage,
        order,
        Optional.of(position(position)),
        hurts,
        involved,
        State.TO_DO);
  }

  private static Position position(String text) {
    String[] parts = text.split("/");
    return new Position(
        Codes.parse(Body.class, parts[0]),
        Codes.parse(Support.class, parts[1]),
        Codes.parse(Rotation.class, parts[2]));
  }
}
