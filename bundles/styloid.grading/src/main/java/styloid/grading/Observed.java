package styloid.grading;

import java.util.Optional;
import styloid.model.Codes;

/**
 * What was seen and felt of one motion; empty where nothing, or an absence, was recorded.
 *
 * @param hold resistance it was held against, in mid-range, for the time of the hold
 * @param withheld whether resistance must not be given, so that none is waited for
 */
record Observed(
    Optional<Range> range,
    Optional<Hold> hold,
    Optional<Reduced> reduced,
    Optional<Felt> contraction,
    boolean withheld) {

  /** What can be observed, in the order it is asked. */
  enum Observation {
    RANGE,
    HOLD,
    REDUCED,
    CONTRACTION;

    String code() {
      return Codes.of(this);
    }
  }

  /** Share of the passively available range moved against gravity. */
  enum Range {
    FULL,
    MORE_THAN_HALF,
    LESS_THAN_HALF,
    NONE
  }

  /** Strongest resistance held. */
  enum Hold {
    STRONG,
    MODERATE_TO_STRONG,
    MODERATE,
    SLIGHT_TO_MODERATE,
    SLIGHT,
    /** Resistance was borne, but gave way before the hold was over. */
    YIELDED,
    /** Gave way at once: no resistance was tolerated. */
    GAVE_WAY,
    NOT_GIVEN;

    boolean held() {
      return compareTo(GAVE_WAY) < 0;
    }
  }

  /** Share of the range moved with gravity reduced. */
  enum Reduced {
    FULL,
    PART,
    NONE
  }

  /** Whether a contraction was felt or seen. */
  enum Felt {
    YES,
    NO
  }
}
