package styloid.launcher;

/** What the process answers with; the list in docs/commands.md. */
final class ExitCode {
  static final int OK = 0;
  static final int USAGE = 2;
  static final int DATA_FOLDER = 3;
  static final int NOT_STARTED = 4;
  static final int NO_DISPLAY = 5;

  private ExitCode() {}
}
