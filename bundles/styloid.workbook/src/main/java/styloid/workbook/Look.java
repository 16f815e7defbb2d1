package styloid.workbook;

/** What a cell is to its reader; each look has one style, told apart without colour too. */
enum Look {
  BANNER,
  BANNER_NOTE,
  TITLE,
  LEGEND,
  HEADING,
  TEXT,
  CAUTION,
  HEAD,
  /** Head of a column of values. */
  VALUE_HEAD,
  ROW_HEAD,
  /** Recorded by a person: boxed, upright, and the only cells left unlocked. */
  ENTERED,
  /** A formula over other cells: grey and italic. */
  LIVE,
  /** Calculated by the suite, no formula behind it: grey and upright. */
  CALCULATED,
  /** A plain value, and the dash where nothing is recorded or nothing applies. */
  VALUE;

  /** Whether it stands at the right edge of its column, as numbers do. */
  boolean atRight() {
    return this == ENTERED || this == LIVE || this == CALCULATED || this == VALUE;
  }
}
