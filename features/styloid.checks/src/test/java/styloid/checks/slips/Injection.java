package styloid.checks.slips;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Quantity;
import styloid.model.Unit;

/** One slip put into an evaluation: where, which and what is typed because of it. */
record Injection(Kind kind, int at, Quantity typed) {

  /** The classes of slips. */
  enum Kind {
    /** A number of one unit typed as another. */
    UNIT,
    /** The decimal point one place off. */
    TENFOLD,
    /** Two digits beside each other swapped. */
    SWAPPED,
    /** The other limb measured. */
    SIDE;

    String word() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** A slip of a kind at a random place where it changes the number; empty where none can. */
  static Optional<Injection> into(Corpus.Case into, Kind kind) {
    Random random = new Random(into.seed() * 7919 + kind.ordinal());
    ArrayList<Injection> all = new ArrayList<>();
    for (int at = 0; at < into.steps().size(); at++) {
      for (Quantity wrong : wrong(into, into.steps().get(at), kind, random)) {
        if (wrong.amount().compareTo(into.steps().get(at).typed().amount()) != 0) {
          all.add(new Injection(kind, at, wrong));
        }
      }
    }
    return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
  }

  private static List<Quantity> wrong(
      Corpus.Case into, Corpus.Step step, Kind kind, Random random) {
    return switch (kind) {
      case UNIT -> unit(step, random);
      case TENFOLD -> tenfold(step);
      case SWAPPED -> swapped(step);
      case SIDE -> otherSide(into, step, random);
    };
  }

  /** The gauge shows the other unit; now and then a number is converted that needed none. */
  private static List<Quantity> unit(Corpus.Step step, Random random) {
    ItemKind.Number kind = (ItemKind.Number) step.item().kind();
    if (Typing.dimension(step.item()) != Unit.Dimension.FORCE || kind.units().size() < 2) {
      return List.of();
    }
    Unit own = step.typed().unit();
    Unit other = own == Unit.POUND_FORCE ? Unit.KILOGRAM_FORCE : Unit.POUND_FORCE;
    boolean twice = random.nextInt(5) == 0;
    BigDecimal amount =
        twice
            ? other.convert(step.typed().amount(), own)
            : own.convert(step.typed().amount(), other);
    BigDecimal rounded = amount.setScale(1, java.math.RoundingMode.HALF_UP).stripTrailingZeros();
    return List.of(new Quantity(rounded.scale() < 0 ? rounded.setScale(0) : rounded, own));
  }

  private static List<Quantity> tenfold(Corpus.Step step) {
    ItemKind.Number kind = (ItemKind.Number) step.item().kind();
    ArrayList<Quantity> all = new ArrayList<>();
    for (int places : new int[] {-1, 1}) {
      BigDecimal moved = step.typed().amount().scaleByPowerOfTen(places).stripTrailingZeros();
      if (moved.scale() <= kind.decimals()) {
        all.add(new Quantity(moved.scale() < 0 ? moved.setScale(0) : moved, step.typed().unit()));
      }
    }
    return all;
  }

  private static List<Quantity> swapped(Corpus.Step step) {
    BigDecimal typed = step.typed().amount();
    char[] digits = typed.unscaledValue().abs().toString().toCharArray();
    ArrayList<Quantity> all = new ArrayList<>();
    for (int at = 1; at < digits.length; at++) {
      char[] other = digits.clone();
      other[at] = digits[at - 1];
      other[at - 1] = digits[at];
      BigInteger whole = new BigInteger(new String(other));
      BigInteger signed = typed.signum() < 0 ? whole.negate() : whole;
      all.add(new Quantity(new BigDecimal(signed, typed.scale()), step.typed().unit()));
    }
    return all;
  }

  private static List<Quantity> otherSide(Corpus.Case into, Corpus.Step step, Random random) {
    Item item = step.item();
    ItemKey there = step.key().opposite();
    double level = into.limb().at(item, there, into.visits() - 1, into.visits());
    double shown = Typing.shown(Typing.today(level, item, random), item, random);
    return List.of(into.typing().typed(shown, item));
  }
}
