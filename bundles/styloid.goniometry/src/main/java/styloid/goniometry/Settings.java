package styloid.goniometry;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.spi.Setting;

/**
 * The clinic's choices an evaluation was made under.
 *
 * @param reference code of the reference values, {@value #REFERENCE}; the consensus values if unset
 * @param error measurement error in degrees, {@value #ERROR}, 5 if unset; empty when what is set is
 *     no number from 0 to 45, both included
 * @param sem the clinic's own standard error of measurement in degrees, {@value #SEM}; empty when
 *     unset or no number above 0 and up to 45
 * @param semRefused whether an SEM is set that is no such number
 */
record Settings(
    String reference, Optional<BigDecimal> error, Optional<BigDecimal> sem, boolean semRefused) {
  static final String REFERENCE = "goniometry.reference";
  static final String ERROR = "goniometry.error";
  static final String SEM = "goniometry.sem";
  static final String DEFAULT_REFERENCE = "aaos";
  static final String DEFAULT_ERROR = "5";

  /** Errors the window offers, in degrees; a file may hold any from 0 to 45. */
  private static final List<String> ERRORS = List.of("3", "4", DEFAULT_ERROR, "7", "10");

  private static final BigDecimal MOST = BigDecimal.valueOf(45);

  /** What the clinic may choose. */
  static List<Setting> offered(References references) {
    return List.of(
        new Setting(REFERENCE, List.copyOf(references.codes()), DEFAULT_REFERENCE),
        new Setting(ERROR, ERRORS, DEFAULT_ERROR));
  }

  static Settings of(Map<String, String> choices) {
    Optional<BigDecimal> sem =
        degrees(choices.getOrDefault(SEM, "")).filter(degrees -> degrees.signum() > 0);
    return new Settings(
        choices.getOrDefault(REFERENCE, DEFAULT_REFERENCE),
        degrees(choices.getOrDefault(ERROR, DEFAULT_ERROR)),
        sem,
        choices.containsKey(SEM) && sem.isEmpty());
  }

  private static Optional<BigDecimal> degrees(String text) {
    return text.matches("\\d{1,2}(\\.\\d{1,3})?")
        ? Optional.of(new BigDecimal(text)).filter(d -> d.compareTo(MOST) <= 0)
        : Optional.empty();
  }
}
