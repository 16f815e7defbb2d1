package styloid.custom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static styloid.custom.ShippedContractTest.load;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Outcome;
import styloid.model.Patient;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.SourceStatus;
import styloid.model.Unit;
import styloid.model.Value;

/** Values of the shipped declared tests against the published tables, read by another way. */
class ShippedTest {
  /** A published table, read by splitting lines: no code shared with the reader of norm tables. */
  private static List<Map<String, String>> published(String file) throws IOException {
    try (InputStream in = ShippedTest.class.getResourceAsStream("published/" + file)) {
      String[] lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).strip().split("\n");
      String[] heads = lines[0].strip().split(",");
      ArrayList<Map<String, String>> rows = new ArrayList<>();
      for (int i = 1; i < lines.length; i++) {
        String[] cells = lines[i].strip().replaceAll("\"[^\"]*\"", "-").split(",", -1);
        TreeMap<String, String> row = new TreeMap<>();
        for (int c = 0; c < heads.length; c++) {
          row.put(heads[c], cells[c]);
        }
        rows.add(row);
      }
      return rows;
    }
  }

  private static int everyRowGivesItsOwnZ(
      String test, String item, Unit unit, String file, String mean, String sd) throws IOException {
    DeclaredModule module = load(test);
    String share = test.equals("nine-hole-peg") ? "slower" : "percentile";
    int rows = 0;
    for (Map<String, String> row : published(file)) {
      Side side = row.get("hand").equals("R") ? Side.RIGHT : Side.LEFT;
      var sex = row.get("sex").equals("F") ? Patient.Sex.FEMALE : Patient.Sex.MALE;
      int youngest = Integer.parseInt(row.get("age_min_years"));
      int oldest =
          row.get("age_max_years").isEmpty() ? 94 : Integer.parseInt(row.get("age_max_years"));
      double m = Double.parseDouble(row.get(mean));
      double s = Double.parseDouble(row.get(sd));
      for (int age : new int[] {youngest, oldest}) {
        long typed = Math.round(age == youngest ? m + s : m - s);
        Visit visit = new Visit(module).of(sex, age).number(item, side, "" + typed, unit);
        Result z = visit.result("z", side);
        double expected = (typed - m) / s;
        assertEquals(expected, z.quantity().orElseThrow().amount().doubleValue(), 1e-12);
        double below = 100 * NormalDistribution.of(0, 1).cumulativeProbability(expected);
        assertEquals(
            share.equals("slower") ? 100 - below : below,
            visit.result(share, side).quantity().orElseThrow().amount().doubleValue(),
            1e-6);
        assertEquals(SourceStatus.MEMORY, z.why().status());
        rows++;
      }
    }
    return rows;
  }

  @Test
  void everyRowOfTheNineHolePegNormsGivesItsOwnZ() throws IOException {
    int seen =
        everyRowGivesItsOwnZ(
            "nine-hole-peg",
            "time",
            Unit.SECOND,
            "nine_hole_peg_oxford_grice_2003.csv",
            "mean_s",
            "sd_s");
    assertEquals(88, seen);
  }

  @Test
  void everyRowOfTheBoxAndBlockNormsGivesItsOwnZ() throws IOException {
    int seen =
        everyRowGivesItsOwnZ(
            "box-and-block",
            "blocks",
            Unit.COUNT,
            "box_and_block_mathiowetz_1985.csv",
            "mean_blocks",
            "sd_blocks");
    assertEquals(96, seen);
  }

  @Test
  void everyFilamentOfTheKitHasItsPublishedForceAndClass() throws IOException {
    Map<String, String> codes =
        Map.of(
            "normal", "normal",
            "diminished light touch", "light-touch",
            "diminished protective sensation", "protective",
            "loss of protective sensation", "lost",
            "deep pressure only", "deep");
    DeclaredModule module = load("monofilaments");
    int kit = 0;
    for (Map<String, String> row : published("monofilaments.csv")) {
      if (row.get("in_five_piece_kit").equals("yes")) {
        Visit visit =
            new Visit(module)
                .choice("tip", Side.LEFT, Digit.INDEX, row.get("evaluator_size"))
                .choice("thenar", Side.LEFT, Digit.NONE, row.get("evaluator_size"))
                .choice("hypothenar", Side.LEFT, Digit.NONE, row.get("evaluator_size"));
        Value expected = new Choice(codes.get(row.get("class_hand")));
        for (Result given :
            List.of(
                visit.result("tip-class", Side.LEFT, Digit.INDEX),
                visit.result("thenar-class", Side.LEFT),
                visit.result("hypothenar-class", Side.LEFT))) {
          assertEquals(Optional.of(expected), given.value());
          assertEquals(SourceStatus.VERIFIED, given.why().status());
        }
        assertEquals(
            Double.parseDouble(row.get("target_force_g")),
            visit
                .result("tip-force", Side.LEFT, Digit.INDEX)
                .quantity()
                .orElseThrow()
                .doubleIn(Unit.GRAM_FORCE));
        kit++;
      }
    }
    assertEquals(5, kit);
  }

  @Test
  void aFilamentNotFeltHasAClassAndNoForce() {
    Visit visit = new Visit(load("monofilaments")).choice("tip", Side.RIGHT, Digit.THUMB, "none");
    assertEquals(
        Optional.of(new Choice("untestable")),
        visit.result("tip-class", Side.RIGHT, Digit.THUMB).value());
    assertTrue(
        visit.result("tip-force", Side.RIGHT, Digit.THUMB).outcome()
            instanceof Outcome.Unavailable);
  }

  /** Limits: classes handed down in teaching (memory); lower limit of a class included. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          two,  5, normal
          two,  6, fair
          two, 10, fair
          two, 11, poor
          two, 15, poor
          two, 16, ''
          one,  0, protective
          none, 0, anaesthetic
          """)
  void twoPointClassesHoldTheirLimits(String perceived, int distance, String expected) {
    Visit visit =
        new Visit(load("two-point")).choice("perceived", Side.RIGHT, Digit.RING, perceived);
    if (distance > 0) {
      visit.with(
          "distance", Side.RIGHT, Digit.RING, 1, Quantity.of("" + distance, Unit.MILLIMETRE));
    }
    Result given = visit.result("class", Side.RIGHT, Digit.RING);
    assertEquals(
        expected, given.value().map(value -> ((Choice) value).code()).orElse(""), given::toString);
    assertEquals(SourceStatus.MEMORY, given.why().status());
  }

  /** 10 mL: usual error taken before 2004, Work 2004 (verified). */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          500, 490, within
          500, 489, more
          490, 500, within
          489, 500, less
          """)
  void volumesAreJudgedAgainstTheUsualError(String right, String left, String expected) {
    Visit visit = new Visit(load("swelling-volume"));
    for (int trial = 1; trial <= 2; trial++) {
      visit.with("volume", Side.RIGHT, Digit.NONE, trial, Quantity.of(right, Unit.MILLILITRE));
      visit.with("volume", Side.LEFT, Digit.NONE, trial, Quantity.of(left, Unit.MILLILITRE));
    }
    assertEquals(Optional.of(new Choice(expected)), visit.result("meaning", Side.RIGHT).value());
  }

  @Test
  void typedUnitsAreConvertedExactlyHereAndInTheSheet() {
    Visit visit =
        new Visit(load("swelling-tape"))
            .with("length", Side.RIGHT, Digit.NONE, 1, Quantity.of("452", Unit.MILLIMETRE))
            .with("length", Side.RIGHT, Digit.NONE, 2, Quantity.of("45.4", Unit.CENTIMETRE));
    Result mean = visit.result("mean", Side.RIGHT);
    assertEquals(45.3, mean.quantity().orElseThrow().doubleIn(Unit.CENTIMETRE), 1e-12);
    assertEquals(
        "AVERAGE(swelling_tape__length__right__1*0.1,swelling_tape__length__right__2)",
        mean.why().formula().orElseThrow());
  }

  @Test
  void oneAbsentTrialMakesAllThatRestsOnItIncomplete() {
    Visit visit =
        new Visit(load("swelling-tape"))
            .with("length", Side.RIGHT, Digit.NONE, 1, Quantity.of("45.2", Unit.CENTIMETRE))
            .absent("length", Side.RIGHT, Digit.NONE, 2)
            .with("length", Side.LEFT, Digit.NONE, 1, Quantity.of("44", Unit.CENTIMETRE))
            .with("length", Side.LEFT, Digit.NONE, 2, Quantity.of("44", Unit.CENTIMETRE));
    assertTrue(visit.result("mean", Side.RIGHT).outcome() instanceof Outcome.Incomplete);
    assertTrue(visit.result("difference", Side.LEFT).outcome() instanceof Outcome.Incomplete);
    assertTrue(visit.result("mean", Side.LEFT).value().isPresent());
  }

  @Test
  void aNormThatCannotBeLookedUpSaysWhatIsMissing() {
    Visit visit = new Visit(load("nine-hole-peg")).number("time", Side.RIGHT, "20", Unit.SECOND);
    Result z = visit.result("z", Side.RIGHT);
    assertEquals("declared.norm.sex-unknown", ((Outcome.Unavailable) z.outcome()).reason().key());
    Result young =
        new Visit(load("nine-hole-peg"))
            .of(Patient.Sex.MALE, 20)
            .number("time", Side.RIGHT, "20", Unit.SECOND)
            .result("z", Side.RIGHT);
    assertEquals(
        "declared.norm.age-outside", ((Outcome.Unavailable) young.outcome()).reason().key());
  }
}
