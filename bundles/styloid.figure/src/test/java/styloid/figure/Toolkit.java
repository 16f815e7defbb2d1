package styloid.figure;

import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.FutureTask;
import javafx.application.Platform;

/** JavaFX without a display. */
final class Toolkit {
  private Toolkit() {}

  static synchronized void start() throws InterruptedException {
    CountDownLatch up = new CountDownLatch(1);
    try {
      Platform.startup(up::countDown);
      up.await();
    } catch (IllegalStateException alreadyRunning) {
      Platform.setImplicitExit(false);
    }
    Platform.setImplicitExit(false);
  }

  static <T> T on(Callable<T> task) throws Exception {
    FutureTask<T> future = new FutureTask<>(task);
    Platform.runLater(future);
    return future.get();
  }
}
