package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.model.Side;
import styloid.spi.Progress;
import styloid.spi.Report;

/** LibreOffice calculates our formulas anew and must come to the values we wrote. */
class RecalculationTest {
  private static final double SAME = 1e-9;

  @TempDir Path folder;

  private static PackageReader.ReadBook read(Path file) throws IOException {
    try (InputStream in = Files.newInputStream(file)) {
      return PackageReader.read(in);
    }
  }

  /** Every formula cell whose value changed when calculated anew. */
  private List<String> changed(Path file) throws IOException, InterruptedException {
    PackageReader.ReadBook before = read(file);
    PackageReader.ReadBook after = read(Office.in(folder).calculated(file));
    ArrayList<String> changed = new ArrayList<>();
    int formulas = 0;
    for (int i = 0; i < before.sheets().size(); i++) {
      for (Map.Entry<String, PackageReader.ReadCell> cell :
          before.sheets().get(i).cells().entrySet()) {
        if (cell.getValue().formula().isEmpty()) {
          continue;
        }
        formulas++;
        PackageReader.ReadCell again = after.sheets().get(i).cells().get(cell.getKey());
        double ours = Double.parseDouble(cell.getValue().value());
        boolean same =
            again.type().equals("n")
                && !again.formula().isEmpty()
                && Math.abs(Double.parseDouble(again.value()) - ours)
                    <= SAME * Math.max(1, Math.abs(ours));
        if (!same) {
          changed.add(cell.getKey() + " " + cell.getValue() + " became " + again);
        }
      }
    }
    assertTrue(formulas > 0, "no formula was compared");
    return changed;
  }

  @Test
  void everyFormulaCellKeepsOurValue() throws Exception {
    Path file = folder.resolve("evaluation.xlsx");
    Sample before = Sample.empty();
    before.squeeze(Side.LEFT, "10.5", "11", "12.25");
    Report report = Sample.full().after(LocalDate.of(2026, 2, 1), before).report();
    new WorkbookExporter().write(report, file, Progress.none());
    long live =
        Plan.of(report).pages().stream()
            .flatMap(page -> page.lines().stream())
            .flatMap(line -> line.boxes().stream())
            .filter(Box.Live.class::isInstance)
            .count();
    assertEquals(
        18, live, "8 results on their sheet, again in the summary, and a change of 2 cells");
    assertEquals(List.of(), changed(file));
  }

  /** The formulas the shipped modules give, over made-up evaluations with every place filled. */
  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3})
  void everyFormulaOfTheShippedModulesKeepsOurValue(long seed) throws Exception {
    Path file = folder.resolve("shipped.xlsx");
    Report report = ShippedModules.report(seed);
    new WorkbookExporter().write(report, file, Progress.none());
    long formulas =
        report.context().results().all().stream()
            .filter(r -> r.quantity().isPresent() && r.why().formula().isPresent())
            .count();
    assertTrue(formulas > 200, "only " + formulas + " results have a formula");
    assertEquals(List.of(), changed(file));
  }

  @Test
  void aWrongValueBesideAFormulaIsFound() throws Exception {
    Path file = folder.resolve("wrong.xlsx");
    Line line =
        Line.of(
            List.of(
                new Box.Figure(2, "0", Look.ENTERED, Optional.of("a__b")),
                new Box.Live("a__b*2", 4, "0", Optional.empty()),
                new Box.Live("_xlfn.NORM.S.DIST(a__b,TRUE)", 0.5, "0", Optional.empty())));
    Page page = new Page("Sheet", List.of(line), List.of(9, 9, 9), 0, 0, -1, false);
    Map<String, Book.Place> names = new LinkedHashMap<>(Map.of("a__b", new Book.Place(0, 0, 0)));
    Book.Edge edge = new Book.Edge("", "", "", "", false);
    Book book = new Book(List.of(page), names, edge, LocalDate.of(2026, 1, 1), "nobody");
    Files.write(file, BookWriter.write(book, sheet -> {}));
    List<String> changed = changed(file);
    assertEquals(1, changed.size(), changed.toString());
    assertTrue(changed.get(0).startsWith("C1 "), changed.toString());
    assertTrue(changed.get(0).contains("0.977249868"), changed.toString());
  }
}
