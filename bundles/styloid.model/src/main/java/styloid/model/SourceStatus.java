package styloid.model;

/** How sure we are of where a number comes from. */
public enum SourceStatus {
  /** Read in a stored text of the source or of a later copy. */
  VERIFIED,
  /** Recalled, not read; a draft until someone opens the cited work. */
  MEMORY,
  /** A fact of the trade without a published source. */
  COMMON_PRACTICE;

  public String code() {
    return Codes.of(this);
  }
}
