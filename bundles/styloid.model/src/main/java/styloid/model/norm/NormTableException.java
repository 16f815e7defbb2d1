package styloid.model.norm;

/** A norm table that may not be used; the message names file and line. A fault of the build. */
public final class NormTableException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  NormTableException(String file, int line, String what) {
    super(file + " line " + line + ": " + what);
  }
}
