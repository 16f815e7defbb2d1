package styloid.shell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.form.Palette;
import styloid.store.StoreException;

/**
 * Every text of every screen, card and state can be read: at least 4.5 to 1 (WCAG 2.2, success
 * criterion 1.4.3), what was recorded or calculated 7 to 1 (criterion 1.4.6). Measured from pixels
 * as drawn, at twice the size so that strokes are full. Disabled buttons are not let off.
 */
class ContrastTest {
  @ParameterizedTest
  @EnumSource(Palette.class)
  void everyTextCanBeRead(Palette palette) throws StoreException {
    ScreenWalk walk = ScreenWalk.in(palette);
    assertEquals(Set.of(), walk.poorContrast);
    assertTrue(
        walk.texts > 1000 && walk.values > 100, walk.texts + " texts, " + walk.values + " values");
  }

  /** White and black are 21 to 1 by the definition; the greys are the known limits on white. */
  @ParameterizedTest
  @CsvSource({"0, 21.0", "118, 4.54", "119, 4.48", "89, 7.0", "255, 1.0"})
  void theFormulaIsThatOfTheGuidelines(int grey, double expected) {
    int argb = 0xff000000 | grey << 16 | grey << 8 | grey;
    assertEquals(expected, Contrast.ratio(argb, 0xffffffff), 0.01);
  }

  @Test
  void coloursWeighAsTheGuidelinesSay() {
    assertEquals(0.2126, Contrast.luminance(0xffff0000), 1e-9);
    assertEquals(0.7152, Contrast.luminance(0xff00ff00), 1e-9);
    assertEquals(0.0722, Contrast.luminance(0xff0000ff), 1e-9);
  }
}
