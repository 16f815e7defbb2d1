package styloid.form;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Unit;
import styloid.spi.Timer;

/**
 * A hold under way, judged by instants it is given. Its end chooses no answer: which resistance was
 * held is for the therapist to say.
 *
 * @param seconds how long it is to be held, from 1
 */
record Hold(ItemKey key, Timer.LetGo letGo, int seconds, Instant begun) {
  /** Letting go before this counts as giving way at once. */
  private static final Duration AT_ONCE = Duration.ofSeconds(1);

  Hold {
    Objects.requireNonNull(key, "key");
    Objects.requireNonNull(letGo, "letGo");
    Objects.requireNonNull(begun, "begun");
  }

  private Duration length(Instant now) {
    Duration length = Duration.between(begun, now);
    return length.isNegative() ? Duration.ZERO : length;
  }

  boolean over(Instant now) {
    return length(now).compareTo(Duration.ofSeconds(seconds)) >= 0;
  }

  /** How much of it is done, 0 to 1, both included. */
  double share(Instant now) {
    return Math.min(1, length(now).toMillis() / (1000.0 * seconds));
  }

  /** Whole seconds still to be held, the begun one included. */
  long secondsLeft(Instant now) {
    long left = 1000L * seconds - length(now).toMillis();
    return Math.max(0, (left + 999) / 1000);
  }

  /** How long it has been held, in seconds to a tenth, rounded down. */
  Quantity held(Instant now) {
    BigDecimal millis = BigDecimal.valueOf(length(now).toMillis());
    return new Quantity(millis.movePointLeft(3).setScale(1, RoundingMode.DOWN), Unit.SECOND);
  }

  /** The answer when the patient lets go now. */
  String answer(Instant now) {
    return length(now).compareTo(AT_ONCE) < 0 ? letGo.atOnce() : letGo.during();
  }
}
