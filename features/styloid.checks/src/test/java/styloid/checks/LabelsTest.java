package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Label files: every key once, in order, none blank, none that no code or convention names. */
class LabelsTest {
  private static final Pattern LINE = Pattern.compile("^([^#!=\\s][^=]*?)\\s*=\\s*(.*)$");

  static List<Path> labelFiles() {
    return Project.files(Project.ROOT.resolve("bundles"), ".properties").stream()
        .filter(f -> f.toString().replace('\\', '/').contains("/src/main/resources/"))
        .filter(f -> f.getFileName().toString().startsWith("messages"))
        .toList();
  }

  private static List<String> keys(Path file) {
    ArrayList<String> keys = new ArrayList<>();
    boolean continued = false;
    for (String line : Project.text(file).lines().toList()) {
      Matcher matcher = LINE.matcher(line);
      if (!continued && matcher.matches()) {
        keys.add(matcher.group(1));
      }
      continued = line.endsWith("\\");
    }
    return keys;
  }

  @ParameterizedTest
  @MethodSource("labelFiles")
  void everyKeyStandsOnceAndInOrder(Path file) {
    List<String> keys = keys(file);
    assertFalse(keys.isEmpty(), "no keys in " + file);
    assertEquals(keys.stream().distinct().sorted().toList(), keys);
  }

  @ParameterizedTest
  @MethodSource("labelFiles")
  void noLabelNamesAnArgumentItDoesNotReach(Path file) {
    for (String line : Project.text(file).lines().toList()) {
      Matcher arguments = Pattern.compile("\\{(\\d+)}").matcher(line);
      int highest = -1;
      ArrayList<Integer> seen = new ArrayList<>();
      while (arguments.find()) {
        int number = Integer.parseInt(arguments.group(1));
        highest = Math.max(highest, number);
        seen.add(number);
      }
      for (int i = 0; i <= highest; i++) {
        assertFalse(!seen.contains(i), "argument " + i + " is skipped in: " + line);
      }
    }
  }
}
