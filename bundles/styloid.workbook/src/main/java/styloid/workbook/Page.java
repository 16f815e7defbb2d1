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
 * @param blocks what should stay together on a printed page, from the top
 * @param breaks indices of the rows a new printed page begins with
 * @param printed how many rows are printed; the others stay on the screen
 */
record Page(
    String name,
    List<Line> lines,
    List<Integer> widths,
    int frozenRows,
    int frozenColumns,
    int repeated,
    boolean onePage,
    List<Block> blocks,
    List<Integer> breaks,
    int printed) {
  /** Widest page, in characters, that is still printed upright. */
  private static final int UPRIGHT = 146;

  /**
   * Lines of one table, its heading and chart included.
   *
   * @param first index of the first line
   * @param head index of the line of heads
   * @param end index after the last line
   */
  record Block(int first, int head, int end) {}

  Page {
    lines = List.copyOf(lines);
    widths = List.copyOf(widths);
    blocks = List.copyOf(blocks);
    breaks = List.copyOf(breaks);
  }

  /** A page that breaks where the paper ends. */
  Page(
      String name,
      List<Line> lines,
      List<Integer> widths,
      int frozenRows,
      int frozenColumns,
      int repeated,
      boolean onePage) {
    this(
        name,
        lines,
        widths,
        frozenRows,
        frozenColumns,
        repeated,
        onePage,
        List.of(),
        List.of(),
        lines.size());
  }

  Page withLines(List<Line> other) {
    return new Page(
        name, other, widths, frozenRows, frozenColumns, repeated, onePage, blocks, breaks, printed);
  }

  /** The same with its tables kept together; where they are follows from the breaks. */
  Page broken(List<Line> other, List<Integer> before) {
    return new Page(
        name,
        other,
        widths,
        frozenRows,
        frozenColumns,
        repeated,
        onePage,
        List.of(),
        before,
        other.size());
  }

  boolean wholePrinted() {
    return printed == lines.size();
  }

  int width() {
    return widths.stream().mapToInt(Integer::intValue).sum();
  }

  boolean landscape() {
    return !onePage && width() > UPRIGHT;
  }
}
