package styloid.workbook;

import java.util.ArrayList;
import styloid.workbook.Page.Block;

/**
 * Decides where printed pages begin: a table that does not fit on what is left of a page begins on
 * the next one; a table longer than a page has its heads written again where it goes on, unless the
 * sheet repeats them by itself.
 */
final class Pagination {
  /** Widths and heights of paper in points. */
  private static final double[] A4 = {595, 842};

  private static final double[] LETTER = {612, 792};
  private static final double SIDES = 72;
  private static final double TOP_AND_BOTTOM = 108;

  /** Points a character of a column's width takes. */
  private static final double CHARACTER = 5.25;

  /** Fonts and printers differ a little; what is nearly full counts as full. */
  private static final double USED = 0.96;

  private final Page page;
  private final double room;
  private final ArrayList<Line> lines = new ArrayList<>();
  private final ArrayList<Integer> breaks = new ArrayList<>();
  private double filled;

  private Pagination(Page page, boolean letter) {
    this.page = page;
    double[] paper = letter ? LETTER : A4;
    double across = (page.landscape() ? paper[1] : paper[0]) - SIDES;
    double down = (page.landscape() ? paper[0] : paper[1]) - TOP_AND_BOTTOM;
    double scale = Math.min(1, across / (page.width() * CHARACTER));
    this.room = down / scale * USED;
  }

  static Page of(Page page, boolean letter) {
    if (page.onePage() || page.repeated() >= 0 || !page.wholePrinted() || page.blocks().isEmpty()) {
      return page;
    }
    return new Pagination(page, letter).pages();
  }

  private Page pages() {
    int next = 0;
    for (Block block : page.blocks()) {
      add(next, block.first());
      block(block);
      next = block.end();
    }
    add(next, page.lines().size());
    return page.broken(lines, breaks);
  }

  private void add(int from, int end) {
    for (int i = from; i < end; i++) {
      add(page.lines().get(i));
    }
  }

  private void add(Line line) {
    double height = Heights.of(page, line);
    if (filled + height > room && filled > 0) {
      filled = 0;
    }
    filled += height;
    lines.add(line);
  }

  private double height(int from, int end) {
    return page.lines().subList(from, end).stream().mapToDouble(l -> Heights.of(page, l)).sum();
  }

  private void block(Block block) {
    double whole = height(block.first(), block.end());
    boolean fits = filled + whole <= room;
    // A long table may begin low on a page, but not with its heads alone.
    int rowsToBegin = Math.min(block.end(), block.head() + 4);
    boolean begins = filled + height(block.first(), rowsToBegin) <= room;
    if (!fits && (whole <= room || !begins) && filled > 0) {
      begin();
    }
    add(block.first(), block.head() + 1);
    Line head = page.lines().get(block.head());
    for (int i = block.head() + 1; i < block.end(); i++) {
      Line line = page.lines().get(i);
      if (filled + Heights.of(page, line) > room) {
        begin();
        add(head);
      }
      add(line);
    }
  }

  private void begin() {
    breaks.add(lines.size());
    filled = 0;
  }
}
