package styloid.shell.progress;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Where dates and numbers lie on a surface, in pixels from its top left. Time is true to scale: as
 * many pixels for every day.
 */
record Plot(
    double left,
    double top,
    double width,
    double height,
    LocalDate first,
    long days,
    double low,
    double high) {
  private static final double[] STEPS = {1, 2, 2.5, 5, 10};

  /** Room above the highest and below the lowest number, as a share of their distance. */
  private static final double AIR = 0.08;

  static Plot of(
      Course course, DoubleStream numbers, double left, double top, double width, double height) {
    DoubleSummaryStatistics range = numbers.summaryStatistics();
    double low = range.getCount() == 0 ? 0 : range.getMin();
    double high = range.getCount() == 0 ? 1 : range.getMax();
    double air = high > low ? (high - low) * AIR : Math.max(1, Math.abs(high) * AIR);
    LocalDate first = course.visits().get(0).date();
    LocalDate last = first;
    for (Visit visit : course.visits()) {
      first = visit.date().isBefore(first) ? visit.date() : first;
      last = visit.date().isAfter(last) ? visit.date() : last;
    }
    long days = ChronoUnit.DAYS.between(first, last);
    return new Plot(left, top, width, height, first, days, low - air, high + air);
  }

  double x(LocalDate date) {
    return days == 0
        ? left + width / 2
        : left + width * ChronoUnit.DAYS.between(first, date) / days;
  }

  double y(double number) {
    return top + height * (high - number) / (high - low);
  }

  /** Round numbers in the range, at most about so many. */
  List<Double> ticks(int most) {
    double rough = (high - low) / most;
    double ten = Math.pow(10, Math.floor(Math.log10(rough)));
    double step = ten * 10;
    for (double candidate : STEPS) {
      if (candidate * ten >= rough) {
        step = candidate * ten;
        break;
      }
    }
    ArrayList<Double> ticks = new ArrayList<>();
    for (long at = (long) Math.ceil(low / step); at * step <= high; at++) {
      ticks.add(at * step);
    }
    return ticks;
  }
}
