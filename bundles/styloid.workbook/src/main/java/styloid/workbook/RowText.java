package styloid.workbook;

import java.util.OptionalDouble;

/** One row of a streamed worksheet, put together in a buffer that is used again for the next. */
final class RowText {
  private final StringBuilder row = new StringBuilder(1024);
  private int number;
  private int column;

  /** Begins a row; numbers from 1. */
  RowText begin(int rowNumber) {
    number = rowNumber;
    column = 0;
    row.setLength(0);
    row.append("<row r=\"").append(number).append("\">");
    return this;
  }

  RowText gap() {
    column++;
    return this;
  }

  /** Text, never a formula; nothing where it is empty. */
  RowText text(String text, int style) {
    if (text.isEmpty()) {
      return gap();
    }
    boolean quoted = SafeText.startsLikeFormula(text);
    cell(quoted ? StreamStyles.QUOTED : style);
    row.append(" t=\"inlineStr\"><is><t");
    row.append(text.equals(text.strip()) ? ">" : " xml:space=\"preserve\">");
    escape(SafeText.encode(text));
    row.append("</t></is></c>");
    return this;
  }

  RowText number(double value, int style) {
    cell(style);
    row.append("><v>").append(plain(value)).append("</v></c>");
    return this;
  }

  RowText number(OptionalDouble value, int style) {
    return value.isPresent() ? number(value.getAsDouble(), style) : gap();
  }

  /** A formula with our value beside it. */
  RowText formula(String formula, double value, int style) {
    cell(style);
    row.append("><f>");
    escape(formula);
    row.append("</f><v>").append(plain(value)).append("</v></c>");
    return this;
  }

  /** A formula that gives text. */
  RowText formula(String formula, String value, int style) {
    cell(style);
    row.append(" t=\"str\"><f>");
    escape(formula);
    row.append("</f><v>");
    escape(SafeText.encode(value));
    row.append("</v></c>");
    return this;
  }

  StringBuilder end() {
    return row.append("</row>");
  }

  private void cell(int style) {
    row.append("<c r=\"");
    address(column++);
    row.append(number).append("\" s=\"").append(style).append('"');
  }

  private void address(int index) {
    if (index >= 26) {
      row.append((char) ('A' + index / 26 - 1));
    }
    row.append((char) ('A' + index % 26));
  }

  private static String plain(double value) {
    return value == Math.rint(value) && Math.abs(value) < 1e15
        ? Long.toString((long) value)
        : Double.toString(value);
  }

  private void escape(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      switch (c) {
        case '&' -> row.append("&amp;");
        case '<' -> row.append("&lt;");
        case '>' -> row.append("&gt;");
        default -> row.append(c);
      }
    }
  }
}
