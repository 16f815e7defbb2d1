package styloid.session;

import java.util.HashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/**
 * Stands round every call into a module: whatever it throws becomes a {@link ModuleFault}, and a
 * call that does not come back in time is abandoned with its thread. Three faults mute a module
 * until someone tries again.
 */
final class ModuleGuard implements AutoCloseable {
  static final int FAULTS_UNTIL_MUTED = 3;

  private final long limitMillis;
  private final Map<String, Integer> faults = new HashMap<>();
  private Worker worker;

  ModuleGuard(long limitMillis) {
    this.limitMillis = limitMillis;
  }

  /** What a guarded call came to: a value or a fault. */
  record Answer<T>(T value, ModuleFault fault) {
    boolean failed() {
      return fault != null;
    }
  }

  /** Calls a module; one call at a time, the clock starting when the call does. */
  synchronized <T> Answer<T> call(String module, String stage, Callable<T> call) {
    if (muted(module)) {
      return new Answer<>(null, new ModuleFault(module, stage, "MUTED", "muted", true));
    }
    FutureTask<T> task = new FutureTask<>(call);
    if (worker == null) {
      worker = new Worker();
    }
    worker.run(task);
    try {
      T value = task.get(limitMillis, TimeUnit.MILLISECONDS);
      return value == null
          ? failed(module, stage, new IllegalStateException("null"), "gave nothing back")
          : new Answer<>(value, null);
    } catch (TimeoutException e) {
      worker.abandon();
      worker = null;
      return failed(module, stage, e, "did not answer within " + limitMillis + " ms");
    } catch (ExecutionException e) {
      return failed(module, stage, e.getCause(), inWords(e.getCause()));
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new Answer<>(null, new ModuleFault(module, stage, "STOPPED", "interrupted", false));
    }
  }

  private <T> Answer<T> failed(String module, String stage, Throwable fault, String reason) {
    int count = faults.merge(module, 1, Integer::sum);
    boolean muted = count >= FAULTS_UNTIL_MUTED;
    return new Answer<>(null, new ModuleFault(module, stage, code(fault), reason, muted));
  }

  /** Counts a fault the caller found in what a module gave. */
  synchronized ModuleFault misbehaved(String module, String stage, String reason) {
    return failed(module, stage, new IllegalStateException(reason), reason).fault();
  }

  synchronized boolean muted(String module) {
    return faults.getOrDefault(module, 0) >= FAULTS_UNTIL_MUTED;
  }

  /** Sets a module aside until someone tries again. */
  synchronized void mute(String module) {
    faults.put(module, FAULTS_UNTIL_MUTED);
  }

  synchronized void forgive(String module) {
    faults.remove(module);
  }

  private static String inWords(Throwable fault) {
    if (fault instanceof LinkageError) {
      return "was built for another version of the suite (" + name(fault) + ")";
    } else if (fault instanceof StackOverflowError) {
      return "calls itself without end";
    } else if (fault instanceof OutOfMemoryError) {
      return "asked for more memory than there is";
    }
    return "failed with " + name(fault);
  }

  private static String name(Throwable fault) {
    return fault.getClass().getSimpleName();
  }

  /** The same kind of fault at the same place gives the same four signs. */
  static String code(Throwable fault) {
    StackTraceElement[] trace = fault.getStackTrace();
    String place =
        trace.length == 0 ? "" : trace[0].getClassName() + "." + trace[0].getMethodName();
    int hash = (fault.getClass().getName() + "@" + place).hashCode();
    return String.format("%04X", (hash ^ hash >>> 16) & 0xFFFF);
  }

  @Override
  public synchronized void close() {
    if (worker != null) {
      worker.abandon();
      worker = null;
    }
  }

  /** A thread that runs one task after another until it is abandoned. */
  private static final class Worker {
    private final SynchronousQueue<Runnable> handOver = new SynchronousQueue<>();
    private final Thread thread;
    private volatile boolean wanted = true;

    Worker() {
      thread = new Thread(this::work, "styloid-modules");
      thread.setDaemon(true);
      thread.start();
    }

    void run(Runnable task) {
      try {
        handOver.put(task);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
      }
    }

    private void work() {
      try {
        while (wanted) {
          handOver.take().run();
        }
      } catch (InterruptedException e) {
        // abandoned while idle: the thread ends
        Thread.currentThread().interrupt();
      }
    }

    void abandon() {
      wanted = false;
      thread.interrupt();
    }
  }
}
