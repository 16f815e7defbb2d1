package styloid.custom;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * The functions a declared test may use: a part of OpenFormula (ISO/IEC 26300-2), with the number
 * of arguments each takes and what it does to the unit of its arguments.
 */
final class Functions {
  private static final Map<String, Function> ALL = all();

  private Functions() {}

  /** What a function makes of the unit of its arguments. */
  enum Units {
    /** All arguments share a unit, which is also that of the result, as with AVERAGE. */
    KEEPS,
    /** The first argument's unit is kept; the others are pure numbers, as with ROUND. */
    FIRST,
    /** The result is a pure number or of a unit nobody can tell, as with COUNT and SQRT. */
    DROPS,
    /** The second and third argument share the unit of the result: IF. */
    CHOOSES
  }

  /**
   * A function.
   *
   * @param most the most arguments; a list of trials counts as one
   * @param lists whether an argument may stand for several values, such as all trials
   */
  record Function(int least, int most, boolean lists, Units units) {}

  static Optional<Function> find(String name) {
    return Optional.ofNullable(ALL.get(name));
  }

  static Set<String> names() {
    return ALL.keySet();
  }

  private static Map<String, Function> all() {
    TreeMap<String, Function> all = new TreeMap<>();
    for (String name : "AVERAGE MAX MEDIAN MIN STDEV STDEVP SUM".split(" ")) {
      all.put(name, new Function(1, 30, true, Units.KEEPS));
    }
    for (String name : "AND COUNT OR PRODUCT SUMSQ VAR VARP".split(" ")) {
      all.put(name, new Function(1, 30, true, Units.DROPS));
    }
    all.put("ABS", new Function(1, 1, false, Units.KEEPS));
    all.put("MOD", new Function(2, 2, false, Units.FIRST));
    for (String name : "CEILING FLOOR ROUND ROUNDDOWN ROUNDUP".split(" ")) {
      all.put(name, new Function(2, 2, false, Units.FIRST));
    }
    all.put("INT", new Function(1, 1, false, Units.FIRST));
    all.put("TRUNC", new Function(1, 2, false, Units.FIRST));
    for (String name : "EXP LN LOG10 NORMSDIST NORMSINV NOT SIGN SQRT".split(" ")) {
      all.put(name, new Function(1, 1, false, Units.DROPS));
    }
    all.put("LOG", new Function(1, 2, false, Units.DROPS));
    all.put("POWER", new Function(2, 2, false, Units.DROPS));
    all.put("PI", new Function(0, 0, false, Units.DROPS));
    all.put("IF", new Function(3, 3, false, Units.CHOOSES));
    return Collections.unmodifiableMap(all);
  }
}
