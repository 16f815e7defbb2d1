package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SheetNamesTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      textBlock =
          """
          Grip and pinch          | Grip and pinch
          a/b\\c?d*e[f]g:h        | a b c d e f g h
          'quoted'                | quoted
          ???                     | -
          History                 | History 2
          A title that is far too long for a sheet | A title that is far too long fo
          """)
  void titleBecomesANameSpreadsheetsTake(String title, String name) {
    assertEquals(name, new SheetNames().of(title));
  }

  @Test
  void eachNameIsGivenOnceWhateverItsCase() {
    SheetNames names = new SheetNames();
    HashSet<String> given = new HashSet<>();
    for (int i = 0; i < 120; i++) {
      String name =
          names.of(
              i % 2 == 0
                  ? "A very long title of a clinic test"
                  : "A VERY LONG TITLE OF A CLINIC TEST");
      assertTrue(name.length() <= 31);
      assertTrue(given.add(name.toLowerCase(Locale.ROOT)), name);
    }
  }

  @Test
  void charactersAreNotCutInHalves() {
    String name = new SheetNames().of("\ud83d\ude00".repeat(20));
    assertFalse(Character.isHighSurrogate(name.charAt(name.length() - 1)));
    assertTrue(name.length() <= 31);
  }
}
