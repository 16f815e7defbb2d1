package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.testkit.SampleEvaluations;

/** Every rule a result rests on has a page with its sources; every norm row a source and status. */
class SourcesTest {
  private static final Path RULES = Project.ROOT.resolve("docs/rules");

  static List<TestModule> modules() {
    return Modules.all();
  }

  static List<Path> tables() {
    return Project.files(Project.ROOT.resolve("bundles"), ".csv").stream()
        .filter(f -> f.toString().replace('\\', '/').contains("/src/main/resources/"))
        .toList();
  }

  @Test
  void theFourBuiltInTestsAreFound() {
    TreeSet<String> ids = new TreeSet<>();
    modules().forEach(module -> ids.add(module.definition().id().value()));
    assertTrue(ids.containsAll(List.of("goniometry", "grading", "grip", "screen")), ids::toString);
  }

  @ParameterizedTest
  @MethodSource("modules")
  void everyRuleHasAPageThatNamesItsSources(TestModule module) {
    TestDefinition definition = module.definition();
    SampleEvaluations samples = new SampleEvaluations(5);
    TreeSet<String> rules = new TreeSet<>();
    for (int i = 0; i < 40; i++) {
      PatientContext context =
          samples.context(samples.patient(), samples.snapshot(definition, 0.5 + i % 5 / 10.0));
      for (Result result : module.results(context)) {
        rules.add(result.why().rule());
      }
    }
    assertFalse(rules.isEmpty(), "no rule was seen");
    TreeSet<String> wanting = new TreeSet<>();
    for (String rule : rules) {
      Path page = RULES.resolve(rule + ".md");
      boolean named =
          Files.exists(page)
              && (Project.text(page).toLowerCase(Locale.ROOT).contains("source")
                  || Project.text(page).contains("common practice"));
      if (!named) {
        wanting.add(rule);
      }
    }
    assertEquals(new TreeSet<>(), wanting, "rules without a page that names a source");
  }

  @ParameterizedTest
  @MethodSource("tables")
  void everyTableNamesItsSourceAndEveryRowItsStatus(Path table) {
    List<String> lines = Project.text(table).lines().toList();
    assertTrue(
        lines.stream().anyMatch(l -> l.startsWith("# source:") && l.length() > 20),
        "no # source: line");
    List<String> rows = lines.stream().filter(l -> !l.isBlank() && !l.startsWith("#")).toList();
    assertTrue(List.of(rows.get(0).split(",")).contains("status"), () -> "columns: " + rows.get(0));
    for (String row : rows.subList(1, rows.size())) {
      assertTrue(
          row.matches(".*(^|,)(verified|memory|common practice|common-practice|computed)(,.*|$)"),
          () -> "no status: " + row);
    }
  }
}
