package styloid.model;

import java.math.BigDecimal;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.function.Function;

/** What an item takes: a number with unit, one of listed answers, or text. */
public sealed interface ItemKind permits ItemKind.Number, ItemKind.Choices, ItemKind.Words {

  /**
   * A quantity. All four limits are in the first unit and included; outside {@code min} to {@code
   * max} a value is impossible and refused, outside {@code likelyMin} to {@code likelyMax} it is
   * asked about once.
   *
   * @param units units that may be typed; the first is taken when none is
   * @param decimals most digits after the point that an instrument of this kind gives
   */
  record Number(
      List<Unit> units,
      BigDecimal min,
      BigDecimal max,
      BigDecimal likelyMin,
      BigDecimal likelyMax,
      int decimals)
      implements ItemKind {
    public Number {
      units = List.copyOf(units);
      if (units.isEmpty() || new LinkedHashSet<>(units).size() != units.size()) {
        throw new IllegalArgumentException("an item needs a unit, each once");
      }
      for (Unit unit : units) {
        if (unit.dimension() != units.get(0).dimension()) {
          throw new IllegalArgumentException(unit + " does not convert to " + units.get(0));
        }
      }
      if (min.compareTo(likelyMin) > 0
          || likelyMin.compareTo(likelyMax) > 0
          || likelyMax.compareTo(max) > 0) {
        throw new IllegalArgumentException("limits must be min <= likely <= max");
      }
      if (decimals < 0 || decimals > 6) {
        throw new IllegalArgumentException("decimals must be 0 to 6");
      }
    }

    public static Number of(
        Unit unit, int min, int likelyMin, int likelyMax, int max, int decimals) {
      return new Number(
          List.of(unit),
          BigDecimal.valueOf(min),
          BigDecimal.valueOf(max),
          BigDecimal.valueOf(likelyMin),
          BigDecimal.valueOf(likelyMax),
          decimals);
    }

    public Unit unit() {
      return units.get(0);
    }
  }

  /** One of these answers, by code, in the order shown; digit keys 1, 2, 3 choose them. */
  record Choices(List<String> codes) implements ItemKind {
    public Choices {
      codes = List.copyOf(codes);
      codes.forEach(Choice::new);
      if (codes.isEmpty() || new LinkedHashSet<>(codes).size() != codes.size()) {
        throw new IllegalArgumentException("choices must be listed, each once");
      }
    }

    public static Choices of(String... codes) {
      return new Choices(List.of(codes));
    }
  }

  /** Free text of limited length. */
  record Words(int longest) implements ItemKind {
    public Words {
      if (longest < 1 || longest > 10_000) {
        throw new IllegalArgumentException("text length must be 1 to 10000");
      }
    }
  }

  /** Handles every kind. */
  default <T> T match(
      Function<Number, T> number, Function<Choices, T> choices, Function<Words, T> words) {
    if (this instanceof Number n) {
      return number.apply(n);
    } else if (this instanceof Choices c) {
      return choices.apply(c);
    }
    return words.apply((Words) this);
  }
}
