package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.ServiceEvent;

/** A clinic's declared test in the assembled suite: it comes, breaks, goes and returns, live. */
class DeclaredTestsTest {
  private static final String TEST =
      """
      {"format": 1, "id": "coin-sort", "version": "1.0", "title": "Coin sorting",
       "citation": "common practice, no source", "status": "common-practice", "region": "hand",
       "items": [{"id": "time", "title": "Time", "kind": "number", "unit": "s", "range": [1, 300],
         "decimals": 1, "sides": "both", "trials": 2}],
       "results": [{"id": "mean", "title": "Mean time", "formula": "AVERAGE(time)", "unit": "s"}]}
      """;

  private static final String VISIT =
      """
      {
        "format": 1,
        "patient": {
          "id": "0d72c723-91e0-39af-ae06-1341d17faa11",
          "recordNumber": "1",
          "name": "Made-up Person"
        },
        "evaluations": [
          {
            "id": "4517f05a-c2ab-3084-9dda-2c0bc8b4ea11",
            "date": "2026-03-12",
            "therapist": "A. Therapist",
            "state": "draft",
            "versions": {"coin-sort": "1.0"},
            "entries": [
              {"id": "04ec0ef4-fc3d-3395-9898-e755c4063311", "item": "coin-sort/time", "side": "right", "value": {"amount": "20.0", "unit": "s"}, "at": "2026-03-12T09:00:07Z"},
              {"id": "04ec0ef4-fc3d-3395-9898-e755c4063312", "item": "coin-sort/time", "side": "right", "trial": 2, "value": {"amount": "23.0", "unit": "s"}, "at": "2026-03-12T09:00:14Z"}
            ]
          }
        ]
      }
      """;

  @TempDir Path data;

  /** As a careful editor saves: a whole file takes the place of the one before. */
  private void save(String text) throws IOException {
    Path folder = Files.createDirectories(data.resolve("tests"));
    Path unfinished = Files.writeString(folder.resolve(".coin-sort"), text);
    Files.move(unfinished, folder.resolve("coin-sort.json"), StandardCopyOption.REPLACE_EXISTING);
  }

  private Path visit() throws IOException {
    return Files.writeString(data.resolve("visit.json"), VISIT);
  }

  @Test
  void aSavedFileIsThereABrokenSaveKeepsItADeletedOneIsGone() throws Exception {
    String module = "styloid.spi.TestModule";
    String notice = "styloid.spi.ModuleNotice";
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      assertFalse(suite.run("modules").out().contains("coin-sort"));
      suite.until(module, ServiceEvent.REGISTERED, () -> save(TEST));
      suite.eventually(r -> r.out().contains("Coin sorting (coin-sort 1.0)"), "modules");

      String broken = TEST.replace("AVERAGE", "AVERAG").replace("1.0", "1.1");
      suite.until(notice, ServiceEvent.REGISTERED, () -> save(broken));
      SuiteUnderTest.Ran said = suite.eventually(r -> r.code() == 4, "modules");
      assertTrue(said.out().contains("Coin sorting (coin-sort 1.0)"), "the last good one is gone");
      for (String part :
          new String[] {"coin-sort.json, line 5", "$.results[0].formula", "AVERAGE", "1.0 stays"}) {
        assertTrue(said.err().contains(part), said::err);
      }

      suite.until(module, ServiceEvent.REGISTERED, () -> save(TEST.replace("\"1.0\"", "\"1.1\"")));
      suite.eventually(r -> r.out().contains("coin-sort 1.1") && r.code() == 0, "modules");

      suite.until(
          module,
          ServiceEvent.UNREGISTERING,
          () -> Files.delete(data.resolve("tests/coin-sort.json")));
      suite.eventually(r -> !r.out().contains("coin-sort"), "modules");
    }
  }

  @Test
  void aFileThatClaimsAnothersIdIsRefused() throws Exception {
    save(TEST.replace("coin-sort", "grip"));
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      SuiteUnderTest.Ran said =
          suite.eventually(r -> r.err().contains("the id \"grip\" is taken"), "modules");
      assertTrue(said.out().contains("Grip and pinch (grip "), said::out);
    }
  }

  @Test
  void aRecordOutlivesItsTestAndIsTheSameToTheByte() throws Exception {
    save(TEST);
    String visit = visit().toString();
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      assertEquals(0, suite.run("import", visit).code());
      assertTrue(suite.run("results", visit).out().contains("\"value\" : 21.5"));
    }
    byte[] with = dumped("with");
    Files.delete(data.resolve("tests/coin-sort.json"));
    byte[] without = dumped("without");
    assertEquals(text(with), text(without));
    assertTrue(text(without).contains("Coin sorting"), "its words are kept with it");

    Path kept = Files.write(data.resolve("kept.json"), without);
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      SuiteUnderTest.Ran results = suite.run("results", kept.toString());
      assertTrue(results.out().contains("\"module\" : false"), results::out);
      Path books = Files.createDirectories(data.resolve("books"));
      assertEquals(0, suite.run("workbook", kept.toString(), "--to", books.toString()).code());
      assertEquals(1, Project.files(books, ".xlsx").size());
    }
    save(TEST);
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      assertTrue(suite.run("results", kept.toString()).out().contains("\"value\" : 21.5"));
    }
  }

  private byte[] dumped(String name) throws Exception {
    Path to = data.resolve(name);
    try (SuiteUnderTest suite = SuiteUnderTest.start(data)) {
      assertEquals(0, suite.run("dump", "--to", to.toString()).code());
    }
    return Files.readAllBytes(Project.files(to, ".json").get(0));
  }

  private static String text(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8);
  }
}
