package styloid.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import styloid.session.SessionService;
import styloid.session.Sessions;
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

  /** An invented patient's fourth visit: all sheets, charts and changes. */
  private static Report report() throws IOException {
    SessionService session = Sessions.with(DemoClinic.MODULES, List.of());
    Report report = DemoClinic.last(session, DemoClinic.records().get(1));
    Sessions.close(session);
    return report;
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
          if (page.lines().get(r).picture().isPresent()) {
            chart(page, r, sheet);
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

  /** The same series by the library's own calls, as far as its small schemas go. */
  private static void chart(Page page, int r, XSSFSheet sheet) {
    Picture picture = page.lines().get(r).picture().orElseThrow();
    XSSFDrawing drawing = sheet.createDrawingPatriarch();
    XSSFChart chart = drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 0, r, 8, r + 1));
    chart.setTitleText(picture.title());
    chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
    var across = chart.createCategoryAxis(AxisPosition.BOTTOM);
    var up = chart.createValueAxis(AxisPosition.LEFT);
    String[] names = new String[picture.rows()];
    for (int i = 0; i < names.length; i++) {
      names[i] = ((Box.Words) page.lines().get(r + 2 + i).boxes().get(0)).text();
    }
    var places = XDDFDataSourcesFactory.fromArray(names, range(page, r, names.length, 0), 0);
    XDDFChartData bars = chart.createData(ChartTypes.BAR, across, up);
    XDDFChartData lines = chart.createData(ChartTypes.LINE, across, up);
    for (int column = 1; column <= picture.traces().size(); column++) {
      Double[] numbers = new Double[picture.rows()];
      for (int i = 0; i < numbers.length; i++) {
        Box box = page.lines().get(r + 2 + i).boxes().get(column);
        numbers[i] = box.match(w -> null, Box.Figure::value, Box.Live::value, g -> null);
      }
      var values =
          XDDFDataSourcesFactory.fromArray(numbers, range(page, r, numbers.length, column), column);
      boolean bar = picture.traces().get(column - 1) == Sheet.Trace.BARS;
      var series = (bar ? bars : lines).addSeries(places, values);
      series.setTitle("Series", null);
      XDDFShapeProperties shape = new XDDFShapeProperties();
      shape.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(PresetColor.BLACK)));
      series.setShapeProperties(shape);
    }
    chart.plot(bars);
    chart.plot(lines);
  }

  private static String range(Page page, int r, int rows, int column) {
    return new CellRangeAddress(r + 2, r + 1 + rows, column, column)
        .formatAsString(page.name(), true);
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
