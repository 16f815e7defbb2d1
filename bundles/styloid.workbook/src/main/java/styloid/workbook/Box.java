package styloid.workbook;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

/** One planned cell of a worksheet. */
sealed interface Box permits Box.Words, Box.Figure, Box.Live, Box.Gap {

  /** Text; never read as a formula. */
  record Words(String text, Look look, Optional<String> name) implements Box {
    public Words {
      Objects.requireNonNull(text, "text");
      Objects.requireNonNull(look, "look");
      Objects.requireNonNull(name, "name");
    }
  }

  /** A number, shown by a number format that carries its unit. */
  record Figure(double value, String format, Look look, Optional<String> name) implements Box {
    public Figure {
      Objects.requireNonNull(format, "format");
      Objects.requireNonNull(look, "look");
      Objects.requireNonNull(name, "name");
    }
  }

  /** A formula with the value we calculated kept beside it. */
  record Live(String formula, double value, String format, Optional<String> name) implements Box {
    public Live {
      Objects.requireNonNull(formula, "formula");
      Objects.requireNonNull(format, "format");
      Objects.requireNonNull(name, "name");
    }
  }

  /** No cell at all. */
  record Gap() implements Box {}

  static Box words(String text, Look look) {
    return new Words(text, look, Optional.empty());
  }

  static Box gap() {
    return new Gap();
  }

  /** Name of the cell, if formulas may call it by one. */
  default Optional<String> name() {
    return match(Words::name, Figure::name, Live::name, gap -> Optional.empty());
  }

  default <T> T match(
      Function<Words, T> words,
      Function<Figure, T> figure,
      Function<Live, T> live,
      Function<Gap, T> gap) {
    if (this instanceof Words w) {
      return words.apply(w);
    } else if (this instanceof Figure f) {
      return figure.apply(f);
    } else if (this instanceof Live l) {
      return live.apply(l);
    }
    return gap.apply((Gap) this);
  }
}
