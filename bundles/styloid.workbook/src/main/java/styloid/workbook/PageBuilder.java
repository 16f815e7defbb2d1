package styloid.workbook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Puts a worksheet together from the top: banner, title, then headings, lines and tables. */
final class PageBuilder {
  /** Widest a column grows; longer text wraps. The tables of a sheet share its columns. */
  private static final int WIDEST = 42;

  private static final int WIDEST_LAST = 80;

  /** Widest a column grows to have its texts in one line. */
  private static final int WIDEST_SPREAD = 62;

  /** Characters of a page printed upright at a size still read with ease. */
  private static final int FULL = 130;

  private static final int NARROWEST = 7;

  /** Longer words are broken. */
  private static final int LONGEST_WORD = 12;

  private static final int BANNER_ROWS = 3;

  private final String name;
  private final ArrayList<Line> lines = new ArrayList<>();
  private final ArrayList<Integer> declared = new ArrayList<>();
  private final ArrayList<Integer> needed = new ArrayList<>();
  private List<Box> firstHead = List.of();
  private int headRow = -1;
  private boolean sameHeads = true;
  private boolean frozenFirstColumn;
  private boolean onePage;
  private final ArrayList<Page.Block> blocks = new ArrayList<>();
  private int headingRow = -1;
  private int printed = -1;

  /** Longest text of each column. */
  private final ArrayList<Integer> lengths = new ArrayList<>();

  PageBuilder(String name, Banner banner) {
    this.name = name;
    lines.add(Line.across(banner.person(), Look.BANNER));
    lines.add(Line.across(banner.visit(), Look.BANNER_NOTE));
    lines.add(Line.across(name, Look.TITLE));
  }

  PageBuilder onOnePage() {
    onePage = true;
    return this;
  }

  PageBuilder freezeFirstColumn() {
    frozenFirstColumn = true;
    return this;
  }

  /** What follows stays on the screen. */
  PageBuilder printedSoFar() {
    printed = lines.size();
    return this;
  }

  PageBuilder across(String text, Look look) {
    lines.add(Line.across(text, look));
    return this;
  }

  PageBuilder heading(String text) {
    lines.add(Line.empty());
    headingRow = lines.size();
    return across(text, Look.HEADING);
  }

  /** A row outside any table. */
  PageBuilder row(List<Box> boxes) {
    lines.add(Line.of(boxes));
    widen(boxes);
    return this;
  }

  /** A table's heads and rows; {@code widths} are the least widths of its columns. */
  PageBuilder table(List<String> heads, List<Integer> widths, List<List<Box>> rows) {
    add(heads, widths, rows);
    lines.subList(lines.size() - rows.size() - 1, lines.size()).forEach(l -> widen(l.boxes()));
    return this;
  }

  /** The same with columns as wide as said: text in them wraps, only numbers may need more. */
  PageBuilder narrowTable(List<String> heads, List<Integer> widths, List<List<Box>> rows) {
    add(heads, widths, rows);
    for (Line line : lines.subList(lines.size() - rows.size() - 1, lines.size())) {
      for (int i = 0; i < line.boxes().size(); i++) {
        atLeast(needed, i, unbreakable(line.boxes().get(i)));
      }
    }
    return this;
  }

  /** A chart of the table that must be added next, without a heading of its own. */
  PageBuilder picture(Picture picture) {
    lines.add(Line.empty());
    headingRow = lines.size();
    lines.add(Line.of(picture));
    return this;
  }

  private void add(List<String> heads, List<Integer> widths, List<List<Box>> rows) {
    ArrayList<Box> headBoxes = new ArrayList<>();
    for (int i = 0; i < heads.size(); i++) {
      headBoxes.add(Box.words(heads.get(i), valuesIn(rows, i) ? Look.VALUE_HEAD : Look.HEAD));
    }
    if (headRow < 0) {
      headRow = lines.size();
      firstHead = headBoxes;
    } else {
      sameHeads &= firstHead.equals(headBoxes);
    }
    for (int i = 0; i < widths.size(); i++) {
      atLeast(declared, i, widths.get(i));
    }
    int head = lines.size();
    int first = headingRow >= 0 ? headingRow : head;
    headingRow = -1;
    lines.add(Line.of(headBoxes));
    rows.forEach(row -> lines.add(Line.of(row)));
    for (List<Box> row : rows) {
      for (int i = 0; i < row.size(); i++) {
        int length = row.get(i) instanceof Box.Words words ? longestLine(words.text()) : 0;
        atLeast(lengths, i, length);
      }
    }
    blocks.add(new Page.Block(first, head, lines.size()));
  }

  /** Whether most cells of a column stand at its right edge. */
  private static boolean valuesIn(List<List<Box>> rows, int column) {
    long right = rows.stream().filter(row -> atRight(row.get(column))).count();
    return right * 2 > rows.size();
  }

  private static boolean atRight(Box box) {
    return box.match(words -> words.look().atRight(), figure -> true, live -> true, gap -> false);
  }

  private void widen(List<Box> boxes) {
    for (int i = 0; i < boxes.size(); i++) {
      atLeast(needed, i, measure(boxes.get(i)));
    }
  }

  private static void atLeast(ArrayList<Integer> widths, int column, int width) {
    while (widths.size() <= column) {
      widths.add(0);
    }
    widths.set(column, Math.max(widths.get(column), width));
  }

  /** Characters a cell wants in one line. Sizing columns by drawing them takes 15 times as long. */
  private static int measure(Box box) {
    return box.match(
        words ->
            words.look() == Look.HEAD || words.look() == Look.VALUE_HEAD
                ? longestWord(words.text())
                : longestLine(words.text()),
        figure -> shown(figure.value(), figure.format()),
        live -> shown(live.value(), live.format()),
        gap -> 0);
  }

  /** Characters a cell cannot do with less than: a number, or the longest word of a text. */
  private static int unbreakable(Box box) {
    return box.match(
        words -> Math.min(LONGEST_WORD, longestWord(words.text()) - 1),
        figure -> shown(figure.value(), figure.format()),
        live -> shown(live.value(), live.format()),
        gap -> 0);
  }

  private static int shown(double value, String format) {
    return Long.toString(Math.round(value)).length() + format.replace("\"", "").length() + 1;
  }

  private static int longestLine(String text) {
    return text.lines().mapToInt(String::length).max().orElse(0) + 2;
  }

  private static int longestWord(String text) {
    int longest = 0;
    for (String word : text.split("\\s+")) {
      longest = Math.max(longest, word.length());
    }
    return longest + 2;
  }

  /**
   * Gives the columns whose texts wrap what is left of a full page's width, so that a page takes
   * more rows: what is narrower than that is printed no larger.
   */
  private void spread(List<Integer> widths) {
    int left = FULL - widths.stream().mapToInt(Integer::intValue).sum();
    for (int i = 0; i < widths.size() && left > 0; i++) {
      int wanted = Math.min(WIDEST_SPREAD, i < lengths.size() ? lengths.get(i) : 0);
      int more = Math.max(0, Math.min(left, wanted - widths.get(i)));
      widths.set(i, widths.get(i) + more);
      left -= more;
    }
    if (left > 0) {
      widths.set(0, widths.get(0) + left);
    }
  }

  Page build() {
    ArrayList<Integer> widths = new ArrayList<>();
    int columns = Math.max(declared.size(), needed.size());
    for (int i = 0; i < columns; i++) {
      int most = i == columns - 1 ? WIDEST_LAST : WIDEST;
      int asked = i < declared.size() ? Math.min(declared.get(i), most) : 0;
      int wanted = i < needed.size() ? Math.min(needed.get(i), most) : 0;
      widths.add(Math.max(NARROWEST, Math.max(asked, wanted)));
    }
    if (widths.isEmpty()) {
      widths.addAll(Collections.nCopies(4, 25));
    }
    spread(widths);
    boolean repeats = headRow >= 0 && sameHeads;
    int frozen = repeats && headRow <= BANNER_ROWS + 2 ? headRow + 1 : BANNER_ROWS;
    return new Page(
        name,
        lines,
        widths,
        frozen,
        frozenFirstColumn ? 1 : 0,
        repeats ? headRow : -1,
        onePage,
        blocks,
        List.of(),
        printed < 0 ? lines.size() : printed);
  }
}
