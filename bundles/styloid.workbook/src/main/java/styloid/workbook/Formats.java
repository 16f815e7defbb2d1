package styloid.workbook;

import styloid.model.Unit;

/** Number formats with the unit inside, so that a number never stands without it. */
final class Formats {
  private Formats() {}

  /** Such as {@code 0.0" kg"}; a degree sign stands close, counts and pure numbers have no sign. */
  static String of(Unit unit, int decimals) {
    String digits = decimals <= 0 ? "0" : "0." + "0".repeat(Math.min(decimals, 12));
    if (unit.sign().isEmpty()) {
      return digits;
    }
    String gap = unit == Unit.DEGREE ? "" : " ";
    return digits + '"' + gap + unit.sign() + '"';
  }
}
