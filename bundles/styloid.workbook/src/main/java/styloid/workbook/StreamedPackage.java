package styloid.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A workbook written part by part straight into its file: nothing of a patient lies anywhere else,
 * and memory does not grow with it. Equal contents give equal bytes.
 */
final class StreamedPackage implements AutoCloseable {
  private static final LocalDateTime TIME = LocalDateTime.of(2000, 1, 1, 0, 0);

  /** About a third larger than the usual 6, in a third of the time. */
  private static final int LEVEL = 1;

  private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
  private static final String OFFICE =
      "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
  private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";
  private static final String TYPES =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.";
  private static final String XML =
      "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

  private final ZipOutputStream zip;

  /** Names of the sheets in the order they are written; the reader's order is another. */
  private final ArrayList<String> sheets = new ArrayList<>();

  StreamedPackage(OutputStream out) {
    zip = new ZipOutputStream(out);
    zip.setLevel(LEVEL);
  }

  /** Begins a sheet, whose number is told; its parts are written until {@link #endSheet}. */
  int beginSheet(String name, String head) throws IOException {
    sheets.add(name);
    entry("xl/worksheets/sheet" + sheets.size() + ".xml");
    write(XML + "<worksheet xmlns=\"" + MAIN + "\">" + head + "<sheetData>");
    return sheets.size();
  }

  void endSheet(String tail) throws IOException {
    write("</sheetData>" + tail + "</worksheet>");
    zip.closeEntry();
  }

  void write(CharSequence text) throws IOException {
    zip.write(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  OutputStream stream() {
    return zip;
  }

  /**
   * Writes what holds the sheets together.
   *
   * @param order numbers of the sheets as the reader shall see them
   */
  void finish(List<Integer> order, String definedNames) throws IOException {
    entry("xl/styles.xml");
    write(StreamStyles.PART.strip());
    zip.closeEntry();
    entry("xl/workbook.xml");
    StringBuilder book = new StringBuilder(XML);
    book.append("<workbook xmlns=\"").append(MAIN).append("\" xmlns:r=\"").append(OFFICE);
    book.append("\"><sheets>");
    for (int number : order) {
      book.append("<sheet name=\"").append(attribute(sheets.get(number - 1)));
      book.append("\" sheetId=\"").append(number).append("\" r:id=\"rId").append(number);
      book.append("\"/>");
    }
    book.append("</sheets>").append(definedNames).append("</workbook>");
    write(book);
    zip.closeEntry();
    relations();
    types();
  }

  private void relations() throws IOException {
    String head = XML + "<Relationships xmlns=\"" + PACKAGE + "relationships\">";
    entry("xl/_rels/workbook.xml.rels");
    StringBuilder rels = new StringBuilder(head);
    for (int i = 1; i <= sheets.size(); i++) {
      rels.append(relation("rId" + i, "worksheet", "worksheets/sheet" + i + ".xml"));
    }
    rels.append(relation("rId" + (sheets.size() + 1), "styles", "styles.xml"));
    write(rels.append("</Relationships>"));
    zip.closeEntry();
    entry("_rels/.rels");
    write(head + relation("rId1", "officeDocument", "xl/workbook.xml") + "</Relationships>");
    zip.closeEntry();
  }

  private static String relation(String id, String type, String target) {
    return "<Relationship Id=\"%s\" Type=\"%s/%s\" Target=\"%s\"/>"
        .formatted(id, OFFICE, type, target);
  }

  private void types() throws IOException {
    entry("[Content_Types].xml");
    StringBuilder types = new StringBuilder(XML);
    types.append("<Types xmlns=\"").append(PACKAGE).append("content-types\">");
    types.append("<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-");
    types.append("package.relationships+xml\"/>");
    types.append("<Default Extension=\"xml\" ContentType=\"application/xml\"/>");
    types.append(override("workbook.xml", "sheet.main"));
    types.append(override("styles.xml", "styles"));
    for (int i = 1; i <= sheets.size(); i++) {
      types.append(override("worksheets/sheet" + i + ".xml", "worksheet"));
    }
    write(types.append("</Types>"));
    zip.closeEntry();
  }

  private static String override(String part, String type) {
    return "<Override PartName=\"/xl/%s\" ContentType=\"%s%s+xml\"/>".formatted(part, TYPES, type);
  }

  private void entry(String name) throws IOException {
    ZipEntry entry = new ZipEntry(name);
    entry.setTimeLocal(TIME);
    zip.putNextEntry(entry);
  }

  static String attribute(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace("\"", "&quot;");
  }

  /** Ends the archive; what it was written into stays open. */
  @Override
  public void close() throws IOException {
    zip.finish();
  }
}
