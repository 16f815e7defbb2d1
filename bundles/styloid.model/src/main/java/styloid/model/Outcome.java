package styloid.model;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/** What a calculation came to: a value, or the reason why there is none. */
public sealed interface Outcome permits Outcome.Computed, Outcome.Incomplete, Outcome.Unavailable {

  /** A value. */
  record Computed(Value value) implements Outcome {
    public Computed {
      if (value instanceof Absence) {
        throw new IllegalArgumentException("an absence is not a computed value");
      }
      Objects.requireNonNull(value, "value");
    }
  }

  /** Something the calculation needs was not recorded or is absent; never a low value. */
  record Incomplete(Message reason, List<ItemKey> missing) implements Outcome {
    public Incomplete {
      Objects.requireNonNull(reason, "reason");
      missing = List.copyOf(missing);
    }
  }

  /** All was recorded, yet no value can be given: no norm for this age, contradictory findings. */
  record Unavailable(Message reason) implements Outcome {
    public Unavailable {
      Objects.requireNonNull(reason, "reason");
    }
  }

  /** Handles every outcome. */
  default <T> T match(
      Function<Value, T> computed,
      Function<Incomplete, T> incomplete,
      Function<Unavailable, T> unavailable) {
    if (this instanceof Computed c) {
      return computed.apply(c.value());
    } else if (this instanceof Incomplete i) {
      return incomplete.apply(i);
    }
    return unavailable.apply((Unavailable) this);
  }
}
