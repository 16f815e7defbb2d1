package styloid.shell.order;

import java.util.stream.Collectors;
import styloid.model.Digit;
import styloid.plan.Plan;
import styloid.plan.PlanStep;
import styloid.plan.PlannedStep;
import styloid.shell.frame.Shell;
import styloid.spi.Position;
import styloid.spi.Texts;

/** A plan in words. */
record OrderWords(Texts texts) {

  /** "Wrist extension, left" */
  String name(PlanStep step) {
    String side = texts.place(step.id().side(), Digit.NONE).toLowerCase(texts.locale());
    String name = texts.text(step.label());
    String sided = side.isEmpty() ? name : say("order.sided", name, side);
    return step.id().gravityReduced() ? say("order.gravity-reduced", sided) : sided;
  }

  String test(PlanStep step) {
    return texts.label(step.id().test().value(), "test.title");
  }

  /** "sitting, limb free, palm up" */
  String position(PlanStep step) {
    return step.position().map(this::position).orElse(say("order.any-position"));
  }

  private String position(Position position) {
    return String.join(
        ", ",
        texts.word(position.body()),
        texts.word(position.support()),
        texts.word(position.rotation()));
  }

  String reasons(PlannedStep planned) {
    return planned.reasons().stream().map(texts::text).collect(Collectors.joining(" "));
  }

  /** What the order saves, and how sure it is. */
  String summary(Plan plan) {
    if (plan.order().isEmpty()) {
      return say("order.all-done", plan.done().size());
    }
    String sure = say(plan.proven() ? "order.proven" : "order.unproven");
    return texts.text(plan.summary()) + " " + sure;
  }

  /** All of a line, for whoever hears it. */
  String line(int number, PlannedStep planned) {
    PlanStep step = planned.step();
    return String.join(
        ". ", Integer.toString(number), name(step), test(step), position(step), reasons(planned));
  }

  String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
