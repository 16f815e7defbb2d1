package styloid.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.plan.PlanStep.State;
import styloid.spi.Position;
import styloid.spi.Position.Body;
import styloid.spi.Position.Rotation;
import styloid.spi.Position.Support;

/** Made-up steps, the same for the same seed. */
final class Cases {
  /** What a random case may contain. */
  record Kind(int steps, int stages, int bodies, int supports, boolean reduced, boolean begun) {}

  private final Random random;

  Cases(long seed) {
    random = new Random(seed);
  }

  List<PlanStep> steps(Kind kind) {
    int involved = random.nextInt(3);
    LinkedHashMap<StepId, PlanStep> steps = new LinkedHashMap<>();
    while (steps.size() < kind.steps()) {
      Side side = random.nextBoolean() ? Side.RIGHT : Side.LEFT;
      boolean reduced = kind.reduced() && random.nextInt(3) == 0;
      int motion = random.nextInt(kind.steps());
      StepId id = new StepId(new TestId("test"), "motion-" + motion, side, reduced);
      steps.putIfAbsent(
          id,
          new PlanStep(
              id,
              Region.values()[motion % 3],
              Stage.values()[random.nextInt(kind.stages())],
              motion,
              position(kind),
              random.nextInt(5) == 0,
              side.ordinal() == involved,
              State.TO_DO));
    }
    ArrayList<PlanStep> list = new ArrayList<>(steps.values());
    if (kind.begun() && random.nextBoolean()) {
      list.set(0, list.get(0).withState(State.IN_PROGRESS));
    }
    return list;
  }

  Optional<Position> position(Kind kind) {
    if (random.nextInt(12) == 0) {
      return Optional.empty();
    }
    return Optional.of(
        new Position(
            Body.values()[random.nextInt(kind.bodies())],
            Support.values()[random.nextInt(kind.supports())],
            Rotation.values()[random.nextInt(Rotation.values().length)]));
  }

  /** Steps of one stage, not painful, in so many different positions. */
  List<PlanStep> positions(int count, int bodies, int supports) {
    Kind kind = new Kind(count, 1, bodies, supports, false, false);
    LinkedHashMap<Position, PlanStep> steps = new LinkedHashMap<>();
    for (int i = 0; steps.size() < count; i++) {
      Position position = position(kind).orElse(null);
      if (position != null) {
        steps.putIfAbsent(position, step("motion-" + i, i, Side.RIGHT, position));
      }
    }
    return new ArrayList<>(steps.values());
  }

  static PlanStep step(String group, int order, Side side, Position position) {
    return new PlanStep(
        new StepId(new TestId("test"), group, side, false),
        Region.WRIST,
        Stage.RESISTANCE,
        order,
        Optional.ofNullable(position),
        false,
        false,
        State.TO_DO);
  }
}
