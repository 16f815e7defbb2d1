package styloid.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import styloid.spi.Exporter;

/** The threads of a session: one calculates, one plans, one stores, a few export. */
final class Workers implements AutoCloseable {
  private static final System.Logger LOG = System.getLogger(Workers.class.getName());
  private static final long WARM_UP_AFTER_SECONDS = 3;
  private static final long LAST_WORK_SECONDS = 10;

  /** Writing many files keeps every core busy; each takes some megabytes while it is written. */
  private static final int EXPORTERS =
      Math.max(1, Math.min(4, Runtime.getRuntime().availableProcessors()));

  private final ScheduledExecutorService calculating = worker("styloid-results");
  private final ScheduledExecutorService planning = worker("styloid-order");
  private final ScheduledExecutorService storing = worker("styloid-store");
  private final ScheduledThreadPoolExecutor exporting = workers("styloid-export", EXPORTERS);
  private final AtomicInteger calculations = new AtomicInteger();
  private final AtomicInteger plans = new AtomicInteger();

  /** Calculations and plans not done yet; what asks for another is done once that is counted. */
  private final AtomicInteger unfinished = new AtomicInteger();

  private final AtomicBoolean warm = new AtomicBoolean();

  private static ScheduledThreadPoolExecutor worker(String name) {
    return workers(name, 1);
  }

  private static ScheduledThreadPoolExecutor workers(String name, int threads) {
    return new ScheduledThreadPoolExecutor(
        threads,
        task -> {
          Thread thread = new Thread(task, name);
          thread.setDaemon(true);
          return thread;
        });
  }

  ScheduledExecutorService storing() {
    return storing;
  }

  /** Runs on the result worker, after what is there. */
  void calculate(Runnable task) {
    count(calculating, task);
  }

  /** Like {@link #calculate}, but one waiting calculation stands for all later ones. */
  void calculateSoon(Runnable task) {
    runSoon(calculating, calculations, task);
  }

  /** Runs beside the results, so that none waits; one waiting plan stands for all later ones. */
  void planSoon(Runnable task) {
    runSoon(planning, plans, task);
  }

  private void runSoon(ScheduledExecutorService worker, AtomicInteger waiting, Runnable task) {
    if (waiting.incrementAndGet() == 1) {
      count(
          worker,
          () -> {
            waiting.set(0);
            task.run();
          });
    }
  }

  private void count(ScheduledExecutorService worker, Runnable task) {
    unfinished.incrementAndGet();
    boolean taken =
        run(
            worker,
            () -> {
              try {
                task.run();
              } finally {
                unfinished.decrementAndGet();
              }
            });
    if (!taken) {
      unfinished.decrementAndGet();
    }
  }

  private static boolean run(ScheduledExecutorService worker, Runnable task) {
    try {
      worker.execute(
          () -> {
            try {
              task.run();
            } catch (RuntimeException e) {
              LOG.log(System.Logger.Level.ERROR, "work failed", e);
            }
          });
      return true;
    } catch (RejectedExecutionException e) {
      LOG.log(System.Logger.Level.DEBUG, "the session is closing", e);
      return false;
    }
  }

  /** What an exporter is asked to write. */
  interface Writing {
    void by(Exporter exporter) throws IOException;
  }

  /** Has the exporter of a format write something, on an export worker. */
  CompletableFuture<Path> export(
      List<Exporter> exporters, String format, Path target, Writing writing) {
    return exporters.stream()
        .filter(exporter -> exporter.format().equals(format))
        .findFirst()
        .map(exporter -> export(exporter, target, writing))
        .orElseGet(() -> CompletableFuture.failedFuture(noWriter(format)));
  }

  private static IOException noWriter(String format) {
    return new IOException("Nothing here writes " + format + " files; the part is not running.");
  }

  private CompletableFuture<Path> export(Exporter exporter, Path target, Writing writing) {
    CompletableFuture<Path> done = new CompletableFuture<>();
    run(
        exporting,
        () -> {
          try {
            writing.by(exporter);
            done.complete(target);
          } catch (LinkageError e) {
            done.completeExceptionally(
                new IOException("The part that writes " + target + " does not work here.", e));
          } catch (IOException | RuntimeException e) {
            done.completeExceptionally(e);
          }
        });
    return done;
  }

  /** Once in a session, when the hands are likely elsewhere. */
  void warmUpOnce(List<Exporter> exporters) {
    if (warm.compareAndSet(false, true)) {
      exporting.schedule(
          () -> exporters.forEach(Workers::warmUp), WARM_UP_AFTER_SECONDS, TimeUnit.SECONDS);
    }
  }

  private static void warmUp(Exporter exporter) {
    try {
      exporter.warmUp();
    } catch (RuntimeException | LinkageError e) {
      LOG.log(System.Logger.Level.WARNING, "warming up " + exporter.format() + " failed", e);
    }
  }

  /** Waits until there is nothing to calculate, plan or store and {@code stored} holds. */
  void settle(BooleanSupplier stored) {
    do {
      awaitIdle(storing);
      awaitIdle(calculating);
      awaitIdle(planning);
    } while (!(stored.getAsBoolean() && unfinished.get() == 0)
        && !storing.isShutdown()
        && !Thread.currentThread().isInterrupted());
  }

  private static void awaitIdle(ScheduledExecutorService worker) {
    CountDownLatch reached = new CountDownLatch(1);
    try {
      worker.execute(reached::countDown);
      reached.await();
    } catch (RejectedExecutionException e) {
      LOG.log(System.Logger.Level.DEBUG, "the session is closing", e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public void close() {
    // A writer that is not warm yet need not become so for an end.
    exporting.setExecuteExistingDelayedTasksAfterShutdownPolicy(false);
    for (ScheduledExecutorService worker : List.of(calculating, planning, storing, exporting)) {
      worker.shutdown();
      try {
        if (!worker.awaitTermination(LAST_WORK_SECONDS, TimeUnit.SECONDS)) {
          worker.shutdownNow();
        }
      } catch (InterruptedException e) {
        worker.shutdownNow();
        Thread.currentThread().interrupt();
      }
    }
  }
}
