package styloid.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

class WorkersTest {
  private static final int PATIENCE_SECONDS = 20;

  private final Workers workers = new Workers();

  @AfterEach
  void close() {
    workers.close();
  }

  private static boolean reached(CountDownLatch latch) {
    try {
      return latch.await(PATIENCE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }

  @Test
  void resultsDoNotWaitForAPlanAndPlansDoNotQueue() {
    AtomicInteger plans = new AtomicInteger();
    CountDownLatch begun = new CountDownLatch(1);
    CountDownLatch release = new CountDownLatch(1);
    workers.planSoon(
        () -> {
          plans.incrementAndGet();
          begun.countDown();
          reached(release);
        });
    assertTrue(reached(begun));
    for (int entry = 0; entry < 50; entry++) {
      workers.planSoon(plans::incrementAndGet);
    }
    CountDownLatch results = new CountDownLatch(1);
    workers.calculateSoon(results::countDown);
    assertTrue(reached(results), "results came while a plan was under way");
    release.countDown();
    workers.settle(() -> true);
    assertEquals(2, plans.get(), "the plan under way, and one for all that came meanwhile");
  }

  @Test
  void settlingWaitsForWhatACalculationAsksFor() {
    for (int round = 0; round < 200; round++) {
      AtomicBoolean planned = new AtomicBoolean();
      workers.calculate(
          () -> workers.calculateSoon(() -> workers.planSoon(() -> planned.set(true))));
      workers.settle(() -> true);
      assertTrue(planned.get(), "round " + round);
    }
  }

  @Test
  void workThatFailsKeepsNobodyWaiting() {
    AtomicBoolean after = new AtomicBoolean();
    workers.planSoon(
        () -> {
          throw new IllegalStateException("made to fail");
        });
    workers.planSoon(() -> after.set(true));
    workers.settle(() -> true);
    workers.planSoon(() -> after.set(true));
    workers.settle(() -> true);
    assertTrue(after.get());
  }
}
