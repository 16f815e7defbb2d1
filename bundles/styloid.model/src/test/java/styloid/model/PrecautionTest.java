package styloid.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PrecautionTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

  private static Precaution limit(
      Precaution.Kind kind, Region region, Side side, Digit digit, LocalDate from, LocalDate to) {
    return new Precaution(
        kind,
        region,
        side,
        digit,
        Optional.ofNullable(from),
        Optional.ofNullable(to),
        "surgeon",
        "");
  }

  /** What each limit forbids; that it reaches what needs the same tissue is common practice. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          NO_ACTIVE_MOTION,  NONE, false
          NO_ACTIVE_MOTION,  ACTIVE_MOTION, true
          NO_ACTIVE_MOTION,  PASSIVE_MOTION, false
          NO_ACTIVE_MOTION,  RESISTANCE, true
          NO_ACTIVE_MOTION,  GRIP_OR_PINCH, true
          NO_PASSIVE_MOTION, ACTIVE_MOTION, false
          NO_PASSIVE_MOTION, PASSIVE_MOTION, true
          NO_PASSIVE_MOTION, RESISTANCE, false
          NO_RESISTANCE,     ACTIVE_MOTION, false
          NO_RESISTANCE,     RESISTANCE, true
          NO_RESISTANCE,     GRIP_OR_PINCH, true
          NO_GRIP_OR_PINCH,  RESISTANCE, false
          NO_GRIP_OR_PINCH,  GRIP_OR_PINCH, true
          """)
  void forbidsWhatItNames(Precaution.Kind kind, Demand demand, boolean forbidden) {
    assertEquals(forbidden, kind.forbids(demand));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # set on        item at
          RIGHT, MIDDLE,  RIGHT, MIDDLE, true
          RIGHT, MIDDLE,  RIGHT, RING,   false
          RIGHT, MIDDLE,  LEFT,  MIDDLE, false
          RIGHT, MIDDLE,  RIGHT, NONE,   true
          RIGHT, NONE,    RIGHT, RING,   true
          UNSIDED, NONE,  LEFT,  NONE,   true
          """)
  void reachesItsSideAndDigit(
      Side side, Digit digit, Side itemSide, Digit itemDigit, boolean withheld) {
    Precaution limit =
        limit(Precaution.Kind.NO_RESISTANCE, Region.FINGERS, side, digit, null, null);
    assertEquals(
        withheld, limit.withholds(Demand.RESISTANCE, Region.FINGERS, itemSide, itemDigit, DAY));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          WRIST,   WRIST, true
          WRIST,   ELBOW, false
          HAND,    FINGERS, true
          HAND,    THUMB, true
          HAND,    WRIST, false
          FINGERS, HAND, true
          LIMB,    SHOULDER, true
          ELBOW,   LIMB, true
          """)
  void reachesItsRegionAndWhatHoldsIt(Region set, Region loaded, boolean withheld) {
    Precaution limit =
        limit(Precaution.Kind.NO_ACTIVE_MOTION, set, Side.RIGHT, Digit.NONE, null, null);
    assertEquals(
        withheld, limit.withholds(Demand.ACTIVE_MOTION, loaded, Side.RIGHT, Digit.NONE, DAY));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          2026-03-02, 2026-03-02, true
          2026-03-03,           , false
          2026-03-01,           , true
                    , 2026-03-01, false
                    , 2026-03-02, true
                    ,           , true
          """)
  void isInForceFromItsFirstToItsLastDay(LocalDate from, LocalDate to, boolean inForce) {
    Precaution limit =
        limit(Precaution.Kind.NO_RESISTANCE, Region.WRIST, Side.LEFT, Digit.NONE, from, to);
    assertEquals(inForce, limit.inForceOn(DAY));
  }

  @Test
  void cannotEndBeforeItBegins() {
    assertThrows(
        IllegalArgumentException.class,
        () ->
            limit(
                Precaution.Kind.NO_RESISTANCE,
                Region.WRIST,
                Side.LEFT,
                Digit.NONE,
                DAY,
                DAY.minusDays(1)));
  }
}
