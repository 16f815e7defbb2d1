package styloid.plan;

import java.util.Comparator;
import java.util.Objects;
import java.util.Optional;
import styloid.model.Codes;
import styloid.model.Message;
import styloid.model.Region;
import styloid.spi.Position;

/**
 * One thing to do on one side without changing position.
 *
 * @param order place in the plain listing among steps of the same region, lowest first
 * @param position how the patient is placed; empty when any position will do, and {@link
 *     Position.Rotation#ANY} when any forearm rotation will
 * @param painful whether this motion was found painful on this side
 * @param involved whether this side is under treatment
 */
public record PlanStep(
    StepId id,
    Region region,
    Stage stage,
    int order,
    Optional<Position> position,
    boolean painful,
    boolean involved,
    State state) {

  /** How far a step is. */
  public enum State {
    TO_DO,
    IN_PROGRESS,
    DONE;

    public String code() {
      return Codes.of(this);
    }
  }

  /**
   * The plain order: stage by stage, painful steps last in each, proximal to distal, the involved
   * side second, steps with gravity reduced joint by joint after those against gravity.
   */
  static final Comparator<PlanStep> PLAIN =
      Comparator.comparing(PlanStep::stage)
          .thenComparing(PlanStep::painful)
          .thenComparing(PlanStep::region)
          .thenComparing(s -> s.id.gravityReduced())
          .thenComparing(PlanStep::jointFirst)
          .thenComparingInt(PlanStep::order)
          .thenComparing(s -> s.id.test())
          .thenComparing(s -> s.id.group())
          .thenComparing(PlanStep::involved)
          .thenComparing(s -> s.id.side());

  public PlanStep {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(region, "region");
    Objects.requireNonNull(stage, "stage");
    Objects.requireNonNull(position, "position");
    Objects.requireNonNull(state, "state");
  }

  /** Words of the group, in the labels of its test. */
  public Message label() {
    return Message.of(id.test(), "group." + id.group());
  }

  public PlanStep withState(State other) {
    return new PlanStep(id, region, stage, order, position, painful, involved, other);
  }

  /** Steps against gravity are listed motion by motion, the others joint by joint. */
  private String jointFirst() {
    return id.gravityReduced()
        ? (involved ? "1" : "0") + id.side().ordinal() + id.test().value()
        : "";
  }

  /** The joint of one limb whose steps with gravity reduced belong together. */
  Joint joint() {
    return new Joint(id.test(), region, id.side());
  }
}
