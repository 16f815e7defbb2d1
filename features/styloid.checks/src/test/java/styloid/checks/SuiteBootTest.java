package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;

/** The assembled suite in a real Felix, without its window. */
class SuiteBootTest {
  private static final Path DEMO = Project.suite().resolve("demo");

  @TempDir Path data;

  @Test
  void everyBundleIsActiveAndTheBuiltInTestsAreThere() throws Exception {
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      ArrayList<String> asleep = new ArrayList<>();
      for (Bundle bundle : suite.bundles()) {
        if (bundle.getState() != Bundle.ACTIVE) {
          asleep.add(bundle.getSymbolicName());
        }
      }
      assertEquals(List.of(), asleep);
      SuiteUnderTest.Ran modules = suite.run("modules");
      assertEquals(0, modules.code(), modules::err);
      for (String id : List.of("screen", "grading", "goniometry", "grip")) {
        assertTrue(modules.out().contains(id), modules::out);
      }
    }
  }

  @Test
  void theDemoClinicGoesInAndComesOutAsWorkbooks() throws Exception {
    Path books = data.resolve("books");
    Files.createDirectories(books);
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      SuiteUnderTest.Ran check = suite.run(command("check", List.of()));
      assertEquals(0, check.code(), check::err);
      SuiteUnderTest.Ran first = suite.run("import", DEMO.toString());
      assertEquals(0, first.code(), first::err);
      SuiteUnderTest.Ran again = suite.run("import", DEMO.toString());
      assertEquals(0, again.code(), again::err);
      SuiteUnderTest.Ran written =
          suite.run(command("workbook", List.of("--to", books.toString())));
      assertEquals(0, written.code(), written::err);
    }
    assertTrue(Project.files(books, ".xlsx").size() >= 20, books::toString);
  }

  private static String[] command(String word, List<String> more) {
    Stream<String> files = Project.list(DEMO).stream().map(Path::toString);
    return Stream.of(Stream.of(word), files, more.stream())
        .flatMap(part -> part)
        .toArray(String[]::new);
  }
}
