package styloid.model.norm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Patient.Dominance;
import styloid.model.Patient.Sex;
import styloid.model.Side;
import styloid.model.SourceStatus;
import styloid.model.Unit;

class NormTableTest {
  private static final String HEAD =
      """
      # source: Someone A. 1999. A made-up table for this test
      # population: nobody
      # score: mean
      # unit: [lbf_av]
      # keys: measure
      """;
  private static final String COLUMNS =
      "measure,sex,age_min_years,age_max_years,hand,mean,sd,status,note\n";
  private static final String ROWS =
      """
      grip,M,20,24,R,100.0,20.0,verified,
      grip,M,25,,R,90.0,10.0,memory,"a note, with a comma and ""marks\"""
      grip,M,20,24,L,95,20,verified,
      grip,M,25,,L,85,10,common practice,
      """;

  private static NormTable table(String text) {
    return NormTable.parse("made-up.csv", text, Unit.Dimension.FORCE);
  }

  private static NormTable sample() {
    return table(HEAD + COLUMNS + ROWS);
  }

  private static NormQuery who(Sex sex, Integer age, Side side) {
    return new NormQuery(
        Optional.ofNullable(sex),
        Optional.ofNullable(age),
        side,
        Optional.empty(),
        Optional.empty(),
        Map.of("measure", "grip"));
  }

  private static NormRow found(NormLookup lookup) {
    return assertInstanceOf(NormLookup.Found.class, lookup).row();
  }

  private static NormLookup.Missing missing(NormLookup lookup) {
    return assertInstanceOf(NormLookup.Missing.class, lookup);
  }

  @Test
  void readsHeadersRowsAndStatuses() {
    NormTable table = sample();
    assertEquals(NormTable.Score.MEAN, table.score());
    assertEquals(Unit.POUND_FORCE, table.unit());
    assertEquals("nobody", table.population());
    assertEquals(4, table.rows().size());
    NormRow second = table.rows().get(1);
    assertEquals(new BigDecimal("90.0"), second.mean().orElseThrow());
    assertEquals("a note, with a comma and \"marks\"", second.others().get("note"));
    assertEquals(SourceStatus.MEMORY, table.source(second).status());
    assertEquals(table.citation(), table.source(second).citation());
    assertEquals(SourceStatus.COMMON_PRACTICE, table.rows().get(3).status());
    assertEquals(8, second.line());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          20, 100.0
          24, 100.0
          25, 90.0
          99, 90.0
          """)
  void bandsIncludeBothEndsAndMayBeOpenAbove(int age, String mean) {
    NormRow row = found(sample().find(who(Sex.MALE, age, Side.RIGHT)));
    assertEquals(new BigDecimal(mean), row.mean().orElseThrow());
  }

  @Test
  void saysWhyThereIsNoRow() {
    NormTable table = sample();
    assertEquals(NormLookup.Reason.SEX_UNKNOWN, reason(table, who(null, 30, Side.LEFT)));
    assertEquals(NormLookup.Reason.SEX_NOT_COVERED, reason(table, who(Sex.FEMALE, 30, Side.LEFT)));
    assertEquals(NormLookup.Reason.AGE_UNKNOWN, reason(table, who(Sex.MALE, null, Side.LEFT)));
    assertEquals(NormLookup.Reason.HAND_UNKNOWN, reason(table, who(Sex.MALE, 30, Side.UNSIDED)));
    NormLookup.Missing young = missing(table.find(who(Sex.MALE, 19, Side.LEFT)));
    assertEquals(NormLookup.Reason.AGE_OUTSIDE, young.reason());
    assertEquals(Optional.of(new Band(20, Optional.empty())), young.covered());
    NormQuery other =
        new NormQuery(
            Optional.of(Sex.MALE),
            Optional.of(30),
            Side.LEFT,
            Optional.empty(),
            Optional.empty(),
            Map.of("measure", "tip"));
    assertEquals(NormLookup.Reason.NOT_IN_TABLE, reason(table, other));
  }

  private static NormLookup.Reason reason(NormTable table, NormQuery query) {
    return missing(table.find(query)).reason();
  }

  @Test
  void aQueryThatForgetsAKeyIsABug() {
    NormQuery query =
        new NormQuery(
            Optional.of(Sex.MALE),
            Optional.of(30),
            Side.LEFT,
            Optional.empty(),
            Optional.empty(),
            Map.of());
    assertThrows(IllegalArgumentException.class, () -> sample().find(query));
  }

  @Test
  void goesByTheDominantHandWhereTheTableDoes() {
    NormTable table =
        table(
            HEAD
                + COLUMNS
                + """
                grip,,20,,D,50,5,verified,
                grip,,20,,N,45,5,verified,
                """);
    assertEquals("50", mean(table, Side.LEFT, Dominance.LEFT));
    assertEquals("45", mean(table, Side.RIGHT, Dominance.LEFT));
    assertEquals("50", mean(table, Side.RIGHT, Dominance.RIGHT));
    assertEquals(
        NormLookup.Reason.HAND_UNKNOWN, reason(table, handed(Side.RIGHT, Dominance.EITHER)));
    assertEquals(NormLookup.Reason.HAND_UNKNOWN, reason(table, handed(Side.RIGHT, null)));
  }

  private static NormQuery handed(Side side, Dominance dominance) {
    return new NormQuery(
        Optional.empty(),
        Optional.of(30),
        side,
        Optional.ofNullable(dominance),
        Optional.empty(),
        Map.of("measure", "grip"));
  }

  private static String mean(NormTable table, Side side, Dominance dominance) {
    return found(table.find(handed(side, dominance))).mean().orElseThrow().toString();
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          159.4, , HEIGHT_OUTSIDE
          159.5, 40,
          164.4, 40,
          164.5, 42,
          230,   42,
          ,      , HEIGHT_UNKNOWN
          """)
  void heightIsRoundedToWholeCentimetres(BigDecimal height, String mean, String reason) {
    NormTable table =
        table(
            HEAD.replace("# keys: measure\n", "")
                + """
                sex,age_min_years,age_max_years,height_min_cm,height_max_cm,mean,sd,status
                M,20,,160,164,40,5,verified
                M,20,,165,,42,5,verified
                """);
    NormQuery query =
        new NormQuery(
            Optional.of(Sex.MALE),
            Optional.of(30),
            Side.UNSIDED,
            Optional.empty(),
            Optional.ofNullable(height),
            Map.of());
    NormLookup lookup = table.find(query);
    if (reason == null) {
      assertEquals(mean, found(lookup).mean().orElseThrow().toString());
    } else {
      assertEquals(reason, missing(lookup).reason().name());
    }
  }

  @Test
  void rowsAtSingleAgesAreFoundByTheLastAgeReached() {
    NormTable table =
        table(
            HEAD.replace("# keys: measure\n", "# ages: points\n")
                + """
                sex,age_min_years,age_max_years,p10,p50,p90,status
                M,20,20,30,40,50,memory
                M,25,25,32,42,52,memory
                """);
    NormRow at24 = found(table.find(age(24)));
    assertEquals(20, at24.age().min());
    assertEquals(25, table.next(at24).orElseThrow().age().min());
    assertEquals(new BigDecimal("42"), found(table.find(age(25))).centiles().get(50));
    assertTrue(table.next(found(table.find(age(25)))).isEmpty());
    assertEquals(NormLookup.Reason.AGE_OUTSIDE, reason(table, age(26)));
    assertEquals(NormLookup.Reason.AGE_OUTSIDE, reason(table, age(19)));
  }

  private static NormQuery age(int age) {
    return new NormQuery(
        Optional.of(Sex.MALE),
        Optional.of(age),
        Side.UNSIDED,
        Optional.empty(),
        Optional.empty(),
        Map.of());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          grip,M,24,29,R,90,10,verified, | overlap
          grip,M,24,,R,90,10,verified,   | overlap
          grip,M,26,29,R,90,10,verified, | a band is missing
          grip,M,29,25,R,90,10,verified, | is above
          grip,M,25,29,R,90,0,verified,  | must be above zero
          grip,M,25,29,R,90,-1,verified, | must be above zero
          grip,M,25,29,R,,10,verified,   | needs a mean
          grip,M,25,29,R,9O,10,verified, | is not a number
          grip,M,2x,29,R,90,10,verified, | is not a whole number
          grip,X,25,29,R,90,10,verified, | must be F, M or empty
          grip,M,25,29,X,90,10,verified, | must be R, L, D, N or empty
          grip,M,25,29,D,90,10,verified, | named in two ways
          grip,M,25,29,,90,10,verified,  | named in two ways
          grip,M,25,29,R,90,10,guess,    | must be verified, memory or common practice
          grip,M,25,29,R,90,10,computed, | must be verified, memory or common practice
          grip,M,25,29,R,90,10,verified  | 8 cells stand under 9 columns
          grip,M,25,29,R,90,10,verified,"| is not closed
          """)
  void refusesABadRowWithFileAndLine(String row, String why) {
    String text = HEAD + COLUMNS + "grip,M,20,24,R,100,20,verified,\n" + row + "\n";
    assertRefused(text, 8, why);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          unit: [lbf_av]   | unit: lb          | 6 | is not a unit known here
          unit: [lbf_av]   | unit: deg         | 6 | does not measure FORCE
          unit: [lbf_av]   | note: none        | 6 | "# unit:" must stand above
          score: mean      | score: average    | 6 | must be mean, maximum or single
          source: Someone  | sauce: Someone    | 6 | "# source:" must stand above
          population: nobody | unit: N         | 4 | stands twice
          keys: measure    | keys: motion      | 6 | the column motion is missing
          keys: measure    | nothing           | 5 | must be "# name: text"
          """)
  void refusesABadHeader(String from, String to, int line, String why) {
    assertRefused((HEAD + COLUMNS + ROWS).replace(from, to), line, why);
  }

  @Test
  void refusesColumnsThatAreMissingOrTwice() {
    assertRefused(
        (HEAD + COLUMNS + ROWS).replace(",status,note", ",note,x"), 6, "status is missing");
    assertRefused((HEAD + COLUMNS + ROWS).replace("sd,status", "mean,status"), 6, "stands twice");
    assertRefused(HEAD + COLUMNS, 7, "has no rows");
  }

  @Test
  void refusesARowInAnotherUnitAndCentilesThatDoNotRise() {
    String plain = HEAD.replace("# keys: measure\n", "");
    assertRefused(
        plain + "sex,age_min_years,age_max_years,mean,unit,status\nM,20,,90,kgf,verified\n",
        6,
        "is not that of the table");
    assertRefused(
        plain + "sex,age_min_years,age_max_years,p10,p50,status\nM,20,,40,40,verified\n",
        6,
        "must rise");
  }

  @Test
  void refusesAFileThatIsNotThere() {
    NormTableException missing =
        assertThrows(
            NormTableException.class,
            () -> NormTable.beside(NormTableTest.class, "none.csv", Unit.Dimension.FORCE));
    assertTrue(missing.getMessage().contains("none.csv"), missing.getMessage());
  }

  private static void assertRefused(String text, int line, String why) {
    NormTableException refused = assertThrows(NormTableException.class, () -> table(text));
    String message = refused.getMessage();
    assertTrue(message.startsWith("made-up.csv line " + line + ": "), message);
    assertTrue(message.contains(why), message);
  }
}
