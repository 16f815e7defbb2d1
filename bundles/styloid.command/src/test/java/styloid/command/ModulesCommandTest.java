package styloid.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import styloid.session.ModuleFault;

class ModulesCommandTest {
  private final Bench bench = new Bench();

  @Test
  void everyItemIsListedWithRangeSidesDigitsAndTrials() {
    assertEquals(0, bench.run("modules"));
    assertEquals(
        """
        Hold (hold 1.0)
          item      takes                sides       digits      trials
          force     0..100 kgf|[lbf_av]  right left  -           3
          end-feel  soft|firm            right left  index ring  1
          device    text (20)            unsided     -           1

        """,
        bench.out());
  }

  @Test
  void theSameAsJson() {
    assertEquals(0, bench.run("modules", "--json"));
    assertTrue(
        bench
            .out()
            .contains(
                """
                        {
                          "id" : "force",
                          "name" : "Force",
                          "kind" : "number",
                          "units" : [
                            "kgf",
                            "[lbf_av]"
                          ],
                          "min" : 0,
                          "max" : 100,
                          "likelyMin" : 1,
                          "likelyMax" : 60,
                          "decimals" : 1,
                          "sides" : [
                            "right",
                            "left"
                          ],
                          "digits" : [ ],
                          "trials" : 3,
                          "demand" : "grip-or-pinch",
                          "optional" : false
                        },
                """),
        bench.out());
  }

  @Test
  void aModuleThatDoesNotWorkIsNamed() {
    bench.session.faults.add(new ModuleFault("grip", "definition", "G-1", "broken", true));
    assertEquals(4, bench.run("modules"));
    assertEquals("The module grip failed (definition): broken [G-1]\n", bench.err());
  }
}
