package styloid.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** A value derived from a snapshot by a pure function, with how it came about. */
public record Result(ResultKey key, Outcome outcome, Explanation why) {
  public Result {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(why, "why");
  }

  public static Result computed(ResultKey key, Value value, Explanation why) {
    return new Result(key, new Outcome.Computed(value), why);
  }

  public static Result incomplete(
      ResultKey key, Message reason, List<ItemKey> missing, Explanation why) {
    return new Result(key, new Outcome.Incomplete(reason, missing), why);
  }

  public static Result unavailable(ResultKey key, Message reason, Explanation why) {
    return new Result(key, new Outcome.Unavailable(reason), why);
  }

  /** The value, if there is one. */
  public Optional<Value> value() {
    return outcome instanceof Outcome.Computed c ? Optional.of(c.value()) : Optional.empty();
  }

  /** The value as a quantity, if it is one. */
  public Optional<Quantity> quantity() {
    return value().filter(Quantity.class::isInstance).map(Quantity.class::cast);
  }
}
