package styloid.shell.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.plan.EvaluationSteps;
import styloid.plan.Plan;
import styloid.plan.StepId;
import styloid.session.OpenEvaluation;
import styloid.spi.Group;
import styloid.spi.TestDefinition;
import styloid.spi.Withheld;

/** Where steps begin and end on the work sheet, and what comes after one. */
record StepWay(OpenEvaluation open) {

  /** Where entry of a step begins: the first place to be filled, else the first of all. */
  Optional<ItemKey> start(StepId step) {
    return firstOpen(step).or(() -> keys(step).stream().findFirst());
  }

  /** The first place of a step that must be filled and is not. */
  Optional<ItemKey> firstOpen(StepId step) {
    return keys(step).stream().filter(this::mustBeFilled).findFirst();
  }

  /**
   * Where to go on when the work sheet would lead from one place to another, or off the page.
   *
   * @return the next step of the order with something to fill; empty when the step goes on, or
   *     nothing is left to do
   */
  Optional<ItemKey> onward(ItemKey from, Optional<ItemKey> to) {
    Optional<StepId> here = step(from);
    Optional<Plan> order = open.order();
    if (here.isEmpty() || order.isEmpty() || goesOn(from, to)) {
      return Optional.empty();
    }
    return order.get().steps().stream()
        .filter(next -> !next.id().equals(here.get()))
        .flatMap(next -> firstOpen(next.id()).stream())
        .findFirst();
  }

  /** A group whose sides take turns goes on while either side does. */
  private boolean goesOn(ItemKey from, Optional<ItemKey> to) {
    Optional<Group> group = group(from);
    if (to.isEmpty() || !group.equals(to.flatMap(this::group))) {
      return false;
    }
    boolean turns = group.filter(g -> g.walk() == Group.Walk.ALTERNATING).isPresent();
    return turns || step(from).equals(to.flatMap(this::step));
  }

  private Optional<TestDefinition> test(ItemKey key) {
    return open.tests().stream().filter(test -> test.id().equals(key.test())).findFirst();
  }

  private Optional<Group> group(ItemKey key) {
    return test(key).flatMap(test -> test.groupOf(key.item()));
  }

  private Optional<StepId> step(ItemKey key) {
    return test(key).flatMap(test -> EvaluationSteps.stepOf(test, key));
  }

  private List<ItemKey> keys(StepId step) {
    ArrayList<ItemKey> keys = new ArrayList<>();
    for (TestDefinition test : open.tests()) {
      if (test.id().equals(step.test())) {
        for (Group group : test.groups()) {
          if (group.id().equals(step.group())) {
            group.items().stream()
                .filter(item -> item.sides().contains(step.side()))
                .flatMap(item -> item.keys(test.id(), step.side()).stream())
                .filter(key -> EvaluationSteps.stepOf(test, key).equals(Optional.of(step)))
                .forEach(keys::add);
            sort(group, keys);
          }
        }
      }
    }
    return keys;
  }

  /** A hand on one finger does all of that finger before it takes the next. */
  private static void sort(Group group, List<ItemKey> keys) {
    if (group.layout() == Group.Layout.DIGIT_GRID) {
      keys.sort(Comparator.comparing(ItemKey::digit));
    }
  }

  private boolean mustBeFilled(ItemKey key) {
    Group group = group(key).orElseThrow();
    Item item = test(key).flatMap(test -> test.item(key.item())).orElseThrow();
    PatientContext context = open.context();
    return !item.optional()
        && context.snapshot().entry(key).isEmpty()
        && item.askWhen().holds(context.snapshot(), key)
        && Withheld.by(group, item, key, context.precautions(), context.evaluation().date())
            .isEmpty();
  }
}
