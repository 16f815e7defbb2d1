package styloid.shell.look;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import styloid.form.Palette;
import styloid.form.Pedals;
import styloid.model.Codes;

/**
 * How a user wants to see and reach the window.
 *
 * @param scale size of everything in percent, one of {@link #SCALES}
 * @param language language of the words, such as {@code en}; empty for that of the system
 */
public record Display(
    Palette palette, Density density, int scale, Optional<String> language, Pedals pedals) {
  /** Sizes offered, in percent. */
  public static final List<Integer> SCALES = List.of(100, 125, 150, 175, 200, 250, 300);

  public static final Display USUAL =
      new Display(Palette.LIGHT, Density.ORDINARY, 100, Optional.empty(), Pedals.NONE);

  /** How much room everything takes that is pressed. */
  public enum Density {
    /** Rows close together: most on the screen, for keys and mouse. */
    DENSE,
    ORDINARY,
    /** Whatever is pressed is at least 44 px high and wide. */
    TOUCH;

    public String code() {
      return Codes.of(this);
    }
  }

  public Display {
    Objects.requireNonNull(palette, "palette");
    Objects.requireNonNull(density, "density");
    Objects.requireNonNull(language, "language");
    Objects.requireNonNull(pedals, "pedals");
    if (!SCALES.contains(scale)) {
      throw new IllegalArgumentException("no such scale: " + scale);
    }
  }

  public Display with(Palette other) {
    return new Display(other, density, scale, language, pedals);
  }

  public Display with(Density other) {
    return new Display(palette, other, scale, language, pedals);
  }

  public Display withScale(int percent) {
    return new Display(palette, density, percent, language, pedals);
  }

  public Display withLanguage(Optional<String> other) {
    return new Display(palette, density, scale, other, pedals);
  }

  public Display with(Pedals other) {
    return new Display(palette, density, scale, language, other);
  }

  /** The next size up or down; the same at either end. */
  public Display stepped(int steps) {
    int at = SCALES.indexOf(scale) + steps;
    return withScale(SCALES.get(Math.max(0, Math.min(SCALES.size() - 1, at))));
  }

  /** The locale of words, numbers and dates: the system's where it speaks the language chosen. */
  public Locale locale(Locale system) {
    return language
        .filter(code -> !code.equals(system.getLanguage()))
        .map(Locale::forLanguageTag)
        .orElse(system);
  }
}
