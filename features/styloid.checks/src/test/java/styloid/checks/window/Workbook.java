package styloid.checks.window;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/** Reads a workbook's cells by their defined names, straight from the package's XML. */
final class Workbook {
  private final Map<String, String> cells = new HashMap<>();
  private final Map<String, String> names = new HashMap<>();

  private Workbook() {}

  static Workbook read(Path file) throws IOException {
    Workbook book = new Workbook();
    try (ZipFile zip = new ZipFile(file.toFile())) {
      List<String> shared = new ArrayList<>();
      for (Element item : elements(xml(zip, "xl/sharedStrings.xml"), "si")) {
        shared.add(item.getTextContent());
      }
      Document workbook = xml(zip, "xl/workbook.xml");
      int number = 0;
      for (Element sheet : elements(workbook, "sheet")) {
        number++;
        book.cells(
            sheet.getAttribute("name"), xml(zip, "xl/worksheets/sheet" + number + ".xml"), shared);
      }
      for (Element name : elements(workbook, "definedName")) {
        String place = name.getTextContent().replace("$", "").replace("'", "");
        book.names.put(name.getAttribute("name"), place);
      }
    }
    return book;
  }

  private void cells(String sheet, Document xml, List<String> shared) {
    for (Element cell : elements(xml, "c")) {
      String text = cell.getTextContent();
      if (cell.getAttribute("t").equals("s") && !text.isEmpty()) {
        text = shared.get(Integer.parseInt(text.strip()));
      }
      cells.put(sheet + "!" + cell.getAttribute("r"), text);
    }
  }

  private static Document xml(ZipFile zip, String part) throws IOException {
    try (InputStream in = zip.getInputStream(zip.getEntry(part))) {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      return factory.newDocumentBuilder().parse(in);
    } catch (SAXException | ParserConfigurationException e) {
      throw new IOException(part, e);
    }
  }

  private static List<Element> elements(Document document, String tag) {
    NodeList found = document.getElementsByTagName(tag);
    ArrayList<Element> elements = new ArrayList<>();
    for (int i = 0; i < found.getLength(); i++) {
      elements.add((Element) found.item(i));
    }
    return elements;
  }

  /** What the cell of this name shows; null when there is no such name. */
  String named(String name) {
    return cells.get(names.get(name));
  }

  boolean shows(String text) {
    return cells.values().stream().anyMatch(cell -> cell.contains(text));
  }
}
