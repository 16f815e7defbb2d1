package styloid.goniometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Outcome;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.Unit;

class WorkedDigitsTest {
  private static final double PRINTED = 0.0005;

  @ParameterizedTest
  @CsvFileSource(resources = "given_hand_outcome_worked.csv", numLinesToSkip = 1)
  void workedFingersComeOutAsGiven(
      String name,
      String flexMp,
      String flexPip,
      String flexDip,
      String deficitMp,
      String deficitPip,
      String deficitDip,
      double tam,
      double percent,
      String assh,
      double strickland,
      String original,
      String adjusted,
      String status) {
    Visit visit =
        new Visit()
            .finger(
                Side.RIGHT,
                Digit.RING,
                flexMp + "/" + flexPip + "/" + flexDip,
                deficitMp + "/" + deficitPip + "/" + deficitDip);
    assertEquals(tam, visit.number("total-active-motion", Side.RIGHT, Digit.RING), name);
    assertEquals(
        percent, visit.number("total-active-motion-percent", Side.RIGHT, Digit.RING), PRINTED);
    assertEquals(assh, visit.choice("total-active-motion-class", Side.RIGHT, Digit.RING));
    assertEquals(strickland, visit.number("strickland-percent", Side.RIGHT, Digit.RING), PRINTED);
    assertEquals(original, visit.choice("strickland-original-class", Side.RIGHT, Digit.RING));
    assertEquals(adjusted, visit.choice("strickland-adjusted-class", Side.RIGHT, Digit.RING));
  }

  @Test
  void hyperextensionCountsAsNoDeficitAndNeverAsMore() {
    Visit plain = new Visit().finger(Side.LEFT, Digit.INDEX, "90/100/70", "0/0/0");
    Visit hyper = new Visit().finger(Side.LEFT, Digit.INDEX, "90/100/70", "-30/-10/-5");
    assertEquals(260, plain.number("total-active-motion", Side.LEFT, Digit.INDEX));
    assertEquals(260, hyper.number("total-active-motion", Side.LEFT, Digit.INDEX));
  }

  private static Visit bothIndexFingers() {
    return new Visit()
        .finger(Side.RIGHT, Digit.INDEX, "60/60/30", "0/0/0")
        .finger(Side.LEFT, Digit.INDEX, "80/80/40", "0/0/0");
  }

  @Test
  void oppositeDigitIsTheNormalWhenItIsNotInvolved() {
    Visit visit = bothIndexFingers().involved(Side.RIGHT);
    assertEquals(75, visit.number("total-active-motion-percent", Side.RIGHT, Digit.INDEX));
    assertEquals("good", visit.choice("total-active-motion-class", Side.RIGHT, Digit.INDEX));
    assertEquals(
        200 / 2.6, visit.number("total-active-motion-percent", Side.LEFT, Digit.INDEX), 1e-12);
  }

  @Test
  void anInvolvedOppositeDigitIsNoNormal() {
    Visit visit = bothIndexFingers().involved(Side.RIGHT, Side.LEFT);
    assertEquals(
        150 / 2.6, visit.number("total-active-motion-percent", Side.RIGHT, Digit.INDEX), 1e-12);
  }

  @Test
  void aPartlyRecordedOppositeDigitMakesTheShareIncomplete() {
    Visit visit =
        new Visit()
            .finger(Side.RIGHT, Digit.INDEX, "60/60/30", "0/0/0")
            .degrees("mp-flexion-active", Side.LEFT, Digit.INDEX, "90");
    Outcome.Incomplete incomplete =
        (Outcome.Incomplete)
            visit.result("total-active-motion-percent", Side.RIGHT, Digit.INDEX).outcome();
    assertEquals(5, incomplete.missing().size());
    assertTrue(incomplete.missing().stream().allMatch(key -> key.side() == Side.LEFT));
    assertEquals(150, visit.number("total-active-motion", Side.RIGHT, Digit.INDEX));
  }

  @Test
  void anOppositeDigitWithoutMotionGivesNoShare() {
    Visit visit =
        new Visit()
            .finger(Side.RIGHT, Digit.INDEX, "60/60/30", "0/0/0")
            .finger(Side.LEFT, Digit.INDEX, "10/10/10", "10/10/10");
    assertTrue(
        visit.result("total-active-motion-percent", Side.RIGHT, Digit.INDEX).outcome()
            instanceof Outcome.Unavailable);
  }

  @Test
  void thumbTotalsMpAndIpAgainst140() {
    Visit visit =
        new Visit()
            .degrees("thumb-mp-flexion-active", Side.RIGHT, Digit.THUMB, "50")
            .degrees("thumb-mp-extension-active", Side.RIGHT, Digit.THUMB, "-10")
            .degrees("thumb-ip-flexion-active", Side.RIGHT, Digit.THUMB, "70")
            .degrees("thumb-ip-extension-active", Side.RIGHT, Digit.THUMB, "15");
    assertEquals(110, visit.number("thumb-total-active-motion", Side.RIGHT, Digit.THUMB));
    assertEquals(
        110 / 1.4,
        visit.number("thumb-total-active-motion-percent", Side.RIGHT, Digit.THUMB),
        1e-12);
    assertEquals("good", visit.choice("thumb-total-active-motion-class", Side.RIGHT, Digit.THUMB));
  }

  @Test
  void passiveTotalIsKeptApartFromTheActiveOne() {
    Visit visit = new Visit().finger(Side.RIGHT, Digit.LITTLE, "80/80/40", "0/20/10");
    for (String joint : List.of("mp", "pip", "dip")) {
      visit.degrees(joint + "-flexion-passive", Side.RIGHT, Digit.LITTLE, "90");
      visit.degrees(joint + "-extension-passive", Side.RIGHT, Digit.LITTLE, "-5");
    }
    assertEquals(255, visit.number("total-passive-motion", Side.RIGHT, Digit.LITTLE));
    assertEquals(170, visit.number("total-active-motion", Side.RIGHT, Digit.LITTLE));
  }

  @Test
  void anAbsentJointMakesEveryTotalIncomplete() {
    Visit visit =
        new Visit()
            .finger(Side.RIGHT, Digit.RING, "90/100/70", "0/0/0")
            .absent("pip-flexion-active", Side.RIGHT, Digit.RING);
    for (String id :
        List.of(
            "total-active-motion",
            "total-active-motion-percent",
            "total-active-motion-class",
            "strickland-percent",
            "strickland-original-class",
            "strickland-adjusted-class")) {
      Outcome outcome = visit.result(id, Side.RIGHT, Digit.RING).outcome();
      assertEquals(
          List.of(Visit.key("pip-flexion-active", Side.RIGHT, Digit.RING)),
          ((Outcome.Incomplete) outcome).missing(),
          id);
    }
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # distance, unit, flexions, deficits, points, class
          0,   cm, 90/100/70, 0/0/0,    15, excellent
          2.4, cm, 80/80/40,  0/20/10,  15, excellent
          25,  mm, 80/80/40,  0/20/11,  12, good
          4,   cm, 70/60/30,  10/25/15, 4,  poor
          39,  mm, 70/70/30,  10/25/15, 8,  satisfactory
          8,   cm, 45/35/20,  0/20/10,  3,  poor
          """)
  void buckGramckoAddsItsThreeParts(
      String distance, String unit, String flexions, String deficits, double points, String grade) {
    Unit typed = unit.equals("cm") ? Unit.CENTIMETRE : Unit.MILLIMETRE;
    Visit visit =
        new Visit()
            .finger(Side.LEFT, Digit.MIDDLE, flexions, deficits)
            .put("fingertip-to-crease", Side.LEFT, Digit.MIDDLE, Quantity.of(distance, typed));
    assertEquals(points, visit.number("buck-gramcko-points", Side.LEFT, Digit.MIDDLE));
    assertEquals(grade, visit.choice("buck-gramcko-class", Side.LEFT, Digit.MIDDLE));
  }

  @Test
  void buckGramckoWaitsForTheDistance() {
    Visit visit = new Visit().finger(Side.LEFT, Digit.MIDDLE, "90/100/70", "0/0/0");
    assertTrue(visit.find("buck-gramcko-points", Side.LEFT, Digit.MIDDLE).isEmpty());
    visit.absent("fingertip-to-crease", Side.LEFT, Digit.MIDDLE);
    assertTrue(
        visit.result("buck-gramcko-points", Side.LEFT, Digit.MIDDLE).outcome()
            instanceof Outcome.Incomplete);
  }

  @ParameterizedTest
  @CsvFileSource(resources = "given_kapandji_steps.csv", numLinesToSkip = 1)
  void everyOppositionScoreNamesItsPoint(String score, String point, String status, String note) {
    Visit visit = new Visit().put("kapandji", Side.RIGHT, Digit.NONE, new Choice(score));
    Result result = visit.result("kapandji-point", Side.RIGHT, Digit.NONE);
    assertEquals(new Choice(score), result.value().orElseThrow());
    assertEquals(status, result.why().status().code());
    String words = Visit.module().definition().labels().find("en", "choice." + score).orElseThrow();
    String plain = point.replaceAll(" *\\(.*?\\)", "").replace("of the ", "");
    for (String word : plain.split(" ")) {
      boolean named =
          words.contains(word)
              || List.of("lateral", "side", "second", "third", "phalanx").contains(word);
      assertTrue(named, words + " does not name " + word);
    }
  }
}
