package styloid.custom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import styloid.model.FileProblem;
import styloid.workbook.PoiFormulas;

/** Malformed files, each with the refusal an author reads. */
class CorpusTest {
  static final String BASE = resource("base.json");

  static String resource(String name) {
    try (InputStream in = CorpusTest.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new AssertionError(name, e);
    }
  }

  /**
   * One file: the sound one with its first {@code find} replaced.
   *
   * @param said line, column, path and reason as told
   */
  record Case(String find, String put, String said) {
    String text() {
      int at = BASE.indexOf(find);
      return BASE.substring(0, at) + put + BASE.substring(at + find.length());
    }
  }

  /**
   * Cases of {@code corpus.txt}: blocks of find, put and said, each on a line, parted by blank
   * ones.
   */
  static List<Case> cases() {
    ArrayList<Case> cases = new ArrayList<>();
    for (String block : resource("corpus.txt").strip().split("\n\n")) {
      String[] lines = block.split("\n");
      assertEquals(3, lines.length, block);
      cases.add(
          new Case(
              plain(lines[0].substring("find: ".length())),
              plain(lines[1].substring("put:  ".length())),
              lines[2].substring("said: ".length())));
    }
    return cases;
  }

  /** Line ends and tabs stand as signs of their own in the list. */
  private static String plain(String text) {
    return text.replace("␤", "\n").replace("␉", "\t");
  }

  static DeclaredFile.Read read(String text) {
    return new DeclaredFile(new PoiFormulas(), Registrar.BUILT_IN)
        .read(text, name -> Optional.empty());
  }

  @Test
  void theSoundFileLoads() {
    assertEquals(List.of(), read(BASE).problems());
  }

  @Test
  void thereAreManyAndAllDiffer() {
    Set<String> texts = new HashSet<>();
    cases().forEach(one -> texts.add(one.text()));
    assertTrue(texts.size() >= 150, texts.size() + " files");
    assertEquals(cases().size(), texts.size());
  }

  @ParameterizedTest
  @MethodSource("cases")
  void isRefusedInTheseWords(Case one) {
    DeclaredFile.Read read = read(one.text());
    assertTrue(read.module().isEmpty(), "loaded");
    assertFalse(read.problems().isEmpty(), "no reason given");
    FileProblem first = read.problems().get(0);
    assertEquals(one.said(), first.toString());
    assertTrue(first.line() > 0 && first.column() > 0, "no place: " + first);
  }
}
