package styloid.workbook;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Date;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.zip.Deflater;
import org.apache.commons.compress.archivers.zip.ZipArchiveOutputStream;
import org.apache.poi.ooxml.POIXMLProperties;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFName;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/** Writes a planned book as the bytes of an xlsx file; equal books give equal bytes. */
final class BookWriter {
  private BookWriter() {}

  /** Called before each sheet; may stop the writing by throwing. */
  interface Step {
    void sheet(int number);
  }

  static byte[] write(Book book, Step step) throws IOException {
    XSSFWorkbook workbook = new XSSFWorkbook();
    try {
      // Formulas were checked when planned; the library's own parser lacks younger functions.
      workbook.setCellFormulaValidation(false);
      ArrayList<XSSFSheet> sheets = new ArrayList<>();
      book.pages().forEach(page -> sheets.add(workbook.createSheet(page.name())));
      names(book, workbook);
      Styles styles = new Styles(workbook);
      Strings strings = new Strings(workbook);
      LinkedHashMap<String, byte[]> charts = new LinkedHashMap<>();
      for (int i = 0; i < sheets.size(); i++) {
        step.sheet(i);
        SheetWriter.write(book.pages().get(i), book.edge(), sheets.get(i), styles, strings);
        charts(book.pages().get(i), sheets.get(i), charts);
      }
      properties(book, workbook);
      ByteArrayOutputStream out = new ByteArrayOutputStream(1 << 20);
      // Not compressed here, since it is packed anew.
      try (ZipArchiveOutputStream loose = new ZipArchiveOutputStream(out)) {
        loose.setLevel(Deflater.NO_COMPRESSION);
        workbook.write(loose);
      }
      return FixedZip.repack(out.toByteArray(), charts);
    } finally {
      // Closing it would save it once more, into nothing.
      workbook.getPackage().revert();
    }
  }

  /** Gives each chart its place on the sheet; what it shows is put into its part afterwards. */
  private static void charts(Page page, XSSFSheet sheet, Map<String, byte[]> parts) {
    for (int r = 0; r < page.lines().size(); r++) {
      if (page.lines().get(r).picture().isPresent()) {
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        XSSFClientAnchor anchor =
            drawing.createAnchor(0, 0, 0, 0, 0, r, page.widths().size(), r + 1);
        XSSFChart chart = drawing.createChart(anchor);
        chart
            .getGraphicFrame()
            .getCTGraphicalObjectFrame()
            .getNvGraphicFramePr()
            .getCNvPr()
            .setDescr(SafeText.encode(page.lines().get(r).picture().get().title()));
        String part = chart.getPackagePart().getPartName().getName().substring(1);
        parts.put(part, ChartXml.of(page, r));
      }
    }
  }

  private static void names(Book book, XSSFWorkbook workbook) {
    List<Page> pages = book.pages();
    book.names()
        .forEach(
            (name, place) -> {
              XSSFName defined = workbook.createName();
              defined.setNameName(name);
              defined.setRefersToFormula(reference(pages.get(place.page()).name(), place));
            });
  }

  /** An absolute address with its sheet, such as {@code 'Grip and pinch'!$B$5}. */
  static String reference(String sheet, Book.Place place) {
    return new CellReference(sheet, place.row(), place.column(), true, true).formatAsString();
  }

  private static void properties(Book book, XSSFWorkbook workbook) throws IOException {
    POIXMLProperties properties = workbook.getProperties();
    LocalDate day = book.day();
    Optional<Date> date = Optional.of(Date.from(day.atStartOfDay().toInstant(ZoneOffset.UTC)));
    POIXMLProperties.CoreProperties core = properties.getCoreProperties();
    core.setCreator(SafeText.forPageEdge(book.author(), 200).replace("&&", "&"));
    core.getUnderlyingProperties().setCreatedProperty(date);
    core.getUnderlyingProperties().setModifiedProperty(date);
    properties.getExtendedProperties().setApplication("Styloid");
  }
}
