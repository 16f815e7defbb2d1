package styloid.launcher;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ArgumentsTest {
  private final Words words = new Words();

  private Arguments parse(String... args) throws StartException {
    return Arguments.parse(words, args);
  }

  @Test
  void withoutWordsTheWindowIsWanted() throws StartException {
    assertEquals(new Arguments(Optional.empty(), false, List.of()), parse());
    assertTrue(parse().window());
  }

  @ParameterizedTest
  @ValueSource(strings = {"open", "open --demo", "--demo open", "--demo", "--data=x open --demo"})
  void openAndTheLaunchersOwnOptionsStillMeanTheWindow(String line) throws StartException {
    assertTrue(parse(line.split(" ")).window());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          --data here modules,           modules
          modules --data here,           modules
          modules --json --data=here,    modules --json
          --data here import --if-empty, import --if-empty
          """)
  void theDataFolderMayStandAnywhere(String line, String command) throws StartException {
    Arguments asked = parse(line.split(" "));
    assertEquals(Optional.of(Path.of("here")), asked.data());
    assertEquals(List.of(command.split(" ")), asked.words());
  }

  @Test
  void behindTwoDashesAllBelongsToTheCommand() throws StartException {
    Arguments asked = parse("--demo", "check", "--", "--data", "--demo");
    assertEquals(List.of("check", "--", "--data", "--demo"), asked.words());
    assertTrue(asked.demo());
    assertEquals(Optional.empty(), asked.data());
  }

  @ParameterizedTest
  @ValueSource(strings = {"--data", "--data=", "modules --data", "open here"})
  void whatCannotBeMeantIsWrongUsage(String line) {
    StartException refused = assertThrows(StartException.class, () -> parse(line.split(" ")));
    assertEquals(ExitCode.USAGE, refused.exitCode());
  }

  @Test
  void theReasonNamesTheWordTooMany() {
    StartException refused = assertThrows(StartException.class, () -> parse("open", "file.json"));
    assertEquals("\"open\" takes no further word, but got \"file.json\".", refused.getMessage());
  }

  @Test
  void anImpossibleFolderNameIsWrongUsage() {
    StartException refused = assertThrows(StartException.class, () -> parse("--data", "a\0b"));
    assertEquals(ExitCode.USAGE, refused.exitCode());
  }
}
