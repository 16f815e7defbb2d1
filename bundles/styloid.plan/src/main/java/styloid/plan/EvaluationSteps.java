package styloid.plan;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import styloid.model.Choice;
import styloid.model.Demand;
import styloid.model.Entry;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.PatientContext;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.plan.PlanStep.State;
import styloid.spi.Group;
import styloid.spi.Position;
import styloid.spi.TestDefinition;
import styloid.spi.Withheld;

/**
 * Reads from test definitions and the patient context what there is to do. A step is a group on one
 * side. It is to do while an item that is asked, not optional and not withheld by a precaution has
 * no entry (an absence is one); done when nothing of that kind is left and something was recorded;
 * else left out.
 *
 * <p>Two endings of item ids have a meaning here: {@value #PAIN} for a choice whose answer {@value
 * #YES} says that a motion hurts, and {@value #REDUCED} for an item that is done in the group's
 * position of reduced gravity, as is every item asked because of its answer.
 */
public final class EvaluationSteps {
  public static final String PAIN = "-pain";
  public static final String YES = "yes";
  public static final String REDUCED = "-reduced";

  private final PatientContext context;
  private final Optional<StepId> inProgress;
  private final List<ItemKey> pains;

  private EvaluationSteps(PatientContext context, Optional<StepId> inProgress) {
    this.context = context;
    this.inProgress = inProgress;
    this.pains = pains(context.snapshot().entries());
  }

  /**
   * The steps of an evaluation, done ones included.
   *
   * @param tests in the order they are listed
   * @param context whose entries of all these tests may be read
   * @param inProgress the step under way; it is there even if nothing of it is left to record
   * @param wanted which other steps are part of this evaluation, such as {@link PutForward}
   */
  public static List<PlanStep> of(
      List<TestDefinition> tests,
      PatientContext context,
      Optional<StepId> inProgress,
      Predicate<StepId> wanted) {
    EvaluationSteps reader = new EvaluationSteps(context, inProgress);
    ArrayList<PlanStep> steps = new ArrayList<>();
    int order = 0;
    for (TestDefinition test : tests) {
      for (Group group : test.groups()) {
        for (Side side : group.sides()) {
          for (boolean reduced : new boolean[] {false, true}) {
            StepId id = new StepId(test.id(), group.id(), side, reduced);
            if (inProgress.equals(Optional.of(id)) || wanted.test(id)) {
              reader.step(test, group, id, order).ifPresent(steps::add);
            }
          }
        }
        order++;
      }
    }
    return steps;
  }

  /** The step a key belongs to; empty when the test has no such key. */
  public static Optional<StepId> stepOf(TestDefinition test, ItemKey key) {
    return test.groupOf(key.item())
        .filter(group -> test.has(key))
        .map(
            group ->
                new StepId(
                    test.id(),
                    group.id(),
                    key.side(),
                    gravityReduced(test.item(key.item()).orElseThrow())));
  }

  private Optional<PlanStep> step(TestDefinition test, Group group, StepId id, int order) {
    return state(group, id)
        .map(
            state ->
                new PlanStep(
                    id,
                    group.region(),
                    stage(test),
                    order,
                    position(group, id),
                    painful(group, id.side()),
                    context.patient().involved().contains(id.side()),
                    state));
  }

  private static Optional<Position> position(Group group, StepId id) {
    return id.gravityReduced() ? group.guide().gravityReduced() : group.guide().position();
  }

  /** A test belongs to the stage of what is hardest on the limb in it. */
  static Stage stage(TestDefinition test) {
    boolean measures = false;
    for (Item item : test.items()) {
      if (item.demand() == Demand.RESISTANCE || item.demand() == Demand.GRIP_OR_PINCH) {
        return Stage.RESISTANCE;
      }
      measures |= item.kind() instanceof ItemKind.Number;
    }
    return measures ? Stage.GONIOMETRY : Stage.SCREEN;
  }

  private Optional<State> state(Group group, StepId id) {
    if (inProgress.equals(Optional.of(id))) {
      return Optional.of(State.IN_PROGRESS);
    }
    boolean recorded = false;
    for (Item item : group.items()) {
      if (item.sides().contains(id.side()) && gravityReduced(item) == id.gravityReduced()) {
        for (ItemKey key : item.keys(id.test(), id.side())) {
          if (open(group, item, key)) {
            return Optional.of(State.TO_DO);
          }
          recorded |= context.snapshot().entry(key).isPresent();
        }
      }
    }
    return recorded ? Optional.of(State.DONE) : Optional.empty();
  }

  private static boolean gravityReduced(Item item) {
    return item.id().value().endsWith(REDUCED)
        || item.askWhen().reads().stream().anyMatch(read -> read.value().endsWith(REDUCED));
  }

  private boolean open(Group group, Item item, ItemKey key) {
    Snapshot snapshot = context.snapshot();
    return !item.optional()
        && snapshot.entry(key).isEmpty()
        && item.askWhen().holds(snapshot, key)
        && Withheld.by(group, item, key, context.precautions(), context.evaluation().date())
            .isEmpty();
  }

  private static List<ItemKey> pains(Collection<Entry> entries) {
    return entries.stream()
        .filter(e -> e.value().filter(v -> v.equals(new Choice(YES))).isPresent())
        .map(Entry::key)
        .filter(key -> key.item().value().endsWith(PAIN))
        .toList();
  }

  /** Whether an item of the group on this side is about a motion that was found to hurt. */
  private boolean painful(Group group, Side side) {
    for (ItemKey pain : pains) {
      String item = pain.item().value();
      String motion = item.substring(0, item.length() - PAIN.length());
      if (pain.side() == side && isAbout(group, motion)) {
        return true;
      }
    }
    return false;
  }

  /** Whether a group has an item named after a motion: of that id, or beginning with it. */
  static boolean isAbout(Group group, String motion) {
    return group.items().stream().anyMatch(item -> isOf(motion, item.id().value()));
  }

  private static boolean isOf(String motion, String item) {
    return item.startsWith(motion)
        && (item.length() == motion.length() || item.charAt(motion.length()) == '-');
  }
}
