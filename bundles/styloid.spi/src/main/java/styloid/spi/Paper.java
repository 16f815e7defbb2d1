package styloid.spi;

import java.util.Locale;
import java.util.Set;
import styloid.model.Codes;

/** Paper a report is printed on. */
public enum Paper {
  A4,
  LETTER;

  /** Countries that print on US letter. */
  private static final Set<String> LETTERS =
      Set.of("US", "CA", "MX", "PH", "CL", "CO", "VE", "GT", "CR", "PA", "DO", "PR");

  public String code() {
    return Codes.of(this);
  }

  /** The usual paper where readers of this locale are. */
  public static Paper of(Locale locale) {
    return LETTERS.contains(locale.getCountry()) ? LETTER : A4;
  }
}
