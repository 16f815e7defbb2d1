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
  ROW_HEAD,
  /** Recorded by a person: boxed, upright, and the only cells left unlocked. */
  ENTERED,
  /** A formula over other cells: grey and italic. */
  LIVE,
  /** Calculated by the suite, no formula behind it: grey and upright. */
  CALCULATED,
  /** Nothing recorded, or does not apply. */
  NOTHING
}
