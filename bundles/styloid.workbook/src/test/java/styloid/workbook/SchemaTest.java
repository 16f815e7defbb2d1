package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;
import org.junit.jupiter.api.Test;
import org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument;
import org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.WsDrDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.SstDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.StyleSheetDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorkbookDocument;
import org.openxmlformats.schemas.spreadsheetml.x2006.main.WorksheetDocument;
import styloid.model.PatientRecord;
import styloid.session.SessionService;
import styloid.session.Sessions;
import styloid.spi.Caseload;
import styloid.spi.Texts;

/**
 * Every part of the packages against the schemas of ECMA-376 (transitional), as compiled whole in
 * the library's full set of schemas.
 */
class SchemaTest {
  private static Map<String, byte[]> parts(byte[] file) throws IOException {
    LinkedHashMap<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(file))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), zip.readAllBytes());
      }
    }
    return parts;
  }

  private static XmlObject parse(String name, byte[] bytes) throws XmlException, IOException {
    ByteArrayInputStream in = new ByteArrayInputStream(bytes);
    if (name.startsWith("xl/worksheets/sheet")) {
      return WorksheetDocument.Factory.parse(in);
    } else if (name.startsWith("xl/charts/chart")) {
      return ChartSpaceDocument.Factory.parse(in);
    } else if (name.startsWith("xl/drawings/drawing")) {
      return WsDrDocument.Factory.parse(in);
    }
    return switch (name) {
      case "xl/workbook.xml" -> WorkbookDocument.Factory.parse(in);
      case "xl/styles.xml" -> StyleSheetDocument.Factory.parse(in);
      case "xl/sharedStrings.xml" -> SstDocument.Factory.parse(in);
      default -> null;
    };
  }

  /** What the schemas say against a part; the parts of the package's own format have none here. */
  private static List<String> faults(byte[] file) throws IOException, XmlException {
    ArrayList<String> faults = new ArrayList<>();
    int judged = 0;
    for (Map.Entry<String, byte[]> part : parts(file).entrySet()) {
      XmlObject document = parse(part.getKey(), part.getValue());
      if (document != null) {
        ArrayList<XmlError> errors = new ArrayList<>();
        document.validate(new XmlOptions().setErrorListener(errors));
        errors.forEach(e -> faults.add(part.getKey() + ": " + e.getMessage()));
        judged++;
      }
    }
    assertTrue(judged >= 5, judged + " parts judged");
    return faults.stream().distinct().toList();
  }

  @Test
  void workbooksOfTheInventedClinicAreValid() throws Exception {
    SessionService session = Sessions.with(DemoClinic.MODULES, List.of());
    for (PatientRecord record : DemoClinic.records()) {
      byte[] file = BookWriter.write(Plan.of(DemoClinic.last(session, record)), sheet -> {});
      assertEquals(List.of(), faults(file), record.patient().recordNumber());
    }
    Sessions.close(session);
  }

  @Test
  void caseloadIsValid() throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    CaseloadBook.write(new Caseload(true, sink -> {}, new Texts(Map.of(), Locale.ENGLISH)), out);
    assertEquals(List.of(), faults(out.toByteArray()));
    ByteArrayOutputStream filled = new ByteArrayOutputStream();
    CaseloadBook.write(CaseloadBench.caseload(30, 4, null), filled);
    assertEquals(List.of(), faults(filled.toByteArray()));
  }

  @Test
  void aFaultIsFound() throws Exception {
    byte[] wrong =
        "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><cols/></worksheet>"
            .getBytes(java.nio.charset.StandardCharsets.UTF_8);
    ArrayList<XmlError> errors = new ArrayList<>();
    parse("xl/worksheets/sheet1.xml", wrong).validate(new XmlOptions().setErrorListener(errors));
    assertTrue(errors.size() > 0);
  }
}
