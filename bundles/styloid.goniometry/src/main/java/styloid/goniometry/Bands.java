package styloid.goniometry;

import java.math.BigDecimal;
import java.util.List;

/**
 * Classes of a scale as printed, from low to high. A value belongs to the highest class whose lower
 * limit it reaches; the lower limit is included unless the source prints "more than". So a value
 * between two printed whole-number classes belongs to the lower one.
 */
record Bands(List<Band> bands) {
  /**
   * A class.
   *
   * @param low its lower limit; the first class has none and takes everything below the second
   * @param included whether the limit itself belongs to it
   */
  record Band(String code, BigDecimal low, boolean included) {
    private boolean reachedBy(BigDecimal value) {
      int order = value.compareTo(low);
      return order > 0 || order == 0 && included;
    }
  }

  Bands {
    bands = List.copyOf(bands);
    for (int i = 2; i < bands.size(); i++) {
      if (bands.get(i).low().compareTo(bands.get(i - 1).low()) <= 0) {
        throw new IllegalArgumentException("classes must rise: " + bands);
      }
    }
  }

  static Band from(String code, String low) {
    return new Band(code, new BigDecimal(low), true);
  }

  static Band above(String code, String low) {
    return new Band(code, new BigDecimal(low), false);
  }

  static Bands of(Band... bands) {
    return new Bands(List.of(bands));
  }

  Band of(BigDecimal value) {
    for (int i = bands.size() - 1; i > 0; i--) {
      if (bands.get(i).reachedBy(value)) {
        return bands.get(i);
      }
    }
    return bands.get(0);
  }

  String code(BigDecimal value) {
    return of(value).code();
  }

  /** Points of a class whose code is a whole number. */
  int points(BigDecimal value) {
    return Integer.parseInt(of(value).code());
  }
}
