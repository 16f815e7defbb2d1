package styloid.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CommandServiceTest {
  private final Bench bench = new Bench();

  @ParameterizedTest
  @ValueSource(
      strings = {"check", "results", "workbook", "modules", "import", "try", "approve", "help"})
  void helpNamesEveryCommand(String command) {
    assertEquals(0, bench.run("help"));
    assertTrue(bench.out().contains("\n  " + command + " "), bench.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"check", "results", "workbook", "modules", "import", "try", "approve"})
  void everyCommandSaysWhatItDoesAndWhatEachWordMeans(String command) {
    assertEquals(0, bench.run("help", command));
    assertTrue(bench.out().lines().count() >= 3, bench.out());
    assertTrue(Character.isUpperCase(bench.out().charAt(0)), bench.out());
    assertFalse(bench.out().contains("styloid." + command), bench.out());
  }

  @Test
  void theVersionIsThatOfTheBuild() {
    assertEquals(0, bench.run("--version"));
    assertTrue(bench.out().matches("Styloid \\d+\\.\\d+\\.\\d+\\S*\n"), bench.out());
  }

  @ParameterizedTest
  @ValueSource(strings = {"nonsense", "check", "modules --xml", "results a b"})
  void wrongUsageIsTold(String line) {
    assertEquals(2, bench.run((Object[]) line.split(" ")));
    assertFalse(bench.err().isBlank());
    assertEquals("", bench.out());
  }
}
