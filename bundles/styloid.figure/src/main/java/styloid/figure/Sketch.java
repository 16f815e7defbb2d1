package styloid.figure;

import java.util.List;
import java.util.Set;
import styloid.spi.Mark;

/**
 * A finished drawing in metres, to be fitted to any size.
 *
 * @param inks in the order they are drawn, later ones over earlier ones
 * @param notes angles written beside their arcs
 * @param frame what must be in sight; inks may run beyond it
 * @param unit size of a mark, about a twentieth of the picture
 * @param kinds of the marks that are drawn
 */
public record Sketch(
    List<Ink> inks, List<Note> notes, Box frame, double unit, Set<Mark.Kind> kinds) {
  /** A number of degrees beside an arc. */
  public record Note(Spot at, Meaning meaning, double degrees) {}

  /** What a number says. */
  public enum Meaning {
    MEASURED,
    MISSING
  }

  public Sketch {
    inks = List.copyOf(inks);
    notes = List.copyOf(notes);
    kinds = Set.copyOf(kinds);
  }
}
