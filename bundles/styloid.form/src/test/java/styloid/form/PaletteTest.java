package styloid.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** All colours in one place, the same names by day and by night. */
class PaletteTest {
  private static String sheet(String name) throws IOException {
    try (InputStream in = Palette.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static Set<String> found(String regex, String in) {
    TreeSet<String> all = new TreeSet<>();
    Pattern.compile(regex).matcher(in).results().forEach(m -> all.add(m.group(1)));
    return all;
  }

  @Test
  void dayAndNightNameTheSameColours() throws IOException {
    Set<String> day = found("(?m)^\\s+(-st-[a-z-]+):", sheet("palette-light.css"));
    assertEquals(day, found("(?m)^\\s+(-st-[a-z-]+):", sheet("palette-dark.css")));
    assertTrue(day.size() > 12, day.toString());
  }

  @Test
  void theFormUsesNoColourOfItsOwn() throws IOException {
    String form = sheet("form.css");
    assertEquals(Set.of(), found("(#[0-9a-fA-F]{3,8}\\b|rgba?\\(|: (?:white|black)\\b)", form));
    Set<String> day = found("(?m)^\\s+(-st-[a-z-]+):", sheet("palette-light.css"));
    Set<String> used = found("(-st-[a-z-]+)", form);
    used.removeAll(day);
    assertEquals(Set.of(), used);
  }
}
