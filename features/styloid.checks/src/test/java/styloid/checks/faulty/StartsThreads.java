package styloid.checks.faulty;

import java.util.List;
import styloid.model.PatientContext;
import styloid.model.Result;

/** Starts threads that never end. */
public final class StartsThreads extends Plain {
  private static final int MANY = 50;

  @Override
  public List<Result> results(PatientContext context) {
    for (int i = 0; i < MANY; i++) {
      Thread thread = new Thread(StartsThreads::spin, "faulty");
      thread.setDaemon(true);
      thread.start();
    }
    return List.of();
  }

  private static synchronized void spin() {
    try {
      while (true) {
        StartsThreads.class.wait();
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
