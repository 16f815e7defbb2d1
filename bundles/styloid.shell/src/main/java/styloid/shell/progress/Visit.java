package styloid.shell.progress;

import java.time.LocalDate;
import java.util.Map;
import java.util.OptionalDouble;
import styloid.model.Side;

/** One measure at one visit, by side. */
record Visit(LocalDate date, Map<Side, Reading> readings) {
  Visit {
    readings = Map.copyOf(readings);
  }

  OptionalDouble value(Side side) {
    Reading reading = readings.get(side);
    return reading == null ? OptionalDouble.empty() : reading.value();
  }
}
