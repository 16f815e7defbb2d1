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
  private static final int WIDEST = 255;

  private SheetWriter() {}

  static void write(Page page, Book.Edge edge, XSSFSheet sheet, Styles styles, Strings strings) {
    for (int i = 0; i < page.widths().size(); i++) {
      sheet.setColumnWidth(i, Math.min(page.widths().get(i), WIDEST) * 256);
    }
    for (int r = 0; r < page.lines().size(); r++) {
      Line line = page.lines().get(r);
      XSSFRow row = sheet.createRow(r);
      for (int c = 0; c < line.boxes().size(); c++) {
        write(line.boxes().get(c), row, c, styles, strings);
      }
      if (line.across()) {
        across(page, r, sheet);
      }
      double height = Heights.of(page, line);
      if (height != Heights.USUAL) {
        row.setHeightInPoints((float) height);
      }
    }
    sheet.createFreezePane(page.frozenColumns(), page.frozenRows());
    protect(sheet);
    print(page, edge, sheet);
  }

  private static void write(Box box, XSSFRow row, int column, Styles styles, Strings strings) {
    if (box instanceof Box.Words words) {
      XSSFCell cell = row.createCell(column);
      strings.put(words.text(), cell);
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

  private static void across(Page page, int r, XSSFSheet sheet) {
    int last = page.widths().size() - 1;
    if (last > 0) {
      sheet.addMergedRegionUnsafe(new CellRangeAddress(r, r, 0, last));
    }
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
    page.breaks().forEach(first -> sheet.setRowBreak(first - 1));
    if (!page.wholePrinted()) {
      int index = sheet.getWorkbook().getSheetIndex(sheet);
      int last = page.widths().size() - 1;
      sheet.getWorkbook().setPrintArea(index, 0, last, 0, page.printed() - 1);
    }
    if (page.repeated() >= 0 && page.wholePrinted()) {
      int head = page.repeated();
      sheet.setRepeatingRows(new CellRangeAddress(head, head, -1, -1));
    }
  }
}
