package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.model.Choice;
import styloid.model.Evaluation;
import styloid.model.Side;

/** What a reader finds in the workbook of the sample, read by the spreadsheet library. */
class ContentTest {
  private static XSSFWorkbook workbook;

  @BeforeAll
  static void write() throws IOException {
    workbook = open(Sample.full());
  }

  private static XSSFWorkbook open(Sample sample) throws IOException {
    byte[] bytes = BookWriter.write(Plan.of(sample.report()), sheet -> {});
    return new XSSFWorkbook(new ByteArrayInputStream(bytes));
  }

  private static XSSFCell named(String name) {
    CellReference at = new CellReference(workbook.getName(name).getRefersToFormula());
    return workbook.getSheet(at.getSheetName()).getRow(at.getRow()).getCell(at.getCol());
  }

  private static List<String> texts(XSSFSheet sheet) {
    ArrayList<String> texts = new ArrayList<>();
    sheet.forEach(
        row ->
            row.forEach(
                cell -> {
                  if (cell.getCellType() == CellType.STRING) {
                    texts.add(cell.getStringCellValue());
                  }
                }));
    return texts;
  }

  private static String all(String sheet) {
    return String.join("\n", texts(workbook.getSheet(sheet)));
  }

  @Test
  void whatWasRecordedInSpiteOfAPrecautionStandsWithItsReason() throws IOException {
    Sample sample = Sample.full();
    String reason = "surgeon released light resistance today";
    sample.recordInSpite("push", Side.LEFT, new Choice("full"), reason);
    try (XSSFWorkbook book = open(sample)) {
      for (String sheet : List.of("Cautions and scope", "Entries")) {
        List<String> texts = texts(book.getSheet(sheet));
        assertTrue(texts.contains(reason), sheet);
        assertTrue(texts.contains("Why in spite of a precaution"), sheet);
        assertTrue(texts.contains("Precaution overridden, as it was then"), sheet);
        assertTrue(
            texts.contains("no resistance, left elbow; until: until lifted; set by: Dr. Lifted"),
            texts::toString);
      }
      assertTrue(
          texts(book.getSheet("Cautions and scope")).contains("Recorded in spite of a precaution"));
      String summary = String.join("\n", texts(book.getSheet("Summary")));
      assertTrue(summary.contains("recorded in spite of a precaution"));
    }
    assertFalse(all("Cautions and scope").contains("in spite of a precaution"));
  }

  @Test
  void theSettingsAnEvaluationWasMadeUnderAreNamed() throws IOException {
    assertTrue(all("Method and sources").contains("table of 1999 (preset)"));
  }

  @Test
  void sheetsStandInTheirOrder() {
    ArrayList<String> names = new ArrayList<>();
    workbook.forEach(sheet -> names.add(sheet.getSheetName()));
    assertEquals(
        List.of(
            "Summary",
            "Sample test",
            "Entries",
            "Method and sources",
            "Cautions and scope",
            "Workings"),
        names);
  }

  @Test
  void bannerStandsOnEverySheetAndEveryPrintedPage() {
    workbook.forEach(
        sheet -> {
          String person = sheet.getRow(0).getCell(0).getStringCellValue();
          assertEquals("Rosalind Sample  |  born May 2, 1960 (age 65)  |  record 000417", person);
          String visit = sheet.getRow(1).getCell(0).getStringCellValue();
          assertTrue(visit.startsWith("DRAFT, not signed"), visit);
          assertTrue(visit.contains("involved side: left"), visit);
          assertTrue(visit.contains("no resistance, left wrist"), visit);
          assertEquals("Rosalind Sample, May 2, 1960, 000417", sheet.getHeader().getLeft());
          assertEquals("DRAFT, not signed", sheet.getHeader().getRight());
          assertEquals("Page &P of &N", sheet.getFooter().getRight());
        });
  }

  @ParameterizedTest
  @CsvSource({
    "sample__squeeze__right__1, 31.5, 0.0\" kg\"",
    "sample__squeeze__right__2, 33, 0\" kg\"",
    "sample__squeeze__right__3, 32.25, 0.00\" kg\"",
    "sample__squeeze__left__2, 19.5, 0.0\" kg\"",
    "sample__bend__right__index__1, -12, 0\"\u00b0\""
  })
  void enteredNumberIsANumberWithItsUnitAndDigits(String name, double value, String format) {
    XSSFCell cell = named(name);
    assertEquals(CellType.NUMERIC, cell.getCellType());
    assertEquals(value, cell.getNumericCellValue());
    assertEquals(format, cell.getCellStyle().getDataFormatString());
    assertFalse(cell.getCellStyle().getLocked());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          sample__r_mean__right       | AVERAGE(sample__squeeze__right__1,sample__squeeze__right__2,sample__squeeze__right__3)
          sample__r_sd__left          | _xlfn.STDEV.S(sample__squeeze__left__1,sample__squeeze__left__2,sample__squeeze__left__3)
          sample__r_z__left           | (sample__r_mean__left-28.3)/5.9
          sample__r_percentile__right | 100*_xlfn.NORM.S.DIST(sample__r_z__right,TRUE)
          """)
  void resultIsALiveFormulaWithOurValueAndLocked(String name, String formula) {
    XSSFCell cell = named(name);
    assertEquals(CellType.FORMULA, cell.getCellType());
    assertEquals(formula, cell.getCellFormula());
    assertEquals(CellType.NUMERIC, cell.getCachedFormulaResultType());
    assertNotEquals(0, cell.getNumericCellValue());
    assertTrue(cell.getCellStyle().getLocked());
  }

  @Test
  void meanOfTheCorrectedTrialsIsCached() {
    assertEquals((18.5 + 19.5 + 21) / 3, named("sample__r_mean__left").getNumericCellValue());
  }

  @Test
  void enteredAndCalculatedDifferWithoutColour() {
    XSSFCell entered = named("sample__squeeze__left__1");
    XSSFCell live = named("sample__r_mean__left");
    assertFalse(entered.getCellStyle().getFont().getItalic());
    assertTrue(live.getCellStyle().getFont().getItalic());
    assertEquals(FillPatternType.NO_FILL, entered.getCellStyle().getFillPattern());
    assertEquals(FillPatternType.SOLID_FOREGROUND, live.getCellStyle().getFillPattern());
    assertNotEquals(entered.getCellStyle().getBorderLeft(), live.getCellStyle().getBorderLeft());
  }

  @Test
  void absenceIsItsWordWithTheNote() {
    assertEquals("precaution (fracture)", named("sample__push__left__1").getStringCellValue());
    assertEquals("pain", named("sample__push__right__1").getStringCellValue());
  }

  @Test
  void noTextIsBlank() {
    workbook.forEach(
        sheet ->
            sheet.forEach(
                row ->
                    row.forEach(
                        cell ->
                            assertFalse(
                                cell.getCellType() == CellType.STRING
                                    && cell.getStringCellValue().isBlank(),
                                sheet.getSheetName() + " " + cell.getAddress()))));
  }

  @Test
  void recordNumberKeepsItsZerosAsText() {
    assertTrue(texts(workbook.getSheet("Summary")).contains("000417"));
  }

  @Test
  void summarySaysWhatIsOutOfTheOrdinary() {
    String summary = all("Summary");
    assertTrue(
        summary.contains("Wrist: Wrist extension, look\nfull\nlimited\nsides differ"), summary);
    assertTrue(summary.contains("unlikely value, confirmed"), summary);
    assertTrue(summary.contains("Left: The mean squeeze of 19.7 kg is weaker"), summary);
    assertTrue(summary.contains("The test \"Coin sorting\" is missing"), summary);
    assertTrue(summary.contains("until: Apr 1, 2026; set by: the surgeon"), summary);
    assertTrue(summary.contains("It is no diagnosis and no treatment order"), summary);
  }

  @Test
  void summaryPrintsOnOnePageTheOthersInOneWidth() {
    workbook.forEach(
        sheet -> {
          PrintSetup print = sheet.getPrintSetup();
          assertTrue(sheet.getFitToPage());
          assertEquals(PrintSetup.A4_PAPERSIZE, print.getPaperSize());
          assertEquals(1, print.getFitWidth());
          assertEquals(sheet.getSheetName().equals("Summary") ? 1 : 0, print.getFitHeight());
        });
    assertEquals("5:5", workbook.getSheet("Entries").getRepeatingRows().formatAsString());
    assertNull(workbook.getSheet("Sample test").getRepeatingRows());
  }

  @Test
  void lettersizedPaperWhereItIsUsed() throws IOException {
    Sample sample = Sample.full();
    sample.locale = Locale.US;
    try (XSSFWorkbook american = open(sample)) {
      assertEquals(
          PrintSetup.LETTER_PAPERSIZE, american.getSheetAt(0).getPrintSetup().getPaperSize());
    }
  }

  @Test
  void entriesHoldTheWholeLedger() {
    XSSFSheet entries = workbook.getSheet("Entries");
    int first = entries.getRepeatingRows().getFirstRow() + 1;
    assertEquals(Sample.full().entries.size(), entries.getLastRowNum() - first + 1);
    List<String> texts = texts(entries);
    assertEquals(4, texts.stream().filter("superseded"::equals).count());
    assertEquals(1, texts.stream().filter("taken back"::equals).count());
    assertEquals(1, texts.stream().filter("yes"::equals).count());
    assertTrue(texts.contains("09:00:20"));
    String once = texts.get(3);
    assertTrue(once.contains("All by Ada Example."), once);
    assertTrue(once.contains("Times: UTC on 2026-03-14."), once);
    assertTrue(texts.contains("=1+1 is no formula here"));
  }

  @Test
  void eachSourceStandsOnceWithItsStatusAndRules() {
    List<String> texts = texts(workbook.getSheet("Method and sources"));
    String norm = "Invented N. 2020. A norm for tests. J Made Up 1:1-2";
    assertEquals(1, texts.stream().filter(norm::equals).count());
    int at = texts.indexOf(norm);
    assertEquals("from memory", texts.get(at + 1));
    assertEquals("percentile, z", texts.get(at + 2));
    assertTrue(all("Workings").contains("The three trials are added and divided by 3."));
    assertEquals("1.2", texts.get(texts.indexOf("Version first used here") + 2));
    assertEquals("1", texts.get(texts.indexOf("Version first used here") + 3));
  }

  @Test
  void cautionsAndScopeNameLimitsAndWhatWasWithheld() {
    String cautions = all("Cautions and scope");
    assertTrue(cautions.contains("orders of the surgeon come first"), cautions);
    assertTrue(cautions.contains("describe groups of people, not this person"), cautions);
    assertTrue(cautions.contains("This evaluation is a draft"), cautions);
    assertTrue(
        cautions.contains("no resistance\nleft wrist\nuntil the fracture has healed"), cautions);
    assertTrue(cautions.contains("Sample test\nLeft\nHolds against a push\nfracture"), cautions);
    assertTrue(cautions.contains("whole test\nNo loading before the bone has healed."), cautions);
  }

  @Test
  void signedEvaluationIsNoDraft() throws IOException {
    Sample sample = Sample.full();
    sample.state = Evaluation.State.SIGNED;
    try (XSSFWorkbook signed = open(sample)) {
      signed.forEach(
          sheet -> {
            assertFalse(
                String.join("\n", texts((XSSFSheet) sheet))
                    .toLowerCase(Locale.ROOT)
                    .contains("draft"));
            assertEquals("signed", sheet.getHeader().getRight());
          });
    }
  }

  @Test
  void everySheetIsProtectedWithoutPassword() {
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      XSSFSheet sheet = workbook.getSheetAt(i);
      assertTrue(sheet.isSheetLocked());
      assertNull(sheet.getCTWorksheet().getSheetProtection().getPassword());
      assertNull(sheet.getCTWorksheet().getSheetProtection().getHashValue());
    }
  }

  @Test
  void emptyEvaluationSaysSo() throws IOException {
    try (XSSFWorkbook empty = open(Sample.empty())) {
      String summary = String.join("\n", texts(empty.getSheet("Summary")));
      assertTrue(summary.contains("Nothing was recorded in this evaluation."), summary);
      assertTrue(summary.contains("No result could be calculated."), summary);
      assertTrue(summary.contains("None is recorded as in force"), summary);
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u05e8\u05d5\u05d6 \u05d3\u05d5\u05d2\u05de\u05d4",
        "\u0631\u0648\u0632",
        "Zo\u00eb \ud83d\udc4b\ud83c\udffd",
        "A & B <C> \"D\"",
        "\ud83d\ude00\ud83d\ude00"
      })
  void namesOfAnyScriptSurvive(String name) throws IOException {
    Sample sample = Sample.full();
    sample.name = name;
    try (XSSFWorkbook any = open(sample)) {
      assertTrue(texts(any.getSheet("Summary")).contains(name));
      assertTrue(any.getSheetAt(0).getHeader().getLeft().startsWith(name.replace("&", "&&")));
    }
  }

  @Test
  void edgeOfThePageStaysWithinWhatTheFileAllows() throws IOException {
    Sample sample = Sample.full();
    sample.name = "&".repeat(200);
    sample.record = "&".repeat(60);
    try (XSSFWorkbook longest = open(sample)) {
      String header = longest.getSheetAt(0).getCTWorksheet().getHeaderFooter().getOddHeader();
      assertTrue(header.length() <= 255, header.length() + " characters");
    }
  }
}
