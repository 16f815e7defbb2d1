package styloid.shell.map;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import styloid.figure.LimbMap;
import styloid.session.OpenEvaluation;
import styloid.shell.Clinic;
import styloid.spi.Texts;

/** Time of bringing the small map up to date after an entry, by hand: median and worst of 400. */
final class MapBench {
  private static final int TURNS = 400;
  private static final int WARM = 50;

  private MapBench() {}

  public static void main(String[] args) throws InterruptedException {
    Visit visit = new Visit();
    for (String item : List.of("elbow-flexion", "elbow-extension", "forearm-pronation")) {
      visit.screen(item, "left", "full");
      visit.screen(item, "right", "limited");
    }
    for (String digit : List.of("index", "middle", "ring", "little")) {
      for (String item : List.of("mp-flexion-active", "pip-flexion-active", "dip-flexion-active")) {
        visit.degrees(item, "left", digit, 60);
        visit.degrees(item, "right", digit, 70);
      }
    }
    OpenEvaluation before = visit.calculated();
    visit.screen("pip-flexion", "left", "limited");
    OpenEvaluation entered = visit.entered(before);
    OpenEvaluation calculated = visit.calculated();
    Texts texts = Clinic.words();
    javafx.application.Platform.startup(() -> {});
    java.util.concurrent.CountDownLatch done = new java.util.concurrent.CountDownLatch(1);
    javafx.application.Platform.runLater(
        () -> {
          run(before, entered, calculated, texts);
          done.countDown();
        });
    done.await();
    System.exit(0);
  }

  /** An entry comes, then its results; then it is taken back. */
  private static void run(
      OpenEvaluation before, OpenEvaluation entered, OpenEvaluation calculated, Texts texts) {
    LimbMap map = new LimbMap(false);
    MapWords words = new MapWords(texts);
    long begun = cpu();
    LimbReading reading = LimbReading.of(before);
    LimbGuide.draw(map, reading, words);
    System.err.printf("made: %.2f ms%n", (cpu() - begun) / 1e6);
    double[] entry = new double[TURNS];
    double[] results = new double[TURNS];
    for (int turn = 0; turn < WARM + TURNS; turn++) {
      long start = cpu();
      reading = reading.next(entered);
      LimbGuide.draw(map, reading, words);
      long middle = cpu();
      reading = reading.next(calculated);
      LimbGuide.draw(map, reading, words);
      long end = cpu();
      reading = reading.next(before);
      if (turn >= WARM) {
        entry[turn - WARM] = (middle - start) / 1e6;
        results[turn - WARM] = (end - middle) / 1e6;
      }
    }
    print("an entry", entry);
    print("its results", results);
  }

  /** Time of this thread alone, so that other work of the machine does not count. */
  private static long cpu() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static void print(String what, double[] millis) {
    Arrays.sort(millis);
    System.err.printf(
        "%s: median %.2f ms, 99th percent %.2f ms, worst %.2f ms%n",
        what, millis[TURNS / 2], millis[TURNS * 99 / 100], millis[TURNS - 1]);
  }
}
