package styloid.goniometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Digit;
import styloid.model.Outcome;
import styloid.model.Side;
import styloid.model.Text;

class NeutralZeroTest {
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # extension, flexion, arc, written, deficit, hyperextension
          0,    140,   140,   S 0–0–140,    0,  0
          10,   140,   150,   S 10–0–140,   0,  10
          -20,  140,   120,   S 0–20–140,   20, 0
          -0.5, 90,    89.5,  S 0–0.5–90,   0.5,0
          10,   -5,    5,     S 10–5–0,     0,  10
          -30,  30,    0,     S 0–30–30,    30, 0
          5.0,  130.0, 135.0, S 5–0–130,    0,  5
          """)
  void zeroStandsWhereTheJointReachesIt(
      String extension,
      String flexion,
      double arc,
      String written,
      double deficit,
      double hyperextension) {
    Visit visit =
        new Visit()
            .degrees("elbow-extension-active", Side.LEFT, extension)
            .degrees("elbow-flexion-active", Side.LEFT, flexion);
    assertEquals(arc, visit.number("elbow-arc-active", Side.LEFT, Digit.NONE));
    assertEquals(
        new Text(written),
        visit.result("elbow-written-active", Side.LEFT, Digit.NONE).value().orElseThrow());
    assertEquals(deficit, visit.number("elbow-extension-active-deficit", Side.LEFT, Digit.NONE));
    assertEquals(
        hyperextension,
        visit.number("elbow-extension-active-hyperextension", Side.LEFT, Digit.NONE));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          shoulder-frontal,    shoulder-abduction,            shoulder-adduction,            F
          shoulder-transverse, shoulder-horizontal-abduction, shoulder-horizontal-adduction, T
          shoulder-rotation,   shoulder-external-rotation,    shoulder-internal-rotation,    R
          forearm,             forearm-supination,            forearm-pronation,             R
          wrist-sagittal,      wrist-extension,               wrist-flexion,                 S
          wrist-frontal,       wrist-radial-deviation,        wrist-ulnar-deviation,         F
          """)
  void eachPlaneHasItsLetterAndTheEndAwayFromTheBodyFirst(
      String plane, String away, String toward, String letter) {
    Visit visit =
        new Visit()
            .degrees(away + "-passive", Side.RIGHT, "20")
            .degrees(toward + "-passive", Side.RIGHT, "40");
    assertEquals(
        new Text(letter + " 20–0–40"),
        visit.result(plane + "-written-passive", Side.RIGHT, Digit.NONE).value().orElseThrow());
  }

  @Test
  void endsThatContradictEachOtherGiveNoArc() {
    Visit visit =
        new Visit()
            .degrees("elbow-extension-active", Side.RIGHT, "-90")
            .degrees("elbow-flexion-active", Side.RIGHT, "89");
    assertTrue(
        visit.result("elbow-arc-active", Side.RIGHT, Digit.NONE).outcome()
            instanceof Outcome.Unavailable);
    assertTrue(
        visit.result("elbow-written-active", Side.RIGHT, Digit.NONE).outcome()
            instanceof Outcome.Unavailable);
  }

  @Test
  void anArcWithOneEndIsIncompleteAndNamesTheOther() {
    Visit visit = new Visit().degrees("elbow-flexion-active", Side.RIGHT, "140");
    Outcome.Incomplete incomplete =
        (Outcome.Incomplete) visit.result("elbow-arc-active", Side.RIGHT, Digit.NONE).outcome();
    assertEquals(
        java.util.List.of(Visit.key("elbow-extension-active", Side.RIGHT, Digit.NONE)),
        incomplete.missing());
  }
}
