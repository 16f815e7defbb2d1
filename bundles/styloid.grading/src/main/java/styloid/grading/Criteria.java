package styloid.grading;

/** Which criteria fit a motion. */
enum Criteria {
  /** The weight of the part matters: against gravity first, gravity reduced if need be. */
  GRAVITY,
  /**
   * The weight of the part hardly matters (digits, forearm): the share of the range alone, in one
   * position.
   */
  RANGE_ONLY
}
