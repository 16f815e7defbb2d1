package styloid.checks.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.checks.Project;

/**
 * The assembled suite, its window in memory, worked by keys alone: open a demo patient, type, be
 * killed, reopen, export, and read the workbook back.
 */
class SuiteWindowTest {
  private static final String CHILD = "DEMO-010";
  private static final Path PICTURES =
      Project.ROOT.resolve("features/styloid.checks/target/pictures");

  @TempDir Path data;

  private DrivenSuite open() throws IOException {
    Files.createDirectories(PICTURES);
    DrivenSuite suite = DrivenSuite.start(data, "--demo");
    suite.see("14 found");
    return suite;
  }

  private static void picture(DrivenSuite suite, String name) throws IOException {
    assertEquals("ok", suite.ask("picture " + PICTURES.resolve(name + ".png")));
  }

  /** Finds a patient by typing and opens the newest evaluation. */
  private static void openEvaluation(DrivenSuite suite, String search) throws IOException {
    suite.type(search);
    suite.see("1 found");
    suite.keys("ENTER", "ENTER", "ENTER");
    suite.see("All entries saved");
  }

  @Test
  void whatWasSavedBeforeAKillIsThereAfterItAndInTheWorkbook() throws Exception {
    try (DrivenSuite suite = open()) {
      openEvaluation(suite, "larch");
      suite.keys("ctrl+PAGE_DOWN");
      suite.see("Manual grading of strength: shoulder");
      suite.type("1");
      suite.type("1");
      suite.see("in progress");
      suite.see("All entries saved");
      picture(suite, "grading");
      suite.kill();
    }
    Map<String, String> stored = StoredEntries.of(data, CHILD);
    assertEquals("full", stored.get("grading__shoulder_flexion_range__right__1"));
    assertEquals("strong", stored.get("grading__shoulder_flexion_hold__right__1"));
    Path book = data.resolve("kept.xlsx");
    try (DrivenSuite suite = open()) {
      openEvaluation(suite, "larch");
      suite.keys("ctrl+E");
      suite.see("Export the evaluation");
      suite.keys("ctrl+A");
      suite.type(book.toString());
      suite.keys("ENTER");
      suite.see("Written to");
      picture(suite, "exported");
    }
    Workbook read = Workbook.read(book);
    assertTrue(read.shows("Robin Larch (invented)"));
    assertEquals("full", read.named("grading__shoulder_flexion_range__right__1"));
    assertEquals("strong", read.named("grading__shoulder_flexion_hold__right__1"));
    int trials = 0;
    for (Map.Entry<String, String> entry : stored.entrySet()) {
      if (entry.getKey().startsWith("grip__power__")) {
        trials++;
        double inBook = Double.parseDouble(read.named(entry.getKey()));
        assertEquals(Double.parseDouble(entry.getValue()), inBook, entry.getKey());
      }
    }
    assertEquals(6, trials);
  }

  /** Product rule: a screen of both arms, all normal, takes at most 25 key presses. */
  @Test
  void aNormalScreenOfBothArmsTakesTwoKeyPresses() throws Exception {
    try (DrivenSuite suite = open()) {
      suite.type("larch");
      suite.see("1 found");
      suite.keys("ENTER", "ENTER", "shift+TAB");
      assertTrue(suite.ask("focus").contains("New evaluation"), () -> "focus is elsewhere");
      suite.keys("SPACE");
      suite.see("New evaluation of");
      suite.keys("ctrl+A");
      suite.type("T. Tester");
      suite.keys("ENTER");
      suite.see("untouched");
      suite.see("All entries saved");
      suite.keys("ctrl+R");
      suite.see("Record the rest as full?");
      suite.keys("SPACE");
      suite.see("Saving: ");
      suite.see("All entries saved");
      picture(suite, "screen-done");
    }
    long full =
        StoredEntries.of(data, CHILD).entrySet().stream()
            .filter(e -> e.getKey().startsWith("screen__") && e.getValue().equals("full"))
            .count();
    assertEquals(39 * 2, full, "every motion of both arms");
  }

  @Test
  void everyPlaceThatTakesTheFocusHasAName() throws Exception {
    try (DrivenSuite suite = open()) {
      assertEquals("none", suite.ask("nameless"), "caseload");
      picture(suite, "caseload");
      openEvaluation(suite, "fir");
      for (int page = 1; page <= 12; page++) {
        assertEquals("none", suite.ask("nameless"), "page " + page);
        picture(suite, "page-" + page);
        suite.keys("ctrl+PAGE_DOWN");
        suite.see("All entries saved");
      }
    }
  }
}
