package styloid.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static styloid.command.Bench.force;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.Side;
import styloid.session.ModuleFault;

class ResultsCommandTest {
  @TempDir private Path folder;
  private final Bench bench = new Bench();
  private Path file;

  @BeforeEach
  void writeFile() throws IOException {
    file = Bench.file(folder, "a.json", "00417", force(Side.LEFT, "27.5"));
  }

  @Test
  void everythingThatFollowsIsWrittenWithItsReasonsAndSources() {
    assertEquals(0, bench.run("results", file));
    assertEquals(
        """
        {
          "format" : 1,
          "evaluations" : [
            {
              "id" : "b6a1c6de-51f3-4b5b-8a0b-8c1f3f3f9d10",
              "recordNumber" : "00417",
              "date" : "2026-03-02",
              "therapist" : "A. Example",
              "state" : "draft",
              "tests" : [
                {
                  "id" : "hold",
                  "version" : "1.0",
                  "module" : true
                }
              ],
              "results" : [
                {
                  "test" : "hold",
                  "result" : "mean",
                  "name" : "Mean",
                  "side" : "left",
                  "state" : "computed",
                  "value" : 27.4567,
                  "unit" : "kgf",
                  "shown" : "27.5 kg",
                  "steps" : [
                    "Mean is 27.5 kg"
                  ],
                  "sources" : [
                    {
                      "citation" : "Made-up 1985",
                      "status" : "memory"
                    },
                    {
                      "citation" : "Made-up 1999",
                      "status" : "verified"
                    }
                  ],
                  "status" : "memory",
                  "rule" : "mean"
                },
                {
                  "test" : "hold",
                  "result" : "mean",
                  "name" : "Mean",
                  "side" : "right",
                  "state" : "incomplete",
                  "reason" : "Trial 1 is missing",
                  "missing" : [
                    "hold/force/right/none/1"
                  ],
                  "steps" : [
                    "Mean is 27.5 kg"
                  ],
                  "sources" : [
                    {
                      "citation" : "Made-up 1985",
                      "status" : "memory"
                    },
                    {
                      "citation" : "Made-up 1999",
                      "status" : "verified"
                    }
                  ],
                  "status" : "memory",
                  "rule" : "mean"
                }
              ],
              "findings" : [
                {
                  "rule" : "weak",
                  "text" : "weak \\u2264 left",
                  "side" : "left",
                  "entries" : [
                    "hold/force/left/none/1"
                  ],
                  "results" : [
                    "hold/mean/left/none"
                  ]
                }
              ],
              "faults" : [ ]
            }
          ]
        }
        """,
        bench.out());
  }

  @Test
  void theSameFileGivesTheSameCharacters() {
    bench.run("results", file);
    String first = bench.out();
    bench.run("results", file);
    assertEquals(first, bench.out());
  }

  @Test
  void aFailedModuleIsSaidInTheOutputAndInTheExitCode() {
    bench.session.faults.add(new ModuleFault("hold", "results", "H-1", "took too long", false));
    assertEquals(4, bench.run("results", file));
    assertTrue(bench.out().contains("\"reason\" : \"took too long\""), bench.out());
    assertTrue(bench.err().contains("The module hold failed (results): took too long [H-1]"));
  }

  @Test
  void aBadFileGivesNoOutput() throws IOException {
    Path bad = Bench.file(folder, "b.json", "00417", force(Side.LEFT, "1000"));
    assertEquals(1, bench.run("results", bad));
    assertEquals("", bench.out());
  }
}
