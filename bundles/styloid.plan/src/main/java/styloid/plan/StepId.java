package styloid.plan;

import java.util.Objects;
import styloid.model.Side;
import styloid.model.TestId;

/**
 * Identity of a step: a group of a test on one side, against gravity or with gravity reduced.
 *
 * @param group id of the group in its test
 */
public record StepId(TestId test, String group, Side side, boolean gravityReduced) {
  public StepId {
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(group, "group");
    Objects.requireNonNull(side, "side");
  }

  /** The same step on the other limb. */
  public StepId opposite() {
    return new StepId(test, group, side.opposite(), gravityReduced);
  }

  @Override
  public String toString() {
    return test + "/" + group + "/" + side.code() + (gravityReduced ? "/gravity-reduced" : "");
  }
}
