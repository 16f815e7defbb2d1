package styloid.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import styloid.grading.Observed.Felt;
import styloid.grading.Observed.Hold;
import styloid.grading.Observed.Range;
import styloid.grading.Observed.Reduced;

/**
 * Each printed criterion, put into the observations that show it, comes to the printed grade.
 * Scales as in muscle_grades.csv: Medical Research Council 1976 and the teaching scale.
 */
class PublishedScalesTest {
  private static final Map<String, Observed> TEACHING =
      Map.ofEntries(
          Map.entry("no movement, nothing felt", none(Reduced.NONE, Felt.NO)),
          Map.entry("contraction felt, no movement", none(Reduced.NONE, Felt.YES)),
          Map.entry("gravity eliminated, less than full range", none(Reduced.PART, Felt.YES)),
          Map.entry("gravity eliminated, full range", none(Reduced.FULL, Felt.YES)),
          Map.entry("against gravity, under half range", range(Range.LESS_THAN_HALF)),
          Map.entry("against gravity, over half range but not full", range(Range.MORE_THAN_HALF)),
          Map.entry("against gravity, full range", full(Hold.GAVE_WAY)),
          Map.entry("full range against gravity, minimal resistance", full(Hold.SLIGHT)),
          Map.entry(
              "full range against gravity, minimal to moderate resistance",
              full(Hold.SLIGHT_TO_MODERATE)),
          Map.entry("full range against gravity, moderate resistance", full(Hold.MODERATE)),
          Map.entry(
              "full range against gravity, moderate to maximal resistance",
              full(Hold.MODERATE_TO_STRONG)),
          Map.entry("full range against gravity, maximal resistance", full(Hold.STRONG)));

  private static final Map<String, Observed> MRC =
      Map.of(
          "no contraction", none(Reduced.NONE, Felt.NO),
          "flicker or trace of contraction", none(Reduced.NONE, Felt.YES),
          "active movement with gravity eliminated", none(Reduced.FULL, Felt.YES),
          "active movement against gravity", full(Hold.GAVE_WAY),
          "active movement against gravity and resistance", full(Hold.MODERATE),
          "normal power", full(Hold.STRONG));

  private static Observed none(Reduced reduced, Felt felt) {
    return new Observed(
        Optional.of(Range.NONE), Optional.empty(), Optional.of(reduced), Optional.of(felt), false);
  }

  private static Observed range(Range range) {
    return new Observed(
        Optional.of(range), Optional.empty(), Optional.empty(), Optional.empty(), false);
  }

  private static Observed full(Hold hold) {
    return new Observed(
        Optional.of(Range.FULL), Optional.of(hold), Optional.empty(), Optional.empty(), false);
  }

  private static List<Map<String, String>> rows(String scale) {
    ArrayList<Map<String, String>> rows = new ArrayList<>();
    for (Map<String, String> row : Csv.rows("reference-muscle-grades.csv")) {
      if (row.get("scale").equals(scale) && Grade.of(row.get("grade")).isPresent()) {
        rows.add(row);
      }
    }
    return rows;
  }

  private static void check(
      String scale, int count, Map<String, Observed> observations, Scheme scheme) {
    List<Map<String, String>> rows = rows(scale);
    assertEquals(count, rows.size());
    for (Map<String, String> row : rows) {
      Observed seen = observations.get(row.get("criterion"));
      assertNotNull(seen, () -> "no observations for " + row);
      assertEquals(
          new Decision.Given(Grade.of(row.get("grade")).orElseThrow()),
          GradeRule.decide(seen, scheme, Criteria.GRAVITY),
          row.toString());
      assertEquals("verified", row.get("status"));
    }
  }

  @Test
  void everyRowOfTheTeachingScaleComesToItsGrade() {
    check("teaching scale", 12, TEACHING, Scheme.PLUS_MINUS);
  }

  @Test
  void everyWholeGradeOfTheMemorandumComesOut() {
    check("MRC", 6, MRC, Scheme.WHOLE);
  }
}
