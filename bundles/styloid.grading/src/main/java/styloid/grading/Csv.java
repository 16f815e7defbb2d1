package styloid.grading;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Reads a table beside this class: {@code #} lines about it, a line of column names, then rows;
 * cells may be quoted.
 */
final class Csv {
  private Csv() {}

  /**
   * The rows by column name, in order.
   *
   * @throws IllegalArgumentException when the file is missing or a row does not fit its columns: a
   *     fault of the build
   */
  static List<Map<String, String>> rows(String file) {
    try (InputStream in = Csv.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalArgumentException(file + " is missing");
      }
      BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      List<List<String>> table =
          lines.lines().filter(line -> !line.startsWith("#")).map(Csv::cells).toList();
      List<String> columns = table.get(0);
      return table.subList(1, table.size()).stream().map(r -> row(file, columns, r)).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Map<String, String> row(String file, List<String> columns, List<String> cells) {
    if (cells.size() != columns.size()) {
      throw new IllegalArgumentException(file + ": does not fit the columns: " + cells);
    }
    HashMap<String, String> row = new HashMap<>();
    for (int i = 0; i < columns.size(); i++) {
      row.put(columns.get(i), cells.get(i));
    }
    return row;
  }

  private static List<String> cells(String line) {
    ArrayList<String> cells = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (char c : line.toCharArray()) {
      if (c == '"') {
        quoted = !quoted;
      } else if (c == ',' && !quoted) {
        cells.add(cell.toString());
        cell.setLength(0);
      } else {
        cell.append(c);
      }
    }
    cells.add(cell.toString());
    return cells;
  }
}
