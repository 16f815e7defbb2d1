package styloid.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import styloid.model.Message;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.spi.Progress;
import styloid.spi.Report;
import styloid.spi.Sheet;

/**
 * Export beside the bare library writing the same cells, formats, formulas and names. By hand:
 * {@code ExportBench cold-ours}, {@code ExportBench cold-bare} (each in a JVM of its own), {@code
 * ExportBench warm}.
 */
final class ExportBench {
  private static final int ROUNDS = 25;
  private static final int ROWS = 1200;

  private ExportBench() {}

  public static void main(String[] args) throws Exception {
    Report report = report();
    Path folder = Files.createTempDirectory("bench");
    Path target = folder.resolve("evaluation.xlsx");
    switch (args[0]) {
      case "cold-ours" -> print("first export, ms", ours(report, target));
      case "cold-bare" -> print("first bare export, ms", bare(Plan.of(report), target));
      default -> warm(report, target);
    }
    Files.deleteIfExists(target);
    Files.deleteIfExists(folder);
  }

  /** About as many cells as a full evaluation of both arms. */
  private static Report report() {
    Sample sample = Sample.full();
    Message head = Message.verbatim("Head");
    List<Sheet.Column> columns = new ArrayList<>();
    for (int i = 0; i < 6; i++) {
      columns.add(new Sheet.Column(head, 14));
    }
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (int i = 0; i < ROWS; i++) {
      String name = "sample__bench__" + i;
      Sheet.Cell words = new Sheet.Words(Message.verbatim("Motion " + i), Optional.empty());
      Sheet.Cell figure =
          new Sheet.Figure(new BigDecimal(i + ".5"), Unit.KILOGRAM_FORCE, Optional.of(name));
      Sheet.Cell derived =
          new Sheet.Derived(
              BigDecimal.valueOf(2L * i + 1),
              Unit.KILOGRAM_FORCE,
              1,
              Optional.of(name + "*2"),
              Optional.empty());
      rows.add(List.of(words, words, figure, derived, words, words));
    }
    sample.moreSheets.add(new Sheet("bench", head, List.of(new Sheet.Table(head, columns, rows))));
    sample.squeeze(Side.RIGHT, "30", "31", "32");
    return sample.report();
  }

  private static double ours(Report report, Path target) throws IOException {
    long from = System.nanoTime();
    new WorkbookExporter().write(report, target, Progress.none());
    return (System.nanoTime() - from) / 1e6;
  }

  private static double bare(Book book, Path target) throws IOException {
    long from = System.nanoTime();
    try (XSSFWorkbook workbook = new XSSFWorkbook();
        OutputStream out = Files.newOutputStream(target)) {
      workbook.setCellFormulaValidation(false);
      Map<String, CellStyle> styles = new HashMap<>();
      for (Page page : book.pages()) {
        XSSFSheet sheet = workbook.createSheet(page.name());
        for (int r = 0; r < page.lines().size(); r++) {
          XSSFRow row = sheet.createRow(r);
          List<Box> boxes = page.lines().get(r).boxes();
          for (int c = 0; c < boxes.size(); c++) {
            bare(boxes.get(c), row.createCell(c), workbook, styles);
          }
        }
      }
      book.names()
          .forEach(
              (name, place) -> {
                Name defined = workbook.createName();
                defined.setNameName(name);
                String sheet = book.pages().get(place.page()).name();
                defined.setRefersToFormula(BookWriter.reference(sheet, place));
              });
      workbook.write(out);
    }
    return (System.nanoTime() - from) / 1e6;
  }

  private static void bare(
      Box box, XSSFCell cell, XSSFWorkbook workbook, Map<String, CellStyle> styles) {
    String format = "";
    if (box instanceof Box.Words words) {
      cell.setCellValue(words.text());
    } else if (box instanceof Box.Figure figure) {
      cell.setCellValue(figure.value());
      format = figure.format();
    } else if (box instanceof Box.Live live) {
      cell.setCellFormula(live.formula());
      cell.setCellValue(live.value());
      format = live.format();
    }
    cell.setCellStyle(
        styles.computeIfAbsent(
            format,
            f -> {
              CellStyle style = workbook.createCellStyle();
              style.setDataFormat(workbook.createDataFormat().getFormat(f.isEmpty() ? "@" : f));
              return style;
            }));
  }

  private static void warm(Report report, Path target) throws IOException {
    Book book = Plan.of(report);
    double[] ours = new double[ROUNDS];
    double[] bare = new double[ROUNDS];
    for (int warming = 0; warming < 2; warming++) {
      for (int i = 0; i < ROUNDS; i++) {
        ours[i] = ours(report, target);
        bare[i] = bare(book, target);
      }
    }
    Arrays.sort(ours);
    Arrays.sort(bare);
    print("export, median ms", ours[ROUNDS / 2]);
    print("bare export, median ms", bare[ROUNDS / 2]);
    print("ratio of medians", ours[ROUNDS / 2] / bare[ROUNDS / 2]);
    print("ratio of fastest", ours[0] / bare[0]);
  }

  private static void print(String what, double value) {
    System.out.printf(Locale.ROOT, "%s: %.2f%n", what, value);
  }
}
