package styloid.workbook;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;
import org.apache.poi.ss.util.CellRangeAddress;
import styloid.spi.Sheet.Trace;

/**
 * The chart part of the file format (ECMA-376, DrawingML charts), told apart in black-and-white
 * print: bars by pattern, lines by mark and dash. Fill and line of every series are said, or some
 * spreadsheets draw nothing. Written here, since the library's small set of schemas lacks patterns
 * and marks, and its calls evaluate every formula anew.
 */
final class ChartXml {
  private static final String CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";
  private static final String DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/main";
  private static final XMLOutputFactory XML = XMLOutputFactory.newDefaultFactory();
  private static final List<String> PATTERNS = List.of("dkUpDiag", "pct10");
  private static final List<String> MARKS = List.of("circle", "square");
  private static final String ACROSS = "1";
  private static final String UP = "2";
  private static final int POINT = 12_700;

  private final Page page;
  private final int at;
  private final Picture picture;
  private final XMLStreamWriter xml;

  private ChartXml(Page page, int at, XMLStreamWriter xml) {
    this.page = page;
    this.at = at;
    this.picture = page.lines().get(at).picture().orElseThrow();
    this.xml = xml;
  }

  /** The chart of a line of a page. */
  static byte[] of(Page page, int line) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(8192);
    try {
      XMLStreamWriter xml = XML.createXMLStreamWriter(out, StandardCharsets.UTF_8.name());
      new ChartXml(page, line, xml).write();
      xml.close();
    } catch (XMLStreamException e) {
      throw new IllegalStateException("a chart cannot be written into memory", e);
    }
    return out.toByteArray();
  }

  private void write() throws XMLStreamException {
    xml.writeStartDocument("UTF-8", "1.0");
    xml.writeStartElement("c", "chartSpace", CHART);
    xml.writeNamespace("c", CHART);
    xml.writeNamespace("a", DRAWING);
    value("roundedCorners", "0");
    begin("chart");
    title(picture.title(), 1200);
    value("autoTitleDeleted", "0");
    begin("plotArea");
    xml.writeEmptyElement(CHART, "layout");
    bars();
    curves();
    acrossAxis();
    upAxis();
    end();
    begin("legend");
    value("legendPos", "b");
    value("overlay", "0");
    end();
    value("plotVisOnly", "1");
    value("dispBlanksAs", "gap");
    end();
    xml.writeEndDocument();
  }

  private boolean has(boolean bars) {
    return picture.traces().stream().anyMatch(trace -> (trace == Trace.BARS) == bars);
  }

  private void bars() throws XMLStreamException {
    if (!has(true)) {
      return;
    }
    begin("barChart");
    value("barDir", "col");
    value("grouping", "clustered");
    value("varyColors", "0");
    int drawn = 0;
    for (int i = 0; i < picture.traces().size(); i++) {
      if (picture.traces().get(i) == Trace.BARS) {
        beginSeries(i);
        begin("spPr");
        pattern(PATTERNS.get(drawn++ % PATTERNS.size()));
        line(0.75, "solid", "000000");
        end();
        value("invertIfNegative", "0");
        data(i + 1);
        end();
      }
    }
    value("gapWidth", "60");
    value("axId", ACROSS);
    value("axId", UP);
    end();
  }

  private void curves() throws XMLStreamException {
    if (!has(false)) {
      return;
    }
    begin("lineChart");
    value("grouping", "standard");
    value("varyColors", "0");
    int drawn = 0;
    for (int i = 0; i < picture.traces().size(); i++) {
      Trace trace = picture.traces().get(i);
      if (trace != Trace.BARS) {
        beginSeries(i);
        begin("spPr");
        line(1.5, dash(trace), "000000");
        end();
        mark(trace == Trace.LINE ? drawn++ : -1);
        data(i + 1);
        value("smooth", "0");
        end();
      }
    }
    value("marker", "1");
    value("axId", ACROSS);
    value("axId", UP);
    end();
  }

  private static String dash(Trace trace) {
    return switch (trace) {
      case LIMIT -> "dash";
      case MIDDLE -> "sysDot";
      case LINE, BARS -> "solid";
    };
  }

  private void mark(int number) throws XMLStreamException {
    begin("marker");
    value("symbol", number < 0 ? "none" : MARKS.get(number % MARKS.size()));
    if (number >= 0) {
      value("size", "8");
      begin("spPr");
      solid(number % MARKS.size() == 0 ? "000000" : "FFFFFF");
      line(1, "solid", "000000");
      end();
    }
    end();
  }

  private void beginSeries(int index) throws XMLStreamException {
    begin("ser");
    value("idx", Integer.toString(index));
    value("order", Integer.toString(index));
    begin("tx");
    begin("strRef");
    text("f", range(at + 1, at + 1, index + 1));
    begin("strCache");
    value("ptCount", "1");
    point(0, words(at + 1, index + 1));
    end();
    end();
    end();
  }

  private void data(int column) throws XMLStreamException {
    begin("cat");
    begin("strRef");
    text("f", range(at + 2, at + 1 + picture.rows(), 0));
    begin("strCache");
    value("ptCount", Integer.toString(picture.rows()));
    for (int i = 0; i < picture.rows(); i++) {
      point(i, words(at + 2 + i, 0));
    }
    end();
    end();
    end();
    begin("val");
    begin("numRef");
    text("f", range(at + 2, at + 1 + picture.rows(), column));
    begin("numCache");
    text("formatCode", "General");
    value("ptCount", Integer.toString(picture.rows()));
    for (int i = 0; i < picture.rows(); i++) {
      Box box = page.lines().get(at + 2 + i).boxes().get(column);
      String number =
          box.match(
              words -> "",
              figure -> Double.toString(figure.value()),
              live -> Double.toString(live.value()),
              gap -> "");
      if (!number.isEmpty()) {
        point(i, number);
      }
    }
    end();
    end();
    end();
  }

  private String words(int row, int column) {
    Box box = page.lines().get(row).boxes().get(column);
    return box instanceof Box.Words words ? SafeText.encode(words.text()) : "";
  }

  private String range(int first, int last, int column) {
    return new CellRangeAddress(first, last, column, column).formatAsString(page.name(), true);
  }

  private void acrossAxis() throws XMLStreamException {
    begin("catAx");
    axis(ACROSS, "b");
    value("majorTickMark", "out");
    value("minorTickMark", "none");
    value("tickLblPos", "low");
    begin("spPr");
    line(0.75, "solid", "000000");
    end();
    value("crossAx", UP);
    value("crosses", "autoZero");
    end();
  }

  private void upAxis() throws XMLStreamException {
    begin("valAx");
    axis(UP, "l");
    begin("majorGridlines");
    begin("spPr");
    line(0.5, "solid", "BFBFBF");
    end();
    end();
    if (!picture.axis().isEmpty()) {
      title(picture.axis(), 1000);
    }
    xml.writeEmptyElement(CHART, "numFmt");
    xml.writeAttribute("formatCode", "General");
    xml.writeAttribute("sourceLinked", "0");
    value("majorTickMark", "out");
    value("minorTickMark", "none");
    value("tickLblPos", "nextTo");
    begin("spPr");
    line(0.75, "solid", "000000");
    end();
    value("crossAx", ACROSS);
    value("crosses", "autoZero");
    value("crossBetween", "between");
    end();
  }

  private void axis(String id, String position) throws XMLStreamException {
    value("axId", id);
    begin("scaling");
    value("orientation", "minMax");
    end();
    value("delete", "0");
    value("axPos", position);
  }

  private void title(String words, int size) throws XMLStreamException {
    begin("title");
    begin("tx");
    begin("rich");
    xml.writeEmptyElement(DRAWING, "bodyPr");
    xml.writeStartElement(DRAWING, "p");
    xml.writeStartElement(DRAWING, "r");
    xml.writeStartElement(DRAWING, "rPr");
    xml.writeAttribute("sz", Integer.toString(size));
    xml.writeAttribute("b", "1");
    xml.writeEndElement();
    xml.writeStartElement(DRAWING, "t");
    xml.writeCharacters(SafeText.encode(words));
    for (int i = 0; i < 5; i++) {
      xml.writeEndElement();
    }
    value("overlay", "0");
    end();
  }

  private void pattern(String preset) throws XMLStreamException {
    xml.writeStartElement(DRAWING, "pattFill");
    xml.writeAttribute("prst", preset);
    colour("fgClr", "000000");
    colour("bgClr", "FFFFFF");
    xml.writeEndElement();
  }

  private void colour(String element, String rgb) throws XMLStreamException {
    xml.writeStartElement(DRAWING, element);
    xml.writeEmptyElement(DRAWING, "srgbClr");
    xml.writeAttribute("val", rgb);
    xml.writeEndElement();
  }

  private void solid(String rgb) throws XMLStreamException {
    colour("solidFill", rgb);
  }

  private void line(double points, String dash, String rgb) throws XMLStreamException {
    xml.writeStartElement(DRAWING, "ln");
    xml.writeAttribute("w", Long.toString(Math.round(points * POINT)));
    solid(rgb);
    xml.writeEmptyElement(DRAWING, "prstDash");
    xml.writeAttribute("val", dash);
    xml.writeEndElement();
  }

  private void begin(String element) throws XMLStreamException {
    xml.writeStartElement(CHART, element);
  }

  private void end() throws XMLStreamException {
    xml.writeEndElement();
  }

  private void value(String element, String value) throws XMLStreamException {
    xml.writeEmptyElement(CHART, element);
    xml.writeAttribute("val", value);
  }

  private void text(String element, String text) throws XMLStreamException {
    begin(element);
    xml.writeCharacters(text);
    end();
  }

  private void point(int index, String text) throws XMLStreamException {
    begin("pt");
    xml.writeAttribute("idx", Integer.toString(index));
    text("v", text);
    end();
  }
}
