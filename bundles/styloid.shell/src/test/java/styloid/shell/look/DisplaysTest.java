package styloid.shell.look;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.prefs.AbstractPreferences;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.form.Palette;
import styloid.form.Pedals;

class DisplaysTest {
  /** Preferences that end with the test. */
  private static final class Kept extends AbstractPreferences {
    private final Map<String, String> all = new HashMap<>();

    Kept() {
      super(null, "");
    }

    @Override
    protected void putSpi(String key, String value) {
      all.put(key, value);
    }

    @Override
    protected String getSpi(String key) {
      return all.get(key);
    }

    @Override
    protected void removeSpi(String key) {
      all.remove(key);
    }

    @Override
    protected void removeNodeSpi() {
      all.clear();
    }

    @Override
    protected String[] keysSpi() {
      return all.keySet().toArray(String[]::new);
    }

    @Override
    protected String[] childrenNamesSpi() {
      return new String[0];
    }

    @Override
    protected AbstractPreferences childSpi(String name) {
      throw new UnsupportedOperationException(name);
    }

    @Override
    protected void syncSpi() {
      // kept in memory alone
    }

    @Override
    protected void flushSpi() {
      // kept in memory alone
    }
  }

  @Test
  void whatIsChosenIsThereAgain() {
    Kept kept = new Kept();
    Display chosen =
        new Display(
            Palette.DARK,
            Display.Density.TOUCH,
            175,
            Optional.of("de"),
            new Pedals(Optional.of(KeyCode.PAGE_DOWN), Optional.of(KeyCode.F13)));
    assertEquals(Display.USUAL, Displays.of(kept).now());
    Displays.of(kept).set(chosen);
    assertEquals(chosen, Displays.of(kept).now());
  }

  @Test
  void whatMakesNoSenseCountsAsUnset() {
    Kept kept = new Kept();
    kept.put("palette", "PINK");
    kept.put("density", "");
    kept.put("scale", "173");
    kept.put("language", "../../x");
    kept.put("pedal-next", "ESCAPE");
    assertEquals(Display.USUAL, Displays.of(kept).now());
  }

  @Test
  void theGuideIsOfferedOnce() {
    Kept kept = new Kept();
    assertFalse(Displays.of(kept).guideOffered());
    assertTrue(Displays.of(kept).guideOffered());
  }

  @ParameterizedTest
  @CsvSource({"100, 1, 125", "100, -1, 100", "200, -1, 175", "300, 1, 300"})
  void theSizeGoesByStepsAndStaysInReach(int from, int steps, int to) {
    assertEquals(to, Display.USUAL.withScale(from).stepped(steps).scale());
    assertThrows(IllegalArgumentException.class, () -> Display.USUAL.withScale(from + 1));
  }

  @ParameterizedTest
  @CsvSource({"de-AT, de, de-AT", "en-US, de, de", "fr-CH, , fr-CH"})
  void theSystemsLocaleStaysWhereItSpeaksTheLanguage(
      String system, String language, String expected) {
    Display display = Display.USUAL.withLanguage(Optional.ofNullable(language));
    assertEquals(expected, display.locale(Locale.forLanguageTag(system)).toLanguageTag());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          0, 0, 100, 500, 520, 0
          0, 100, 100, 0, 20, 0
          0, 100, 100, 150, 170, 0.94
          1, 100, 100, 10, 30, 0
          0.5, 100, 100, 90, 110, 0.5
          0, 100, 100, 60, 300, 0.36
          """)
  void whatHasTheFocusComesIntoSight(
      double now, double spare, double view, double from, double to, double expected) {
    assertEquals(expected, Follow.value(now, spare, view, from, to), 1e-9);
  }
}
