package styloid.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import styloid.spi.Labels;

/**
 * Label files: every key once and in order; the same keys and the same arguments in every language.
 */
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

  /** The file with its keys and words, continued lines joined. */
  private static Map<String, String> words(Path file) {
    Properties read = new Properties();
    try {
      read.load(new StringReader(Project.text(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    TreeMap<String, String> words = new TreeMap<>();
    read.forEach((key, text) -> words.put((String) key, (String) text));
    return words;
  }

  private static String language(Path file) {
    Matcher name = Pattern.compile("messages_([a-z]+)\\.properties").matcher(name(file));
    return name.matches() ? name.group(1) : "en";
  }

  private static String name(Path file) {
    return file.getFileName().toString();
  }

  private static List<Path> english() {
    return labelFiles().stream().filter(file -> language(file).equals("en")).toList();
  }

  /** Languages of which any file exists. */
  private static List<String> languages() {
    return labelFiles().stream().map(LabelsTest::language).distinct().sorted().toList();
  }

  @Test
  void everyLanguageIsOneTheSuiteKnows() {
    ArrayList<String> unknown = new ArrayList<>(languages());
    unknown.removeAll(Labels.OTHER_LANGUAGES);
    assertEquals(List.of("en"), unknown);
  }

  @ParameterizedTest
  @MethodSource("english")
  void everyLanguageSaysTheSameWithTheSameArguments(Path file) {
    ArrayList<String> wrong = new ArrayList<>();
    for (String language : languages()) {
      if (language.equals("en")) {
        continue;
      }
      Path other = file.resolveSibling("messages_" + language + ".properties");
      if (!Files.exists(other)) {
        wrong.add("missing: " + Project.ROOT.relativize(other));
      } else {
        compare(words(file), words(other), language, wrong);
      }
    }
    assertEquals(List.of(), wrong);
  }

  static void compare(
      Map<String, String> english, Map<String, String> other, String language, List<String> wrong) {
    for (Map.Entry<String, String> entry : english.entrySet()) {
      String there = other.get(entry.getKey());
      if (there == null) {
        wrong.add(language + " lacks " + entry.getKey());
      } else if (there.isBlank() != entry.getValue().isBlank()) {
        wrong.add(language + " is blank: " + entry.getKey());
      } else if (!arguments(entry.getValue()).equals(arguments(there))) {
        wrong.add(language + " has other arguments: " + entry.getKey());
      }
    }
    other.keySet().stream()
        .filter(key -> !english.containsKey(key))
        .forEach(key -> wrong.add(language + " is obsolete: " + key));
  }

  private static Set<String> arguments(String words) {
    return Pattern.compile("\\{\\d+}")
        .matcher(words)
        .results()
        .map(MatchResult::group)
        .collect(Collectors.toSet());
  }

  @Test
  void aLanguageThatFallsBehindIsNamed() {
    ArrayList<String> wrong = new ArrayList<>();
    compare(
        Map.of("a", "one {0}", "b", "two", "c", "three"),
        Map.of("a", "eins", "b", " ", "d", "vier"),
        "de",
        wrong);
    assertEquals(
        Set.of("de has other arguments: a", "de is blank: b", "de lacks c", "de is obsolete: d"),
        Set.copyOf(wrong));
  }
}
