package styloid.grading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.grading.Observed.Felt;
import styloid.grading.Observed.Hold;
import styloid.grading.Observed.Range;
import styloid.grading.Observed.Reduced;
import styloid.model.Codes;

class GradeRuleTest {
  private static final Set<String> HELD =
      Set.of("strong", "moderate-to-strong", "moderate", "slight-to-moderate", "slight", "yielded");

  @Test
  void everyCombinationComesToWhatTheTableSays() throws IOException {
    List<String[]> table = table();
    HashSet<String[]> used = new HashSet<>();
    int combinations = 0;
    for (Criteria criteria : Criteria.values()) {
      for (Scheme scheme : Scheme.values()) {
        for (Observed seen : Combinations.all(criteria)) {
          String[] row = first(table, criteria, scheme, seen);
          used.add(row);
          assertEquals(
              row[7], words(GradeRule.decide(seen, scheme, criteria)), scheme + " " + seen);
          combinations++;
        }
      }
    }
    assertEquals(2 * 2 * (5 * 9 * 4 * 3 + 5 * 9 * 3), combinations);
    assertEquals(table.size(), used.size(), "each row of the table must decide something");
  }

  /** The table written without the program. */
  static List<String[]> table() throws IOException {
    try (InputStream in = GradeRuleTest.class.getResourceAsStream("grades.csv")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#") && !line.startsWith("criteria,"))
          .map(line -> line.split(","))
          .toList();
    }
  }

  /** The row that decides; the outcome is its last cell. */
  static String[] first(List<String[]> table, Criteria criteria, Scheme scheme, Observed seen) {
    List<String> cells =
        List.of(
            Codes.of(criteria),
            scheme.code(),
            seen.withheld() ? "yes" : "no",
            code(seen.range()),
            code(seen.hold()),
            code(seen.reduced()),
            code(seen.contraction()));
    for (String[] row : table) {
      boolean fits = true;
      for (int i = 0; i < cells.size(); i++) {
        fits &= fits(row[i], cells.get(i));
      }
      if (fits) {
        return row;
      }
    }
    throw new AssertionError("the table says nothing of " + cells);
  }

  private static boolean fits(String pattern, String code) {
    return pattern.equals("*")
        || pattern.equals("held") && HELD.contains(code)
        || List.of(pattern.split("\\|")).contains(code);
  }

  private static String code(Optional<? extends Enum<?>> answer) {
    return answer.isPresent() ? Codes.of(answer.get()) : "-";
  }

  private static String words(Decision decision) {
    if (decision instanceof Decision.Given given) {
      return given.grade().code();
    } else if (decision instanceof Decision.Contradiction both) {
      return "contradiction " + both.one().code() + " " + both.other().code();
    }
    return "next " + ((Decision.Needs) decision).next().code();
  }

  @Test
  void aBetterObservationNeverLowersTheGrade() {
    int compared = 0;
    for (Criteria criteria : Criteria.values()) {
      for (Scheme scheme : Scheme.values()) {
        for (Observed seen : Combinations.all(criteria)) {
          for (Observed better : oneBetter(seen)) {
            Optional<Grade> before = lowest(seen, scheme, criteria);
            Optional<Grade> after = lowest(better, scheme, criteria);
            if (before.isPresent() && after.isPresent()) {
              compared++;
              assertTrue(
                  after.get().compareTo(before.get()) >= 0, () -> scheme + " " + seen + better);
            }
          }
        }
      }
    }
    assertTrue(compared > 500, "only " + compared + " pairs");
  }

  /** The grade, or the lower end of "at least 3". */
  private static Optional<Grade> lowest(Observed seen, Scheme scheme, Criteria criteria) {
    return GradeRule.decide(seen, scheme, criteria) instanceof Decision.Given given
        ? Optional.of(given.grade().ranked() ? given.grade() : Grade.G3)
        : Optional.empty();
  }

  private static List<Observed> oneBetter(Observed s) {
    ArrayList<Observed> better = new ArrayList<>();
    for (Range range : before(s.range(), Range.values())) {
      better.add(
          new Observed(Optional.of(range), s.hold(), s.reduced(), s.contraction(), s.withheld()));
    }
    if (!s.hold().equals(Optional.of(Hold.NOT_GIVEN))) {
      for (Hold hold : before(s.hold(), Hold.values())) {
        better.add(
            new Observed(s.range(), Optional.of(hold), s.reduced(), s.contraction(), s.withheld()));
      }
    }
    for (Reduced reduced : before(s.reduced(), Reduced.values())) {
      better.add(
          new Observed(s.range(), s.hold(), Optional.of(reduced), s.contraction(), s.withheld()));
    }
    for (Felt felt : before(s.contraction(), Felt.values())) {
      better.add(new Observed(s.range(), s.hold(), s.reduced(), Optional.of(felt), s.withheld()));
    }
    return better;
  }

  /** The answers better than this one; answers are listed best first. */
  private static <E extends Enum<E>> List<E> before(Optional<E> answer, E[] all) {
    return List.of(all).subList(0, answer.map(Enum::ordinal).orElse(0));
  }

  @Test
  void takingAnObservationAwayNeverGivesALowerOrHigherGrade() {
    for (Criteria criteria : Criteria.values()) {
      for (Scheme scheme : Scheme.values()) {
        for (Observed seen : Combinations.all(criteria)) {
          Decision before = GradeRule.decide(seen, scheme, criteria);
          if (!seen.withheld() && before instanceof Decision.Given) {
            for (Observed less : oneLess(seen)) {
              Decision after = GradeRule.decide(less, scheme, criteria);
              assertTrue(
                  after.equals(before) || after instanceof Decision.Needs,
                  () -> scheme + " " + seen + " " + less);
            }
          }
        }
      }
    }
  }

  private static List<Observed> oneLess(Observed s) {
    boolean w = s.withheld();
    return List.of(
        new Observed(Optional.empty(), s.hold(), s.reduced(), s.contraction(), w),
        new Observed(s.range(), Optional.empty(), s.reduced(), s.contraction(), w),
        new Observed(s.range(), s.hold(), Optional.empty(), s.contraction(), w),
        new Observed(s.range(), s.hold(), s.reduced(), Optional.empty(), w));
  }

  @Test
  void withheldResistanceIsNeverThreeAndNeverFive() {
    for (Criteria criteria : Criteria.values()) {
      for (Scheme scheme : Scheme.values()) {
        Observed seen =
            new Observed(
                Optional.of(Range.FULL),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                true);
        assertEquals(
            new Decision.Given(Grade.AT_LEAST_3), GradeRule.decide(seen, scheme, criteria));
      }
    }
  }

  @Test
  void aDecidedGradeIsAmongThePossibleOnesUnderItsScheme() {
    for (Criteria criteria : Criteria.values()) {
      for (Observed seen : Combinations.all(criteria)) {
        Set<Grade> possible = GradeRule.possible(seen, criteria);
        assertFalse(possible.contains(Grade.AT_LEAST_3));
        for (Scheme scheme : Scheme.values()) {
          if (GradeRule.decide(seen, scheme, criteria) instanceof Decision.Given given
              && given.grade().ranked()) {
            assertTrue(possible.contains(given.grade()), () -> scheme + " " + seen);
          }
        }
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # range, hold, reduced, grades still possible under either scheme
          FULL, STRONG,   , G5
          FULL, MODERATE, , G4
          FULL, SLIGHT,   , G3_PLUS G4
          FULL, YIELDED,  , G3_PLUS G4
          FULL, GAVE_WAY, , G3
          FULL, NOT_GIVEN,, G3 G3_PLUS G4_MINUS G4 G4_PLUS G5
          FULL, ,         , G3 G3_PLUS G4_MINUS G4 G4_PLUS G5
          NONE, ,         , G0 G1 G2_MINUS G2
          NONE, ,     FULL, G2
          NONE, ,     PART, G1 G2_MINUS
          MORE_THAN_HALF,,, G2 G3_MINUS
          LESS_THAN_HALF,,, G1 G2 G2_PLUS
          """)
  void whatWasSeenNarrowsTheGradesThatMayBeTyped(
      Range range, Hold hold, Reduced reduced, String grades) {
    Observed seen =
        new Observed(
            Optional.of(range),
            Optional.ofNullable(hold),
            Optional.ofNullable(reduced),
            Optional.empty(),
            false);
    EnumSet<Grade> expected = EnumSet.noneOf(Grade.class);
    for (String grade : grades.split(" ")) {
      expected.add(Grade.valueOf(grade));
    }
    assertEquals(expected, GradeRule.possible(seen, Criteria.GRAVITY));
  }
}
