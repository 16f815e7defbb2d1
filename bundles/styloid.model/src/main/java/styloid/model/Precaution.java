package styloid.model;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * A limit in force on a part of a limb.
 *
 * @param side right or left, or {@link Side#UNSIDED} for both
 * @param digit the one digit meant, or {@link Digit#NONE} for all of the region
 * @param from first day in force; unknown means always so far
 * @param until last day in force, included; unknown means until lifted
 * @param setBy who set it, as the therapist wrote it
 */
public record Precaution(
    Kind kind,
    Region region,
    Side side,
    Digit digit,
    Optional<LocalDate> from,
    Optional<LocalDate> until,
    String setBy,
    String note) {

  /** What must not be done. */
  public enum Kind {
    /** Nor resistance, grip or pinch, which need active motion. */
    NO_ACTIVE_MOTION,
    NO_PASSIVE_MOTION,
    /** Nor grip or pinch, which load the same tissues. */
    NO_RESISTANCE,
    NO_GRIP_OR_PINCH;

    public String code() {
      return Codes.of(this);
    }

    /** Whether this limit forbids what an item demands. */
    public boolean forbids(Demand demand) {
      return switch (this) {
        case NO_ACTIVE_MOTION ->
            demand == Demand.ACTIVE_MOTION
                || demand == Demand.RESISTANCE
                || demand == Demand.GRIP_OR_PINCH;
        case NO_PASSIVE_MOTION -> demand == Demand.PASSIVE_MOTION;
        case NO_RESISTANCE -> demand == Demand.RESISTANCE || demand == Demand.GRIP_OR_PINCH;
        case NO_GRIP_OR_PINCH -> demand == Demand.GRIP_OR_PINCH;
      };
    }
  }

  public Precaution {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(region, "region");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(digit, "digit");
    Objects.requireNonNull(from, "from");
    Objects.requireNonNull(until, "until");
    Objects.requireNonNull(setBy, "setBy");
    Objects.requireNonNull(note, "note");
    if (from.isPresent() && until.isPresent() && until.get().isBefore(from.get())) {
      throw new IllegalArgumentException("a precaution cannot end before it begins");
    }
  }

  public boolean inForceOn(LocalDate day) {
    return from.map(d -> !day.isBefore(d)).orElse(true)
        && until.map(d -> !day.isAfter(d)).orElse(true);
  }

  /**
   * Whether this limit withholds an item that demands {@code demand} and loads {@code loaded}. A
   * limit on one digit does not reach another digit; an item without a digit, such as grip, loads
   * every digit of its regions.
   */
  public boolean withholds(
      Demand demand, Region loaded, Side itemSide, Digit itemDigit, LocalDate day) {
    boolean sameSide = side == Side.UNSIDED || itemSide == Side.UNSIDED || side == itemSide;
    boolean sameDigit = digit == Digit.NONE || itemDigit == Digit.NONE || digit == itemDigit;
    boolean sameRegion = region.covers(loaded) || loaded.covers(region);
    return kind.forbids(demand) && sameSide && sameDigit && sameRegion && inForceOn(day);
  }
}
