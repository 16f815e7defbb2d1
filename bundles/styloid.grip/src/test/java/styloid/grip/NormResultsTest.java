package styloid.grip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import styloid.model.Patient.Dominance;
import styloid.model.Patient.Sex;
import styloid.model.Side;
import styloid.model.SourceStatus;
import styloid.model.Unit;
import styloid.model.norm.NormLookup;

class NormResultsTest {
  private static final Unit KG = Unit.KILOGRAM_FORCE;
  private static final Unit LB = Unit.POUND_FORCE;

  private static Visit gripping(Visit visit) {
    return visit
        .trials("power", Side.RIGHT, KG, "40", "41", "42")
        .trials("power", Side.LEFT, KG, "38", "39", "40")
        .trials("palmar", Side.LEFT, KG, "7", "7", "7")
        .trials("tip", Side.LEFT, KG, "5", "5", "5");
  }

  @Test
  void atTheNormTheScoreIsZeroAndTheFiftiethPercentile() {
    Visit visit =
        new Visit().who(Sex.MALE, 20).trials("power", Side.RIGHT, LB, "121", "121", "121");
    assertEquals(0, visit.number("z-power", Side.RIGHT), 1e-15);
    assertEquals(50, visit.number("percentile-power", Side.RIGHT), 1e-12);
    assertEquals("as-expected", visit.choice("band-power", Side.RIGHT));
    assertEquals(SourceStatus.VERIFIED, visit.result("z-power", Side.RIGHT).why().status());
    assertEquals(
        SourceStatus.COMMON_PRACTICE, visit.result("band-power", Side.RIGHT).why().status());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          -2, below
          -1, as-expected
          0,  as-expected
          1,  above
          2,  far-above
          """)
  void bandsIncludeTheirLowerLimit(double limit, String at) {
    assertEquals(at, NormResults.band(limit));
    assertEquals(at, NormResults.band(Math.nextUp(limit)));
    if (limit != 0) {
      assertTrue(!at.equals(NormResults.band(Math.nextDown(limit))), "one step below " + limit);
    }
  }

  @Test
  void theOutermostBandsAreOpen() {
    assertEquals("far-below", NormResults.band(Math.nextDown(-2.0)));
    assertEquals("far-below", NormResults.band(-9));
    assertEquals("above", NormResults.band(Math.nextDown(2.0)));
    assertEquals("far-above", NormResults.band(9));
  }

  @Test
  void saysWhichFactIsMissing() {
    assertEquals(
        "norm.why.sex-unknown", gripping(new Visit().aged(30)).reason("z-power", Side.LEFT));
    assertEquals(
        "norm.why.age-unknown", gripping(new Visit().sex(Sex.MALE)).reason("z-power", Side.LEFT));
    Visit child = gripping(new Visit().who(Sex.MALE, 19));
    for (String kind : new String[] {"z-", "percentile-", "band-"}) {
      assertEquals("norm.why.age-outside", child.reason(kind + "power", Side.LEFT));
    }
    assertEquals(
        "The age lies outside the ages of the table for this measure, sex and hand: 20+ years.",
        Visit.texts()
            .text(
                child
                    .result("z-power", Side.LEFT)
                    .outcome()
                    .match(v -> null, i -> i.reason(), u -> u.reason())));
  }

  @Test
  void rowsTheSourceDoesNotPrintGiveNoValue() {
    Visit visit = gripping(new Visit().who(Sex.FEMALE, 60));
    assertEquals("norm.why.age-outside", visit.reason("z-palmar", Side.LEFT));
    assertEquals(
        "norm.why.age-outside",
        gripping(new Visit().who(Sex.FEMALE, 80)).reason("z-palmar", Side.LEFT));
    assertTrue(gripping(new Visit().who(Sex.FEMALE, 59)).number("z-palmar", Side.LEFT) < 5);
  }

  @Test
  void aRowFromMemoryIsShownAsSuch() {
    Visit visit = gripping(new Visit().who(Sex.MALE, 76));
    assertEquals(SourceStatus.MEMORY, visit.result("z-tip", Side.LEFT).why().status());
    Visit younger = gripping(new Visit().who(Sex.MALE, 60));
    assertEquals(SourceStatus.VERIFIED, younger.result("z-tip", Side.LEFT).why().status());
  }

  @Test
  void aTableOfTheBetterHandIsNotUsedForOneHand() {
    Visit visit = gripping(new Visit().who(Sex.MALE, 30).choosing("grip.norm", "steiber-2016"));
    assertEquals("norm.why.best-of-both", visit.reason("z-power", Side.RIGHT));
    assertEquals((42 - 53.6) / 8.2, visit.number("z-best", Side.UNSIDED), 1e-12);
    Visit each = gripping(new Visit().who(Sex.MALE, 30));
    assertEquals("norm.why.each-hand", each.reason("z-best", Side.UNSIDED));
  }

  @Test
  void theBetterHandNeedsBothHands() {
    Visit visit =
        new Visit()
            .who(Sex.MALE, 30)
            .choosing("grip.norm", "steiber-2016")
            .trials("power", Side.RIGHT, KG, "40", "41", "42");
    assertTrue(visit.incomplete("z-best", Side.UNSIDED));
    assertTrue(visit.incomplete("best-power", Side.UNSIDED));
    assertTrue(visit.incomplete("low-strength-ewgsop2", Side.UNSIDED));
  }

  @Test
  void heightIsNeededWhereTheTableGoesByIt() {
    Visit visit =
        gripping(new Visit().who(Sex.FEMALE, 85).choosing("grip.norm", "steiber-2016-height"));
    assertEquals("norm.why.height-unknown", visit.reason("z-best", Side.UNSIDED));
    assertEquals("norm.why.height-outside", visit.tall("181").reason("z-best", Side.UNSIDED));
    assertEquals((42 - 23) / 4.0, visit.tall("179").number("z-best", Side.UNSIDED), 1e-12);
  }

  @Test
  void theTableOfTheDominantHandNeedsToKnowIt() {
    Visit visit =
        gripping(new Visit().who(Sex.MALE, 30).choosing("grip.norm.palmar", "palmar-decade"));
    assertEquals("norm.why.hand-unknown", visit.reason("z-palmar", Side.LEFT));
    assertEquals(
        "norm.why.hand-unknown", visit.handed(Dominance.EITHER).reason("z-palmar", Side.LEFT));
    assertEquals(
        "norm.why.hand-not-covered", visit.handed(Dominance.RIGHT).reason("z-palmar", Side.LEFT));
    assertTrue(visit.handed(Dominance.LEFT).number("z-palmar", Side.LEFT) < 0);
  }

  @Test
  void anUnknownTableIsNamedAndNoneOtherTaken() {
    Visit visit = gripping(new Visit().who(Sex.MALE, 30).choosing("grip.norm", "house-table"));
    assertEquals("norm.why.no-table", visit.reason("z-power", Side.RIGHT));
    assertTrue(visit.number("z-tip", Side.LEFT) < 5);
    Visit wrong = gripping(new Visit().who(Sex.MALE, 30).choosing("grip.norm.tip", "steiber-2016"));
    assertEquals("norm.why.no-table", wrong.reason("z-tip", Side.LEFT));
  }

  @Test
  void centilesAreNeverTurnedIntoAZScore() {
    Visit visit = gripping(new Visit().who(Sex.MALE, 30).choosing("grip.norm", "dodds-2014"));
    assertEquals("norm.why.centiles-only", visit.reason("z-power", Side.RIGHT));
    assertEquals("norm.why.centiles-only", visit.reason("percentile-best", Side.UNSIDED));
    assertEquals("p10-to-p25", visit.choice("centile-best", Side.UNSIDED));
  }

  @ParameterizedTest
  @EnumSource(NormLookup.Reason.class)
  void everyReasonHasItsWords(NormLookup.Reason reason) {
    assertTrue(Visit.texts().find("grip", "norm.why." + reason.code()).isPresent(), reason::code);
  }
}
