package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SafeTextTest {

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          plain, plain
          _x0041_, _x005F_x0041_
          __x0041_, __x005F_x0041_
          _x00g1_, _x00g1_
          """)
  void whatLooksLikeASpellingIsSpelledItself(String text, String written) {
    assertEquals(written, SafeText.encode(text));
    assertEquals(text, SafeText.decode(written));
  }

  @Test
  void controlCharactersAreSpelled() {
    assertEquals("bell_x0007_ return_x000D_\ntab\t", SafeText.encode("bell\u0007 return\r\ntab\t"));
  }

  @Test
  void everyTextComesBackAsItWas() {
    Random random = new Random(20260314);
    String letters = "_x0A_x00\u0000\u0001\u001f\t\n\r=+-@&<>\"'a\u05d0\ud83d\ude00";
    int[] points = letters.codePoints().toArray();
    for (int i = 0; i < 5000; i++) {
      StringBuilder text = new StringBuilder();
      for (int k = random.nextInt(30); k > 0; k--) {
        text.appendCodePoint(points[random.nextInt(points.length)]);
      }
      String fit = SafeText.fit(text.toString(), n -> "cut");
      assertEquals(text.toString(), fit);
      assertEquals(fit, SafeText.decode(SafeText.encode(fit)));
    }
  }

  @Test
  void halvesOfCharactersBecomeTheReplacementCharacter() {
    assertEquals("a\uFFFDb\uFFFD", SafeText.fit("a\ud83db\uFFFF", n -> "cut"));
    assertEquals("\ud83d\ude00", SafeText.fit("\ud83d\ude00", n -> "cut"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"a", "_", "\u0001", "\ud83d\ude00", "_x0041_", "\n"})
  void tooLongTextIsCutWithANoticeThatCountsTheRest(String piece) {
    String text = piece.repeat(40_000);
    String fit = SafeText.fit(text, n -> "[" + n + " more]");
    assertTrue(SafeText.encode(fit).length() <= SafeText.LONGEST);
    int kept = fit.lastIndexOf(" [");
    int left = Integer.parseInt(fit.substring(kept + 2, fit.length() - 6));
    assertEquals(text.length(), kept + left);
    assertTrue(text.startsWith(fit.substring(0, kept)));
    assertFalse(Character.isHighSurrogate(fit.charAt(kept - 1)));
  }

  @Test
  void textThatJustFitsIsLeftWhole() {
    String text = "a".repeat(SafeText.LONGEST);
    assertEquals(text, SafeText.fit(text, n -> "cut"));
    assertTrue(SafeText.fit(text + "a", n -> "cut").endsWith(" cut"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"=1", "+1", "-1", "@a", "\t=1", "\r=1", "\n=1", "  =1", "\uFF1D1", "-"})
  void formulaStartersAreSeen(String text) {
    assertTrue(SafeText.startsLikeFormula(text));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "a=1", "1-2", "'=1", "(=1", "\u2013"})
  void otherStartsAreNot(String text) {
    assertFalse(SafeText.startsLikeFormula(text));
  }

  @Test
  void pageEdgeHasNoCommandsAndOneLine() {
    assertEquals("a && b c", SafeText.forPageEdge("a & b\n\tc ", 50));
    assertEquals("&&&&\u2026", SafeText.forPageEdge("&&&&", 2));
  }
}
