package styloid.shell.frame;

import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.function.Consumer;
import javafx.application.Platform;

/**
 * What would make the window wait is done here, one after the other, so that the session is opened,
 * begun and closed by one thread.
 */
public final class Work implements AutoCloseable {
  private static final System.Logger LOG = System.getLogger(Work.class.getName());
  private final ExecutorService thread =
      Executors.newSingleThreadExecutor(
          job -> {
            Thread worker = new Thread(job, "styloid-shell-work");
            worker.setDaemon(true);
            return worker;
          });

  /** Does the job on the worker, then tells the JavaFX thread how it went. */
  public <T> void run(Callable<T> job, Consumer<T> done, Consumer<Exception> failed) {
    try {
      thread.execute(() -> attempt(job, done, failed));
    } catch (RejectedExecutionException e) {
      LOG.log(System.Logger.Level.DEBUG, "the window is closing", e);
    }
  }

  private static <T> void attempt(Callable<T> job, Consumer<T> done, Consumer<Exception> failed) {
    try {
      T result = job.call();
      Platform.runLater(() -> done.accept(result));
    } catch (Exception e) {
      LOG.log(System.Logger.Level.DEBUG, "work for the window failed", e);
      Platform.runLater(() -> failed.accept(e));
    }
  }

  @Override
  public void close() {
    thread.shutdown();
  }
}
