package styloid.launcher;

import java.io.PrintWriter;
import java.util.List;
import java.util.Optional;

/** Runs one command without a window. */
final class Headless {
  private final Words words;
  private final PrintWriter err;

  Headless(Words words, PrintWriter err) {
    this.words = words;
    this.err = err;
  }

  /** The command's exit code, or that of a suite that did not start. */
  int run(Suite suite, List<String> command) throws StartException {
    suite.startParts();
    for (Fault fault : suite.container().bundleFaults()) {
      report(fault);
    }
    Optional<Integer> code = suite.run(command.toArray(String[]::new));
    if (code.isEmpty()) {
      err.println(words.text("headless.no-command"));
      Components.faults(suite.container().context()).forEach(this::report);
    }
    return code.orElse(ExitCode.NOT_STARTED);
  }

  /** Parts that only lack the window are as they should be. */
  private void report(Fault fault) {
    if (!fault.ofWindow()) {
      err.println(fault.text(words));
    }
  }
}
