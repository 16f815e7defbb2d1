package styloid.launcher;

/** Why the suite cannot start, in words for the user, with the answer the process gives. */
final class StartException extends Exception {
  private static final long serialVersionUID = 1L;

  private final int exitCode;

  StartException(int exitCode, String message, Throwable cause) {
    super(message, cause);
    this.exitCode = exitCode;
  }

  int exitCode() {
    return exitCode;
  }
}
