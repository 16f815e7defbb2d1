package styloid.figure;

import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.paint.Stop;

/** Colours of a drawing. Patterns, not colours, tell what is measured from what is missing. */
record Palette(
    Color paper,
    Color ink,
    Color skin,
    Color skinLine,
    Color body,
    Color bodyLine,
    Color table,
    Color arc) {

  private static final double STRIPE = 5;

  Paint of(Ink.Role role) {
    return switch (role) {
      case TABLE -> table;
      case TABLE_LINE, BODY_LINE -> bodyLine;
      case BODY -> body;
      case SKIN -> skin;
      case SKIN_LINE, DETAIL -> skinLine;
      case GROUND -> paper;
      case MARK, HIDDEN_MARK, ZERO, REFERENCE -> ink;
      case ARC -> arc.deriveColor(0, 1, 1, 0.38);
      case MISSING -> hatching();
    };
  }

  private Paint hatching() {
    return new LinearGradient(
        0,
        0,
        STRIPE,
        STRIPE,
        false,
        CycleMethod.REPEAT,
        new Stop(0, ink),
        new Stop(0.34, ink),
        new Stop(0.34, paper),
        new Stop(1, paper));
  }
}
