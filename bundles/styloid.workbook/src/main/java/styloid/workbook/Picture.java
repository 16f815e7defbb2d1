package styloid.workbook;

import java.util.List;
import styloid.spi.Sheet;

/**
 * A planned chart. It draws the table whose head stands in the line below it: the first column
 * names the places, each further one is drawn as its trace says.
 *
 * @param axis what the numbers are, with their unit
 * @param rows rows of the table, without its head
 */
record Picture(String title, String axis, List<Sheet.Trace> traces, int rows) {
  /** Height of the one row that holds the chart, so that no page break can cut it. */
  static final double POINTS = 215;

  Picture {
    traces = List.copyOf(traces);
  }
}
