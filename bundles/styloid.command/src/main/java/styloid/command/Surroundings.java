package styloid.command;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import styloid.session.ModuleFault;
import styloid.session.Session;
import styloid.spi.DeclaredTests;
import styloid.spi.Labels;
import styloid.spi.OuterModules;
import styloid.spi.Progress;
import styloid.spi.Texts;

/**
 * What a command works with.
 *
 * @param declared reads declared tests; empty while that part does not work
 * @param outer modules from outside; empty while that part does not work
 * @param out what was asked for
 * @param err everything said about it
 */
record Surroundings(
    Session session,
    Supplier<Optional<DeclaredTests>> declared,
    Supplier<Optional<OuterModules>> outer,
    PrintWriter out,
    PrintWriter err) {
  /** Language of all output: the same everywhere, so that output can be compared. */
  static final Locale LANGUAGE = Locale.ENGLISH;

  static final String SCOPE = "command";
  static final Labels LABELS = Labels.beside(Surroundings.class);

  /** To be called before anything is calculated. */
  void warm() {
    declared.get().ifPresent(DeclaredTests::warm);
  }

  /** Words of all tests and of the commands. */
  Texts texts() {
    return session.texts(LANGUAGE).with(SCOPE, LABELS);
  }

  void say(PrintWriter to, String key, Object... args) {
    to.println(texts().text(styloid.model.Message.of(SCOPE, key, args)));
  }

  void sayAll(PrintWriter to, List<String> lines) {
    lines.forEach(to::println);
  }

  /** Tells how far long work is, a line each tenth. */
  Progress progress() {
    return new Progress() {
      private int told;

      @Override
      public void step(int done, int of) {
        int tenth = of == 0 ? 0 : (int) (10L * done / of);
        if (tenth > told) {
          told = tenth;
          say(err, "progress", done, of);
          err.flush();
        }
      }

      @Override
      public boolean cancelled() {
        return Thread.currentThread().isInterrupted();
      }
    };
  }

  /** Says which modules failed; whether any did. */
  boolean failed(List<ModuleFault> faults) {
    for (ModuleFault fault : faults) {
      say(err, "fault", fault.module(), fault.stage(), fault.reason(), fault.code());
    }
    return !faults.isEmpty();
  }
}
