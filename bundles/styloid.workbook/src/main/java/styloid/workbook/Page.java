package styloid.workbook;

import java.util.List;

/**
 * One planned worksheet.
 *
 * @param name unique name of the sheet, at most 31 characters
 * @param lines rows from the top; the first ones are the banner and the title
 * @param widths of the columns, in characters
 * @param frozenRows rows that stay in sight
 * @param frozenColumns columns that stay in sight
 * @param repeated index of the row repeated on every printed page, or -1
 * @param onePage whether it is printed on one page
 */
record Page(
    String name,
    List<Line> lines,
    List<Integer> widths,
    int frozenRows,
    int frozenColumns,
    int repeated,
    boolean onePage) {
  /** Widest page, in characters, that is still printed upright. */
  private static final int UPRIGHT = 112;

  Page {
    lines = List.copyOf(lines);
    widths = List.copyOf(widths);
  }

  Page withLines(List<Line> other) {
    return new Page(name, other, widths, frozenRows, frozenColumns, repeated, onePage);
  }

  int width() {
    return widths.stream().mapToInt(Integer::intValue).sum();
  }

  boolean landscape() {
    return !onePage && width() > UPRIGHT;
  }
}
