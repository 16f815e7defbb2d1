package styloid.goniometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Digit;
import styloid.model.Message;
import styloid.model.Outcome;
import styloid.model.Patient;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.model.norm.NormRow;
import styloid.model.norm.NormTable;

/** Every row of the given tables is reached through the module and comes out as printed. */
class ReferenceTablesTest {
  private static final Map<String, String> CODES =
      Map.ofEntries(
          Map.entry("Wanatabe 1979", "wanatabe"),
          Map.entry("Boone and Azen 1979", "boone-azen"),
          Map.entry("Greene and Wolf 1989", "greene-wolf"),
          Map.entry("Walker 1984", "walker"),
          Map.entry("Macedo and Magee 2009", "macedo-magee"),
          Map.entry("AAOS", "aaos"),
          Map.entry("AAOS 1965", "aaos"),
          Map.entry("AMA Guides", "ama"),
          Map.entry("AMA Guides 4th/5th edition", "ama"),
          Map.entry("US 38 CFR 4.71 plate I and 4.71a", "us-regulation"),
          Map.entry("Eaton electronic textbook of hand surgery", "eaton"),
          Map.entry("Barakat 2013", "barakat"),
          Map.entry("Zwerus 2019", "zwerus"));

  private static final Map<String, Integer> AGES =
      Map.of("wanatabe", 1, "walker", 70, "macedo-magee", 30);

  private static String motion(String joint, String motion) {
    String part = joint.startsWith("finger_") ? joint.substring(7) : joint;
    if (joint.equals("thumb_cmc") && motion.endsWith("abduction")) {
      part = "thumb";
    }
    return (part + "-" + motion).replace('_', '-');
  }

  private static Digit digit(String joint) {
    return joint.startsWith("finger")
        ? Digit.RING
        : joint.startsWith("thumb") ? Digit.THUMB : Digit.NONE;
  }

  /** The ends a printed pair stands for, in its order. */
  private static String[] ends(String motion) {
    return switch (motion) {
      case "extension_flexion", "hyperextension_flexion" -> new String[] {"extension", "flexion"};
      case "pronation_supination" -> new String[] {"pronation", "supination"};
      case "radial_ulnar" -> new String[] {"radial_deviation", "ulnar_deviation"};
      default -> new String[] {motion};
    };
  }

  /** The lowest number a printed value names, where it names more than one. */
  private static double lowest(String printed) {
    if (printed.contains(" (")) {
      return Double.parseDouble(printed.substring(0, printed.indexOf(' ')));
    }
    String plain = printed.replaceAll("[(>=)]", "").split(" or ")[0];
    int dash = plain.indexOf('-', 1);
    return Double.parseDouble(dash < 0 ? plain : plain.substring(0, dash));
  }

  @ParameterizedTest
  @CsvFileSource(resources = "given_rom_normal_values.csv", numLinesToSkip = 1)
  void everyNormalValueIsWhatShortfallIsCountedFrom(
      String joint,
      String motion,
      String source,
      String population,
      String value,
      String unit,
      String status,
      String note) {
    boolean leftOut = unit.equals("cm") || joint.equals("thumb_cmc") && motion.equals("abduction");
    String code = CODES.get(source);
    String[] ends = ends(motion);
    String[] values = value.split("/");
    for (int i = 0; i < ends.length && !leftOut; i++) {
      String id = motion(joint, ends[i]);
      Visit visit =
          new Visit()
              .of(
                  code.equals("macedo-magee") ? Patient.Sex.FEMALE : Patient.Sex.MALE,
                  AGES.getOrDefault(code, 40))
              .choosing(Settings.REFERENCE, code)
              .degrees(id + "-active", Side.LEFT, digit(joint), "3");
      Result result = visit.result(id + "-active-reference-deficit", Side.LEFT, digit(joint));
      double deficit = result.quantity().orElseThrow().amount().doubleValue();
      assertEquals(lowest(values[i]) - 3, deficit, 1e-9, id);
      assertEquals(status, result.why().status().code(), id);
    }
  }

  @ParameterizedTest
  @CsvSource({"thumb-palmar-abduction", "thumb-radial-abduction"})
  void aValuePrintedWithoutItsPlaneIsShownAndNothingComparedWithIt(String id) {
    Visit visit =
        new Visit()
            .of(Patient.Sex.MALE, 40)
            .choosing(Settings.REFERENCE, "aaos")
            .degrees(id + "-active", Side.LEFT, Digit.THUMB, "50");
    for (String which : List.of("-active-reference-deficit", "-active-reference-percent")) {
      Result result = visit.result(id + which, Side.LEFT, Digit.THUMB);
      Message reason =
          Calculation.words("unavailable.printed-only", Quantity.of("70", Unit.DEGREE));
      assertEquals(new Outcome.Unavailable(reason), result.outcome());
      assertEquals("memory", result.why().status().code());
    }
  }

  private static String motion(String given) {
    return given.replace('_', '-').replace("hyperextension", "extension");
  }

  @ParameterizedTest
  @CsvFileSource(resources = "given_rom_boone_azen_1979.csv", numLinesToSkip = 1)
  void everyNormOfActiveMotionGivesTheScoresOfTheNormalCurve(
      String given,
      String sex,
      String band,
      int n,
      double mean,
      Double sd,
      String status,
      String note) {
    String id = motion(given);
    boolean whole = band.equals("1-54");
    NormRow row = shipped(id, whole ? "all" : "band", band);
    assertEquals(mean, row.mean().orElseThrow().doubleValue());
    assertEquals(Optional.ofNullable(sd), row.sd().map(BigDecimal::doubleValue));
    assertEquals(status, row.status().code());
    boolean banded = !id.equals("forearm-pronation") && !id.equals("forearm-supination");
    if (sd != null && banded != whole) {
      int age = band.equals("20-54") ? 54 : 1;
      scoresFollowTheNormalCurve(id, age, mean, sd);
    }
  }

  private static NormRow shipped(String motion, String group, String band) {
    NormTable table =
        NormTable.beside(Populations.class, "rom_boone_azen_1979.csv", Unit.Dimension.ANGLE);
    return table.rows().stream()
        .filter(r -> r.keys().equals(Map.of("motion", motion, "group", group)))
        .filter(r -> r.age().toString().equals(band))
        .findFirst()
        .orElseThrow();
  }

  private static void scoresFollowTheNormalCurve(String id, int age, double mean, double sd) {
    NormalDistribution curve = NormalDistribution.of(mean, sd);
    for (double measured : new double[] {mean, mean - 2 * sd, mean + sd / 3}) {
      String typed = BigDecimal.valueOf(measured).setScale(1, RoundingMode.HALF_UP).toString();
      double x = Double.parseDouble(typed);
      Visit visit = new Visit().of(Patient.Sex.MALE, age);
      visit.degrees(id + "-active", Side.RIGHT, typed);
      assertEquals((x - mean) / sd, visit.number(id + "-active-z", Side.RIGHT, Digit.NONE), 1e-12);
      assertEquals(
          100 * curve.cumulativeProbability(x),
          visit.number(id + "-active-percentile", Side.RIGHT, Digit.NONE),
          1e-9);
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "given_rom_soucie_2011.csv", numLinesToSkip = 1)
  void everyPassiveMeanServesItsSexAndBothEndsOfItsAges(
      String given,
      String mode,
      String sex,
      String band,
      int from,
      int to,
      double mean,
      String low,
      String high,
      String status,
      String note) {
    String id = motion(given);
    for (int age : new int[] {from, to}) {
      Visit visit =
          new Visit()
              .of(sex.equals("F") ? Patient.Sex.FEMALE : Patient.Sex.MALE, age)
              .degrees(id + "-passive", Side.LEFT, "10");
      Result result = visit.result(id + "-passive-mean-deficit", Side.LEFT, Digit.NONE);
      assertEquals(
          mean - 10, result.quantity().orElseThrow().amount().doubleValue(), 1e-9, "age " + age);
      assertEquals(status, result.why().status().code());
    }
  }

  private static String reason(Optional<Result> result) {
    Outcome.Unavailable none = (Outcome.Unavailable) result.orElseThrow().outcome();
    Message words = none.reason();
    return words.key();
  }

  @ParameterizedTest
  @CsvSource(
      nullValues = "-",
      textBlock =
          """
          # sex, age, reason why there is no standard score
          FEMALE, 30, unavailable.sex
          -,      30, unavailable.sex-unknown
          MALE,   0,  unavailable.age
          MALE,   55, unavailable.age
          MALE,   -,  unavailable.age-unknown
          """)
  void noScoreForAnybodyTheSourceDidNotStudy(Patient.Sex sex, Integer age, String reason) {
    Visit visit = new Visit().degrees("elbow-flexion-active", Side.LEFT, "140");
    if (sex != null) {
      visit.of(sex, age == null ? 1 : age);
    } else {
      visit.bornOn(Visit.DAY.minusYears(age));
    }
    if (age == null) {
      visit.bornOn(LocalDate.MAX);
    }
    assertEquals(reason, reason(visit.find("elbow-flexion-active-z", Side.LEFT, Digit.NONE)));
    assertEquals(
        reason, reason(visit.find("elbow-flexion-active-percentile", Side.LEFT, Digit.NONE)));
  }

  @Test
  void aReferenceOfActiveMotionIsNotHeldAgainstPassiveMotion() {
    Visit visit =
        new Visit()
            .of(Patient.Sex.MALE, 30)
            .choosing(Settings.REFERENCE, "boone-azen")
            .degrees("elbow-flexion-passive", Side.LEFT, "140");
    assertEquals(
        "unavailable.mode-active",
        reason(visit.find("elbow-flexion-passive-reference-deficit", Side.LEFT, Digit.NONE)));
  }

  @ParameterizedTest
  @CsvSource({
    "unknown,     elbow-flexion,          unavailable.unknown-reference",
    "wanatabe,    wrist-radial-deviation, unavailable.no-reference",
    "walker,      elbow-flexion,          unavailable.age",
    "aaos,        shoulder-adduction,     unavailable.no-reference"
  })
  void aReferenceThatDoesNotServeSaysWhy(String code, String motion, String reason) {
    Visit visit =
        new Visit()
            .of(Patient.Sex.FEMALE, 30)
            .choosing(Settings.REFERENCE, code)
            .degrees(motion + "-active", Side.LEFT, "10");
    assertEquals(
        reason, reason(visit.find(motion + "-active-reference-deficit", Side.LEFT, Digit.NONE)));
  }

  @Test
  void theConsensusValueIsTakenWhenNothingIsChosenAndItsShareIsShown() {
    Visit visit = new Visit().degrees("elbow-flexion-active", Side.LEFT, "120");
    assertEquals(30, visit.number("elbow-flexion-active-reference-deficit", Side.LEFT, Digit.NONE));
    assertEquals(80, visit.number("elbow-flexion-active-reference-percent", Side.LEFT, Digit.NONE));
  }

  @Test
  void aShareOfZeroHasNoMeaning() {
    Visit visit =
        new Visit()
            .of(Patient.Sex.MALE, 30)
            .choosing(Settings.REFERENCE, "aaos")
            .degrees("elbow-extension-active", Side.LEFT, "-10");
    assertTrue(
        visit.find("elbow-extension-active-reference-percent", Side.LEFT, Digit.NONE).isEmpty());
    assertEquals(
        10, visit.number("elbow-extension-active-reference-deficit", Side.LEFT, Digit.NONE));
  }
}
