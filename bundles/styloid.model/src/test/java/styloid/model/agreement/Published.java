package styloid.model.agreement;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The published examples beside this class, cell by cell. */
final class Published {
  private static final Pattern CELL = Pattern.compile("(?:^|,)(?:\"([^\"]*)\"|([^,]*))");

  private Published() {}

  /** The rows of a file without its heading. */
  static List<List<String>> rows(String file) {
    try (InputStream in = Published.class.getResourceAsStream(file)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().skip(1).map(Published::cells).toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<String> cells(String line) {
    ArrayList<String> cells = new ArrayList<>();
    Matcher cell = CELL.matcher(line);
    while (cell.find()) {
      cells.add(cell.group(1) == null ? cell.group(2) : cell.group(1));
    }
    return cells;
  }

  /** The numbers of these columns, from 0. */
  static double[][] numbers(String file, int from, int to) {
    return rows(file).stream()
        .map(row -> row.subList(from, to + 1).stream().mapToDouble(Double::parseDouble).toArray())
        .toArray(double[][]::new);
  }
}
