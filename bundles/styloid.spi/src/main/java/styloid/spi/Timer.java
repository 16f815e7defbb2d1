package styloid.spi;

import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import styloid.model.Codes;
import styloid.model.ItemId;
import styloid.model.Source;

/**
 * A time that belongs to items of a test; the one who enters starts it or sees it run. It only
 * counts: no value is ever chosen by a time that ran out.
 *
 * @param seconds usual length, {@value #SHORTEST} to {@value #LONGEST} seconds, both included; the
 *     user may set another
 * @param items the items it belongs to
 * @param letGo what stopping a hold early records; only of a hold
 * @param source where the usual length comes from
 */
public record Timer(
    Kind kind, int seconds, Set<ItemId> items, Optional<LetGo> letGo, Source source) {
  public static final int SHORTEST = 1;
  public static final int LONGEST = 600;

  /** What the time is for. */
  public enum Kind {
    /** How long the patient holds against resistance; started by hand. */
    HOLD,
    /** How long to wait before the next trial of the same hand; runs from the one before. */
    REST;

    public String code() {
      return Codes.of(this);
    }
  }

  /**
   * What is recorded when the patient lets go before the hold is over.
   *
   * @param atOnce code of the answer when it gave way at once
   * @param during code of the answer when it gave way during the hold
   * @param time number item, in seconds, that takes how long it was held; empty where none does
   */
  public record LetGo(String atOnce, String during, Optional<ItemId> time) {
    public LetGo {
      Objects.requireNonNull(atOnce, "atOnce");
      Objects.requireNonNull(during, "during");
      Objects.requireNonNull(time, "time");
    }
  }

  public Timer {
    Objects.requireNonNull(kind, "kind");
    items = Set.copyOf(items);
    Objects.requireNonNull(letGo, "letGo");
    Objects.requireNonNull(source, "source");
    if (seconds < SHORTEST || seconds > LONGEST || items.isEmpty()) {
      throw new IllegalArgumentException(
          "a timer needs items and " + SHORTEST + " to " + LONGEST + " seconds: " + seconds);
    }
    if (kind == Kind.REST && letGo.isPresent()) {
      throw new IllegalArgumentException("nobody lets go of a rest");
    }
  }

  /** A rest before the next trial of these items. */
  public static Timer rest(int seconds, Set<ItemId> items, Source source) {
    return new Timer(Kind.REST, seconds, items, Optional.empty(), source);
  }

  /** A hold of one item. */
  public static Timer hold(int seconds, ItemId item, LetGo letGo, Source source) {
    return new Timer(Kind.HOLD, seconds, Set.of(item), Optional.of(letGo), source);
  }
}
