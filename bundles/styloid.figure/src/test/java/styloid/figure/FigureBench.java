package styloid.figure;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import javafx.application.Platform;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.spi.Group;
import styloid.spi.Sweep;

/** Processor time of a drawing in milliseconds: median and the slowest of a hundred. By hand. */
public final class FigureBench {
  private static final ThreadMXBean CPU = ManagementFactory.getThreadMXBean();

  private FigureBench() {}

  public static void main(String[] args) throws Exception {
    Toolkit.start();
    for (String id :
        List.of("shoulder-flexion-active", "elbow-flexion-active", "pip-flexion-active")) {
      Group group = Suite.groupWith(id);
      Sweep sweep = group.guide().sweeps().get(0);
      ItemId item = sweep.item();
      Digit digit = group.items().get(0).digits().iterator().next();
      double[] times =
          Toolkit.on(
              () -> {
                FigureView view = new FigureView(Locale.ROOT);
                view.resize(260, 150);
                double[] taken = new double[1100];
                for (int i = 0; i < taken.length; i++) {
                  long start = CPU.getCurrentThreadCpuTime();
                  Reading reading = new Reading(sweep, i % 90, OptionalDouble.of(20));
                  ItemKey key = new ItemKey(new TestId("any"), item, Side.LEFT, digit, 1);
                  view.show(Sketcher.draw(Subject.of(group, key, List.of(reading))));
                  view.layout();
                  taken[i] = (CPU.getCurrentThreadCpuTime() - start) / 1e6;
                  if (i % 50 == 0) {
                    view.snapshot(null, null); // empties what the canvas has stored up
                  }
                }
                return Arrays.copyOfRange(taken, 1000, 1100);
              });
      Arrays.sort(times);
      System.err.printf(Locale.ROOT, "%s %.2f %.2f%n", id, times[50], times[99]);
    }
    Platform.exit();
  }
}
