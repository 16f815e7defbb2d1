package styloid.goniometry;

import java.math.BigDecimal;
import styloid.model.Source;

/** Printed classes of motion of a digit, with their sources. */
final class HandScales {
  static final Source ASSH =
      Source.verified(
          "Clinical assessment committee of the American Society for Surgery of the Hand, 1976,"
              + " read in a public teaching page");
  static final Source STRICKLAND =
      Source.verified(
          "Strickland JW, Glogovac SV. 1980. J Hand Surg Am 5(6):537-543, read in later summaries");
  static final Source STRICKLAND_ADJUSTED =
      Source.memory("Strickland JW. 1985. Orthop Clin North Am 16");
  static final Source BUCK_GRAMCKO =
      Source.memory("Buck-Gramcko D, Dietrich FE, G\u00f6gge S. 1976. Handchirurgie 8:65-69");

  /** Taken as normal total motion when the opposite digit gives none, in degrees. */
  static final BigDecimal FINGER_NORMAL = BigDecimal.valueOf(260);

  static final BigDecimal THUMB_NORMAL = BigDecimal.valueOf(140);

  /** Total of PIP and DIP taken as normal, in degrees. */
  static final BigDecimal PIP_AND_DIP_NORMAL = BigDecimal.valueOf(175);

  /** Percent of normal total active motion. */
  static final Bands ASSH_CLASSES = percent("50", "75", "100");

  static final Bands STRICKLAND_CLASSES = percent("50", "70", "85");
  static final Bands ADJUSTED_CLASSES = percent("25", "50", "75");

  /** Points by fingertip to distal palmar crease in cm: the less the better. */
  static final Bands CREASE_POINTS =
      Bands.of(
          Bands.from("6", "0"), Bands.from("4", "2.5"), Bands.from("2", "4"), Bands.from("0", "6"));

  /** Points by sum of extension deficits in degrees: the less the better. */
  static final Bands DEFICIT_POINTS =
      Bands.of(
          Bands.from("3", "0"),
          Bands.from("2", "31"),
          Bands.from("1", "51"),
          Bands.above("0", "70"));

  /** Points by total active motion in degrees. */
  static final Bands TOTAL_POINTS =
      Bands.of(
          Bands.from("0", "0"),
          Bands.from("2", "120"),
          Bands.from("4", "140"),
          Bands.from("6", "160"));

  /** Class by sum of points, 0 to 15. */
  static final Bands BUCK_GRAMCKO_CLASSES =
      Bands.of(
          Bands.from("poor", "0"),
          Bands.from("satisfactory", "7"),
          Bands.from("good", "11"),
          Bands.from("excellent", "14"));

  private HandScales() {}

  private static Bands percent(String fair, String good, String excellent) {
    return Bands.of(
        Bands.from("poor", "0"),
        Bands.from("fair", fair),
        Bands.from("good", good),
        Bands.from("excellent", excellent));
  }
}
