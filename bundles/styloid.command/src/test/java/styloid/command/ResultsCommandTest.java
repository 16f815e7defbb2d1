package styloid.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static styloid.command.Bench.force;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import styloid.model.Region;
import styloid.model.Side;
import styloid.plan.PlanStep;
import styloid.plan.Planner;
import styloid.plan.Stage;
import styloid.plan.StepId;
import styloid.session.ModuleFault;
import styloid.spi.Position;

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

  @Test
  void theOrderIsWrittenWithWhatItSaves() {
    bench.session.order =
        Optional.of(new Planner().plan(List.of(step(Side.LEFT), step(Side.RIGHT))));
    assertEquals(0, bench.run("results", file));
    String order =
        """
              "order" : {
                "summary" : "1 changes of position: body 0, limb support 0, forearm 1. The order from proximal to distal needs 1.",
                "proven" : true,
                "changes" : {
                  "body" : 0,
                  "support" : 0,
                  "rotation" : 1,
                  "total" : 1
                },
                "plain" : {
                  "body" : 0,
                  "support" : 0,
                  "rotation" : 1,
                  "total" : 1
                },
                "saved" : {
                  "body" : 0,
                  "support" : 0,
                  "rotation" : 0,
                  "total" : 0
                },
                "done" : 0,
                "steps" : [
                  {
                    "test" : "hold",
                    "group" : "all",
                    "name" : "All",
                    "side" : "right",
                    "gravityReduced" : false,
                    "stage" : "resistance",
                    "position" : {
                      "body" : "sitting",
                      "support" : "free",
                      "rotation" : "mid",
                      "shown" : "sitting, limb free, mid-rotation"
                    },
                    "painful" : false,
                    "changes" : {
                      "body" : 0,
                      "support" : 0,
                      "rotation" : 0,
                      "total" : 0
                    },
                    "reasons" : [
                      "The first position."
                    ]
                  },
        """;
    assertTrue(bench.out().contains(order), bench.out());
  }

  @Test
  void withoutAnOrderNothingIsSaidOfIt() {
    assertEquals(0, bench.run("results", file));
    assertFalse(bench.out().contains("\"order\""), bench.out());
  }

  private static PlanStep step(Side side) {
    Position position =
        new Position(
            Position.Body.SITTING,
            Position.Support.FREE,
            side == Side.RIGHT ? Position.Rotation.MID : Position.Rotation.PALM_UP);
    return new PlanStep(
        new StepId(Bench.HOLD, "all", side, false),
        Region.HAND,
        Stage.RESISTANCE,
        1,
        Optional.of(position),
        false,
        side == Side.LEFT,
        PlanStep.State.TO_DO);
  }
}
