package styloid.spi;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import styloid.model.Unit;

/** How a spreadsheet turns one unit of force into another without a rounded factor. */
public final class ExactFactor {
  private static final Map<Unit, Map<Unit, String>> ALL = all();

  private ExactFactor() {}

  /**
   * What is put behind the cell: nothing, times a factor, or divided by one, such as {@code
   * *0.45359237} from pounds to kilograms.
   */
  public static String between(Unit from, Unit to) {
    return ALL.get(from).get(to);
  }

  private static Map<Unit, Map<Unit, String>> all() {
    EnumMap<Unit, Map<Unit, String>> all = new EnumMap<>(Unit.class);
    for (Unit from : Unit.values()) {
      EnumMap<Unit, String> of = new EnumMap<>(Unit.class);
      for (Unit to : Unit.values()) {
        if (to.dimension() == from.dimension()) {
          of.put(to, text(from, to));
        }
      }
      all.put(from, Collections.unmodifiableMap(of));
    }
    return Collections.unmodifiableMap(all);
  }

  private static String text(Unit from, Unit to) {
    if (from == to) {
      return "";
    }
    BigDecimal times = from.factor().divide(to.factor(), MathContext.DECIMAL128);
    if (times.multiply(to.factor()).compareTo(from.factor()) == 0) {
      return "*" + times.stripTrailingZeros().toPlainString();
    }
    BigDecimal by = to.factor().divide(from.factor(), MathContext.DECIMAL128);
    if (by.multiply(from.factor()).compareTo(to.factor()) == 0) {
      return "/" + by.stripTrailingZeros().toPlainString();
    }
    return "*" + from.factor().toPlainString() + "/" + to.factor().toPlainString();
  }
}
