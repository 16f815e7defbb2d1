package styloid.command;

import styloid.store.StoreException;

/** What a command answers with; the list in docs/commands.md. */
final class ExitCode {
  static final int OK = 0;
  static final int PROBLEMS = 1;
  static final int USAGE = 2;
  static final int STORAGE = 3;
  static final int NOT_WORKING = 4;

  private ExitCode() {}

  /** A conflict comes from the files; anything else is trouble of the store or the disk. */
  static int of(StoreException e) {
    return e.why() == StoreException.Cause.CONFLICT ? PROBLEMS : STORAGE;
  }
}
