package styloid.workbook;

import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFPrintSetup;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** Writes one planned page into a worksheet. */
final class SheetWriter {
  private static final double POINTS_A_LINE = 1.32;
  private static final double HIGHEST_ROW = 409;
  private static final int WIDEST = 255;

  private SheetWriter() {}

  static void write(Page page, Book.Edge edge, XSSFSheet sheet, Styles styles) {
    for (int i = 0; i < page.widths().size(); i++) {
      sheet.setColumnWidth(i, Math.min(page.widths().get(i), WIDEST) * 256);
    }
    for (int r = 0; r < page.lines().size(); r++) {
      Line line = page.lines().get(r);
      XSSFRow row = sheet.createRow(r);
      for (int c = 0; c < line.boxes().size(); c++) {
        write(line.boxes().get(c), row, c, styles);
      }
      if (line.across()) {
        across(page, r, row, sheet);
      } else {
        height(page, line, row);
      }
    }
    sheet.createFreezePane(page.frozenColumns(), page.frozenRows());
    protect(sheet);
    print(page, edge, sheet);
  }

  private static void write(Box box, XSSFRow row, int column, Styles styles) {
    if (box instanceof Box.Words words) {
      XSSFCell cell = row.createCell(column);
      cell.setCellValue(SafeText.encode(words.text()));
      boolean quoted = SafeText.startsLikeFormula(words.text());
      cell.setCellStyle(styles.words(words.look(), quoted, column > 0));
    } else if (box instanceof Box.Figure figure) {
      XSSFCell cell = row.createCell(column);
      cell.setCellValue(figure.value());
      cell.setCellStyle(styles.number(figure.look(), figure.format()));
    } else if (box instanceof Box.Live live) {
      XSSFCell cell = row.createCell(column);
      cell.setCellFormula(live.formula());
      cell.setCellValue(live.value());
      cell.setCellStyle(styles.number(Look.LIVE, live.format()));
    }
  }

  /** Not every spreadsheet finds the height of wrapped text by itself when it opens a file. */
  private static void height(Page page, Line line, XSSFRow row) {
    int most = 1;
    for (int c = 0; c < line.boxes().size(); c++) {
      if (line.boxes().get(c) instanceof Box.Words words) {
        double bold = words.look() == Look.ROW_HEAD || words.look() == Look.HEAD ? 0.98 : 1.08;
        most = Math.max(most, lines(words.text(), (page.widths().get(c) - 1.2) * bold));
      }
    }
    if (most > 1) {
      double points = most * Styles.POINTS * POINTS_A_LINE + 2;
      row.setHeightInPoints((float) Math.min(HIGHEST_ROW, points));
    }
  }

  /** Lines a text takes in a width of characters, broken between words. */
  private static int lines(String text, double width) {
    int lines = 0;
    for (String part : text.split("\r\n|\r|\n", -1)) {
      double used = 0;
      lines++;
      for (String word : part.split(" ")) {
        if (used > 0 && used + 1 + word.length() > width) {
          lines++;
          used = 0;
        }
        used += word.length() + (used > 0 ? 1 : 0);
        while (used > width) {
          lines++;
          used -= width;
        }
      }
    }
    return lines;
  }

  /** A merged cell does not find its own height, so it is reckoned from the characters. */
  private static void across(Page page, int r, XSSFRow row, XSSFSheet sheet) {
    int last = page.widths().size() - 1;
    if (last > 0) {
      sheet.addMergedRegionUnsafe(new CellRangeAddress(r, r, 0, last));
    }
    Box.Words words = (Box.Words) page.lines().get(r).boxes().get(0);
    double points = row.getCell(0).getCellStyle().getFont().getFontHeightInPoints();
    double inALine = page.width() * Styles.POINTS / points * 1.05;
    int lines = lines(words.text(), inALine);
    row.setHeightInPoints((float) Math.min(HIGHEST_ROW, lines * points * POINTS_A_LINE + 2));
  }

  /** Guards against slips only: no password. Entered cells stay open, so that one can try. */
  private static void protect(XSSFSheet sheet) {
    sheet.enableLocking();
    sheet.lockFormatColumns(false);
    sheet.lockFormatRows(false);
    sheet.lockFormatCells(false);
    sheet.lockSelectLockedCells(false);
    sheet.lockSelectUnlockedCells(false);
  }

  private static void print(Page page, Book.Edge edge, XSSFSheet sheet) {
    XSSFPrintSetup setup = sheet.getPrintSetup();
    setup.setPaperSize(edge.letter() ? PaperSize.LETTER_PAPER : PaperSize.A4_PAPER);
    setup.setLandscape(page.landscape());
    sheet.setFitToPage(true);
    setup.setFitWidth((short) 1);
    setup.setFitHeight((short) (page.onePage() ? 1 : 0));
    sheet.setMargin(PageMargin.LEFT, 0.5);
    sheet.setMargin(PageMargin.RIGHT, 0.5);
    sheet.setMargin(PageMargin.TOP, 0.8);
    sheet.setMargin(PageMargin.BOTTOM, 0.7);
    sheet.getHeader().setLeft(edge.top());
    sheet.getHeader().setRight(edge.topRight());
    sheet.getFooter().setLeft(edge.bottom());
    sheet.getFooter().setRight(edge.bottomRight());
    if (page.repeated() >= 0) {
      int head = page.repeated();
      sheet.setRepeatingRows(new CellRangeAddress(head, head, -1, -1));
    }
  }
}
