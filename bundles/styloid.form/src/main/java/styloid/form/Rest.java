package styloid.form;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import styloid.model.Absence;
import styloid.model.Entry;
import styloid.model.ItemKey;
import styloid.model.Snapshot;

/** How long a hand should still rest; counted from the record, so that it outlasts a page. */
final class Rest {
  private Rest() {}

  /**
   * Whole seconds to wait before the trial at {@code next}, counted from the trial of the same
   * item, side and digit recorded last.
   *
   * @param seconds length of the rest
   * @return empty when the trial is recorded already, none was made before or the rest is over
   */
  static Optional<Integer> left(Snapshot snapshot, ItemKey next, int seconds, Instant now) {
    if (snapshot.value(next).isPresent()) {
      return Optional.empty();
    }
    Optional<Instant> last = Optional.empty();
    for (Entry entry : snapshot.entries()) {
      ItemKey key = entry.key();
      boolean same =
          key.ref().equals(next.ref()) && key.side() == next.side() && key.digit() == next.digit();
      boolean done = entry.value().filter(v -> !(v instanceof Absence)).isPresent();
      if (same && done && last.filter(entry.at()::isBefore).isEmpty()) {
        last = Optional.of(entry.at());
      }
    }
    return last.map(at -> seconds * 1000L - Duration.between(at, now).toMillis())
        .filter(left -> left > 0 && left <= seconds * 1000L)
        .map(left -> (int) ((left + 999) / 1000));
  }
}
