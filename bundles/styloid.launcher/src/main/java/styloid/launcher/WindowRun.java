package styloid.launcher;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.osgi.framework.BundleContext;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;
import org.osgi.util.tracker.ServiceTracker;

/** Opens the window, hands it to the shell and stays until it is closed. */
final class WindowRun {
  private static final System.Logger LOG = System.getLogger(WindowRun.class.getName());
  private static final long WINDOW_SECONDS = 30;
  private static final long SHELL_SECONDS = 10;
  private static final long FAULT_SECONDS = 2;

  private final Words words;
  private final PrintWriter out;
  private final PrintWriter err;
  private final StartWindow window;
  private final ArrayList<String> notes = new ArrayList<>();

  WindowRun(Words words, PrintWriter out, PrintWriter err) {
    this.words = words;
    this.out = out;
    this.err = err;
    this.window = new StartWindow(words);
  }

  /** Begins to show the window, while the caller starts the framework. */
  void show() {
    window.open();
  }

  /** Runs until the window is closed. */
  int run(Suite suite, Path data, boolean demo) throws StartException, InterruptedException {
    suite.startParts();
    if (demo) {
      fillDemo(suite);
    }
    Optional<Stage> stage = shownStage();
    if (stage.isEmpty()) {
      return ExitCode.NO_DISPLAY;
    }
    CompletableFuture<Void> shell = new CompletableFuture<>();
    ServiceTracker<AutoCloseable, AutoCloseable> tracker = track(suite.container(), shell);
    suite.container().offer(startReport(), startReportOf(suite), "start-report");
    Platform.runLater(() -> suite.container().offer(Stage.class, stage.get(), "window"));
    int code = wait(suite, stage.get(), CompletableFuture.allOf(shell, window.taken()), data);
    tracker.close();
    return code;
  }

  /** Says why the suite did not start, and stays until the window is closed. */
  void reportAlone(String reason) throws InterruptedException {
    Optional<Stage> stage = shownStage();
    if (stage.isPresent()) {
      Platform.runLater(() -> window.report(stage.get(), List.of(reason)));
      window.closed().join();
    }
  }

  private void fillDemo(Suite suite) {
    suite.container().offer(String.class, words.text("demo.note"), "clinic-note");
    Optional<Integer> code = suite.run("import", "--if-empty", suite.demoClinic().toString());
    if (code.orElse(ExitCode.NOT_STARTED) != ExitCode.OK) {
      notes.add(words.text("demo.not-imported", suite.demoClinic()));
    }
  }

  private Optional<Stage> shownStage() throws InterruptedException {
    try {
      return Optional.of(window.shown().get(WINDOW_SECONDS, TimeUnit.SECONDS));
    } catch (ExecutionException | TimeoutException e) {
      LOG.log(System.Logger.Level.DEBUG, "No window", e);
      err.println(words.text("window.cannot-open", reason(e)));
      return Optional.empty();
    }
  }

  private String reason(Exception e) {
    return e instanceof TimeoutException
        ? words.text("window.too-slow", WINDOW_SECONDS)
        : String.valueOf(e.getCause().getMessage());
  }

  /** Also a shell that comes after the report was shown is welcome. */
  private int wait(Suite suite, Stage stage, CompletableFuture<Void> ready, Path data) {
    // Where a bundle did not start, there is little to wait for.
    long seconds = suite.container().bundleFaults().isEmpty() ? SHELL_SECONDS : FAULT_SECONDS;
    CompletableFuture<Void> reported =
        CompletableFuture.runAsync(
            () -> {
              if (!ready.isDone() && !window.closed().isDone()) {
                report(suite, stage, ready, seconds);
              }
            },
            CompletableFuture.delayedExecutor(seconds, TimeUnit.SECONDS));
    CompletableFuture.anyOf(ready, window.closed()).join();
    reported.cancel(false);
    if (ready.isDone()) {
      out.println(words.text("window.ready", data));
    }
    window.closed().join();
    return ready.isDone() ? ExitCode.OK : ExitCode.NOT_STARTED;
  }

  private void report(Suite suite, Stage stage, CompletableFuture<Void> ready, long seconds) {
    ArrayList<String> lines = new ArrayList<>();
    lines.add(words.text("report.no-shell", seconds));
    lines.addAll(startReportOf(suite).get());
    lines.add(surroundings());
    lines.forEach(err::println);
    Platform.runLater(
        () -> {
          if (!ready.isDone() && !window.taken().isDone()) {
            window.report(stage, lines);
          }
        });
  }

  private String surroundings() {
    return words.text(
        "report.surroundings",
        Runtime.version(),
        System.getProperty("os.name"),
        System.getProperty("os.arch"));
  }

  @SuppressWarnings({"unchecked", "rawtypes"})
  private static Class<Supplier<List<String>>> startReport() {
    return (Class) Supplier.class;
  }

  /** What did not start, in plain words, asked anew each time; empty when all did. */
  private Supplier<List<String>> startReportOf(Suite suite) {
    return () -> {
      ArrayList<String> lines = new ArrayList<>(notes);
      suite.container().allFaults().forEach(fault -> lines.add(fault.text(words)));
      return lines;
    };
  }

  private static ServiceTracker<AutoCloseable, AutoCloseable> track(
      Container container, CompletableFuture<Void> shell) {
    BundleContext context = container.context();
    ServiceTracker<AutoCloseable, AutoCloseable> tracker;
    try {
      tracker =
          new ServiceTracker<>(
              context,
              context.createFilter(
                  "(&(objectClass=java.lang.AutoCloseable)" + Container.filter("shell") + ")"),
              null) {
            @Override
            public AutoCloseable addingService(ServiceReference<AutoCloseable> reference) {
              AutoCloseable found = super.addingService(reference);
              if (found != null) {
                shell.complete(null);
              }
              return found;
            }
          };
    } catch (InvalidSyntaxException e) {
      throw new IllegalStateException(e);
    }
    tracker.open();
    return tracker;
  }
}
