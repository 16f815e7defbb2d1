package styloid.store;

/** The store could not do what was asked; the message says what, where and what to do. */
public final class StoreException extends Exception {
  private static final long serialVersionUID = 1L;

  /** Why. */
  public enum Cause {
    IN_USE,
    NEWER_VERSION,
    DAMAGED,
    READ_ONLY,
    DISK_FULL,
    /** The clinic's server does not answer. */
    UNREACHABLE,
    CONFLICT,
    NOT_FOUND,
    OTHER
  }

  private final Cause why;

  public StoreException(Cause why, String message, Throwable cause) {
    super(message, cause);
    this.why = why;
  }

  public Cause why() {
    return why;
  }
}
