package styloid.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Reads back what a reader of the file would see, with the JDK's XML reader and none of the library
 * that wrote it.
 */
final class PackageReader {
  private static final XMLInputFactory XML = secure();
  private static final String RELATIONS =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

  /**
   * A cell as read.
   *
   * @param type {@code s} or {@code str} for text, {@code n} for a number
   * @param formula empty when there is none
   * @param format number format; empty for the general one
   */
  record ReadCell(String type, String value, String formula, String format) {}

  /** A worksheet: its cells by address, in the order of the file. */
  record ReadSheet(String name, Map<String, ReadCell> cells) {}

  /** The whole file; names with the address they stand for. */
  record ReadBook(List<ReadSheet> sheets, Map<String, String> names) {}

  private final Map<String, byte[]> parts = new HashMap<>();
  private final ArrayList<String> strings = new ArrayList<>();
  private final ArrayList<String> formats = new ArrayList<>();

  private PackageReader() {}

  private static XMLInputFactory secure() {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLInputFactory.IS_COALESCING, true);
    return factory;
  }

  static ReadBook read(InputStream file) throws IOException {
    PackageReader reader = new PackageReader();
    try (ZipInputStream zip = new ZipInputStream(file)) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        reader.parts.put(entry.getName(), zip.readAllBytes());
      }
    }
    try {
      return reader.book();
    } catch (XMLStreamException | NumberFormatException | IndexOutOfBoundsException e) {
      throw new IOException("the written file cannot be read: " + e.getMessage(), e);
    }
  }

  private ReadBook book() throws XMLStreamException, IOException {
    Map<String, String> targets = relations();
    readStrings();
    readFormats();
    ArrayList<ReadSheet> sheets = new ArrayList<>();
    LinkedHashMap<String, String> names = new LinkedHashMap<>();
    XMLStreamReader xml = open("xl/workbook.xml");
    while (xml.hasNext()) {
      if (xml.next() != XMLStreamConstants.START_ELEMENT) {
        continue;
      }
      if (xml.getLocalName().equals("sheet")) {
        String target = targets.get(xml.getAttributeValue(RELATIONS, "id"));
        sheets.add(new ReadSheet(xml.getAttributeValue(null, "name"), cells("xl/" + target)));
      } else if (xml.getLocalName().equals("definedName")) {
        String name = xml.getAttributeValue(null, "name");
        String address = xml.getElementText();
        if (!name.startsWith("_xlnm.")) {
          names.put(name, address);
        }
      }
    }
    return new ReadBook(sheets, names);
  }

  private XMLStreamReader open(String part) throws XMLStreamException, IOException {
    byte[] bytes = parts.get(part);
    if (bytes == null) {
      throw new IOException("the written file has no part " + part);
    }
    return XML.createXMLStreamReader(new ByteArrayInputStream(bytes));
  }

  private Map<String, String> relations() throws XMLStreamException, IOException {
    HashMap<String, String> targets = new HashMap<>();
    XMLStreamReader xml = open("xl/_rels/workbook.xml.rels");
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT
          && xml.getLocalName().equals("Relationship")) {
        String target = xml.getAttributeValue(null, "Target").replaceFirst("^/xl/", "");
        targets.put(xml.getAttributeValue(null, "Id"), target);
      }
    }
    return targets;
  }

  private void readStrings() throws XMLStreamException, IOException {
    if (!parts.containsKey("xl/sharedStrings.xml")) {
      return;
    }
    XMLStreamReader xml = open("xl/sharedStrings.xml");
    StringBuilder text = new StringBuilder();
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("t")) {
        text.append(xml.getElementText());
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("si")) {
        strings.add(SafeText.decode(text.toString()));
        text.setLength(0);
      }
    }
  }

  private void readFormats() throws XMLStreamException, IOException {
    HashMap<String, String> byId = new HashMap<>(Map.of("0", "", "1", "0", "2", "0.00"));
    XMLStreamReader xml = open("xl/styles.xml");
    boolean inCells = false;
    while (xml.hasNext()) {
      int event = xml.next();
      if (event == XMLStreamConstants.START_ELEMENT) {
        switch (xml.getLocalName()) {
          case "numFmt" ->
              byId.put(
                  xml.getAttributeValue(null, "numFmtId"),
                  xml.getAttributeValue(null, "formatCode"));
          case "cellXfs" -> inCells = true;
          case "xf" -> addFormat(inCells, byId.get(xml.getAttributeValue(null, "numFmtId")));
          default -> {
            // nothing else of the styles is compared
          }
        }
      } else if (event == XMLStreamConstants.END_ELEMENT && xml.getLocalName().equals("cellXfs")) {
        inCells = false;
      }
    }
  }

  private void addFormat(boolean inCells, String format) {
    if (inCells) {
      formats.add(format == null ? "" : format);
    }
  }

  private Map<String, ReadCell> cells(String part) throws XMLStreamException, IOException {
    LinkedHashMap<String, ReadCell> cells = new LinkedHashMap<>();
    XMLStreamReader xml = open(part);
    while (xml.hasNext()) {
      if (xml.next() == XMLStreamConstants.START_ELEMENT && xml.getLocalName().equals("c")) {
        String address = xml.getAttributeValue(null, "r");
        cells.put(address, cell(xml));
      }
    }
    return cells;
  }

  private ReadCell cell(XMLStreamReader xml) throws XMLStreamException {
    String type = xml.getAttributeValue(null, "t");
    String style = xml.getAttributeValue(null, "s");
    String value = "";
    String formula = "";
    while (xml.next() != XMLStreamConstants.END_ELEMENT || !xml.getLocalName().equals("c")) {
      if (xml.getEventType() == XMLStreamConstants.START_ELEMENT) {
        if (xml.getLocalName().equals("v")) {
          value = xml.getElementText();
        } else if (xml.getLocalName().equals("f")) {
          formula = xml.getElementText();
        }
      }
    }
    String read = "s".equals(type) ? strings.get(Integer.parseInt(value)) : value;
    String format = style == null ? "" : formats.get(Integer.parseInt(style));
    return new ReadCell(type == null ? "n" : type, read, formula, format);
  }
}
