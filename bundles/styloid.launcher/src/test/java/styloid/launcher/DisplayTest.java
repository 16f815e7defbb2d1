package styloid.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DisplayTest {
  private final Words words = new Words();

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          Linux,      :0, true
          Linux,      '', false
          Linux,      ' ', false
          Mac OS X,   '', true
          Windows 11, '', true
          """)
  void onlySystemsThatNameTheirDisplayCanLackIt(String os, String display, boolean expected) {
    assertEquals(expected, Display.expected(Map.of("DISPLAY", display), os));
  }

  @Test
  void withoutTheVariableThereIsNone() {
    assertEquals(false, Display.expected(Map.of(), "Linux"));
  }

  @Test
  void oneLineNamesTheCommandThatDoesTheJobInstead() {
    Path root = Path.of("clone").toAbsolutePath();
    String line = Display.none(words, root.resolve("suite"), root).replace('\\', '/');
    assertEquals(1, line.lines().count());
    assertTrue(line.endsWith(": suite/bin/styloid workbook suite/demo --to workbooks"), line);
  }

  @Test
  void aPathWithBlanksIsQuotedSoThatTheLineCanBePasted() {
    Path root = Path.of("clone").toAbsolutePath();
    String line = Display.none(words, root.resolve("my suite"), root).replace('\\', '/');
    assertTrue(line.contains("\"my suite/bin/styloid\" workbook \"my suite/demo\""), line);
  }
}
