package styloid.workbook;

import java.util.HashMap;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFColor;
import org.apache.poi.xssf.usermodel.XSSFFont;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** One style for each look and number format, told apart in black and white as well. */
final class Styles {
  static final int POINTS = 10;
  private static final byte[] INK = {(byte) 0xFF, 0x16, 0x36, 0x4A};
  private static final byte[] LINE = {(byte) 0xFF, (byte) 0x8A, (byte) 0x96, (byte) 0x9E};
  private static final byte[] HEAD_FILL = {(byte) 0xFF, (byte) 0xDF, (byte) 0xE7, (byte) 0xEC};
  private static final byte[] GREY_FILL = {(byte) 0xFF, (byte) 0xEE, (byte) 0xEE, (byte) 0xEE};
  private static final byte[] CAUTION_FILL = {(byte) 0xFF, (byte) 0xFF, (byte) 0xF4, (byte) 0xD6};

  private record Kind(Look look, String format, boolean quoted, boolean indented) {}

  private final XSSFWorkbook workbook;
  private final HashMap<Kind, XSSFCellStyle> styles = new HashMap<>();
  private final HashMap<String, XSSFFont> fonts = new HashMap<>();

  Styles(XSSFWorkbook workbook) {
    this.workbook = workbook;
    workbook.getFontAt(0).setFontName("Arial");
    workbook.getFontAt(0).setFontHeightInPoints((short) POINTS);
  }

  /** Size of the letters of a look. */
  static int points(Look look) {
    return switch (look) {
      case BANNER, HEADING -> 12;
      case TITLE -> 15;
      case LEGEND -> 8;
      default -> POINTS;
    };
  }

  /** {@code indented} keeps text at the left off the numbers of the column before. */
  XSSFCellStyle words(Look look, boolean quoted, boolean indented) {
    return styles.computeIfAbsent(new Kind(look, "", quoted, indented), this::make);
  }

  XSSFCellStyle number(Look look, String format) {
    return styles.computeIfAbsent(new Kind(look, format, false, false), this::make);
  }

  private XSSFCellStyle make(Kind kind) {
    XSSFCellStyle style = workbook.createCellStyle();
    style.setVerticalAlignment(VerticalAlignment.TOP);
    style.setWrapText(true);
    style.setLocked(kind.look() != Look.ENTERED);
    style.setQuotePrefixed(kind.quoted());
    if (!kind.format().isEmpty()) {
      style.setDataFormat(workbook.createDataFormat().getFormat(kind.format()));
      style.setWrapText(false);
    }
    dress(style, kind.look());
    if (kind.look().atRight()) {
      style.setAlignment(HorizontalAlignment.RIGHT);
    } else if (kind.indented() && kind.look() != Look.VALUE_HEAD) {
      style.setAlignment(HorizontalAlignment.LEFT);
      style.setIndention((short) 1);
    }
    return style;
  }

  private void dress(XSSFCellStyle style, Look look) {
    switch (look) {
      case BANNER, HEADING -> font(style, points(look), true, false, INK);
      case TITLE -> {
        font(style, points(look), true, false, INK);
        style.setBorderBottom(BorderStyle.MEDIUM);
        style.setBottomBorderColor(new XSSFColor(INK));
      }
      case LEGEND -> font(style, points(look), false, true, null);
      case CAUTION -> fill(style, CAUTION_FILL);
      case HEAD, VALUE_HEAD -> {
        font(style, POINTS, true, false, INK);
        fill(style, HEAD_FILL);
        style.setBorderBottom(BorderStyle.THIN);
        if (look == Look.VALUE_HEAD) {
          style.setAlignment(HorizontalAlignment.RIGHT);
        }
      }
      case ROW_HEAD -> font(style, POINTS, true, false, null);
      case ENTERED -> box(style);
      case LIVE -> {
        font(style, POINTS, false, true, null);
        fill(style, GREY_FILL);
      }
      case CALCULATED -> fill(style, GREY_FILL);
      case BANNER_NOTE, TEXT, VALUE -> font(style, POINTS, false, false, null);
    }
  }

  private void font(XSSFCellStyle style, int points, boolean bold, boolean italic, byte[] ink) {
    String key = points + "/" + bold + "/" + italic + "/" + (ink != null);
    XSSFFont font = fonts.get(key);
    if (font == null) {
      font = workbook.createFont();
      font.setFontName("Arial");
      font.setFontHeightInPoints((short) points);
      font.setBold(bold);
      font.setItalic(italic);
      if (ink != null) {
        font.setColor(new XSSFColor(ink));
      }
      fonts.put(key, font);
    }
    style.setFont(font);
  }

  private static void fill(XSSFCellStyle style, byte[] colour) {
    style.setFillForegroundColor(new XSSFColor(colour));
    style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
  }

  private static void box(XSSFCellStyle style) {
    XSSFColor line = new XSSFColor(LINE);
    style.setBorderTop(BorderStyle.THIN);
    style.setBorderBottom(BorderStyle.THIN);
    style.setBorderLeft(BorderStyle.THIN);
    style.setBorderRight(BorderStyle.THIN);
    style.setTopBorderColor(line);
    style.setBottomBorderColor(line);
    style.setLeftBorderColor(line);
    style.setRightBorderColor(line);
  }
}
