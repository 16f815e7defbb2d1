package styloid.workbook;

/** The few styles of a streamed workbook, by their place in its style part. */
final class StreamStyles {
  static final int TEXT = 0;
  static final int HEAD = 1;
  static final int DAY = 2;
  static final int NUMBER = 3;
  static final int SHARE = 4;
  static final int LIVE = 5;
  static final int LIVE_SHARE = 6;
  static final int TITLE = 7;

  /** Text that would be taken for a formula if it were typed in again. */
  static final int QUOTED = 8;

  /** The one cell meant to be changed. */
  static final int CHOICE = 9;

  static final String PART =
      """
      <?xml version="1.0" encoding="UTF-8" standalone="yes"?>
      <styleSheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><numFmts count="2"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/><numFmt numFmtId="165" formatCode="0.0%"/></numFmts><fonts count="4"><font><sz val="10"/><name val="Arial"/></font><font><b/><sz val="10"/><name val="Arial"/></font><font><i/><sz val="10"/><name val="Arial"/></font><font><b/><sz val="15"/><name val="Arial"/></font></fonts><fills count="4"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><patternFill patternType="solid"><fgColor rgb="FFDFE7EC"/></patternFill></fill><fill><patternFill patternType="solid"><fgColor rgb="FFEEEEEE"/></patternFill></fill></fills><borders count="2"><border/><border><left style="thin"/><right style="thin"/><top style="thin"/><bottom style="thin"/></border></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="10"><xf/><xf fontId="1" fillId="2" applyFont="1" applyFill="1" applyAlignment="1"><alignment vertical="top" wrapText="1"/></xf><xf numFmtId="164" applyNumberFormat="1"/><xf/><xf numFmtId="165" applyNumberFormat="1"/><xf fontId="2" fillId="3" applyFont="1" applyFill="1"/><xf numFmtId="165" fontId="2" fillId="3" applyNumberFormat="1" applyFont="1" applyFill="1"/><xf fontId="3" applyFont="1"/><xf quotePrefix="1"/><xf borderId="1" applyBorder="1" applyProtection="1"><protection locked="0"/></xf></cellXfs></styleSheet>
      """;

  private StreamStyles() {}
}
