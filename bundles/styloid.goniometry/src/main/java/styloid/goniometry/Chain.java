package styloid.goniometry;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.ItemKey;

/**
 * Joints of a digit whose motion is added up: the sum of flexion minus the sum of the deficits of
 * extension. Hyperextension counts as no deficit, never as more motion.
 */
record Chain(List<Motion> extensions, List<Motion> flexions) {
  Chain {
    extensions = List.copyOf(extensions);
    flexions = List.copyOf(flexions);
  }

  static Chain of(String... joints) {
    ArrayList<Motion> extensions = new ArrayList<>();
    ArrayList<Motion> flexions = new ArrayList<>();
    for (String joint : joints) {
      extensions.add(Planes.motion(joint + "-extension"));
      flexions.add(Planes.motion(joint + "-flexion"));
    }
    return new Chain(extensions, flexions);
  }

  /** Every key the total rests on, extension before flexion. */
  List<ItemKey> keys(Place place, Mode mode) {
    ArrayList<ItemKey> keys = new ArrayList<>();
    extensions.forEach(motion -> keys.add(place.key(motion, mode)));
    flexions.forEach(motion -> keys.add(place.key(motion, mode)));
    return keys;
  }

  /** A total in degrees and the two sums it is made of. */
  record Total(BigDecimal flexion, BigDecimal deficit) {
    BigDecimal degrees() {
      return flexion.subtract(deficit);
    }
  }

  /** The total, if every joint has both its ends. */
  Optional<Total> total(Readings readings, Place place, Mode mode) {
    BigDecimal deficit = BigDecimal.ZERO;
    BigDecimal flexion = BigDecimal.ZERO;
    for (Motion motion : extensions) {
      Optional<BigDecimal> end = readings.degrees(place.key(motion, mode));
      if (end.isEmpty()) {
        return Optional.empty();
      }
      deficit = deficit.add(end.get().negate().max(BigDecimal.ZERO));
    }
    for (Motion motion : flexions) {
      Optional<BigDecimal> end = readings.degrees(place.key(motion, mode));
      if (end.isEmpty()) {
        return Optional.empty();
      }
      flexion = flexion.add(end.get());
    }
    return Optional.of(new Total(flexion, deficit));
  }

  /** The total as a spreadsheet formula. */
  String formula(Place place, Mode mode) {
    StringBuilder formula = new StringBuilder();
    for (Motion motion : flexions) {
      formula.append(formula.length() == 0 ? "" : "+").append(place.key(motion, mode).cellName());
    }
    for (Motion motion : extensions) {
      formula.append("+MIN(0,").append(place.key(motion, mode).cellName()).append(')');
    }
    return formula.toString();
  }
}
