package styloid.custom;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import styloid.exchange.json.NearMiss;
import styloid.model.ItemKind;
import styloid.model.Unit;

/**
 * What a formula measures: finds additions and comparisons of what does not go together, and the
 * unit each name is to be put in.
 */
final class Measures {
  private final Map<String, Reference> references;
  private final EnumMap<Unit.Dimension, Unit> units = new EnumMap<>(Unit.Dimension.class);

  Measures(Map<String, Reference> references, Unit result) {
    this.references = references;
    units.put(result.dimension(), result);
    references
        .values()
        .forEach(r -> r.subject().unit().ifPresent(u -> units.putIfAbsent(u.dimension(), u)));
  }

  /** The unit a name's numbers are put in: that of the result where it measures the same. */
  Map<Unit.Dimension, Unit> units() {
    return Map.copyOf(units);
  }

  /** Checks the formula of a result. */
  void check(Term formula, Unit result) throws FormulaException {
    Optional<Unit.Dimension> found = of(formula);
    if (found.isPresent() && !plain(result) && found.get() != result.dimension()) {
      throw new FormulaException(
          formula.at(),
          "the formula gives "
              + word(found.get())
              + ", which does not convert to the unit \""
              + result.ucum()
              + "\"");
    }
    if (found.isPresent() && plain(result)) {
      throw new FormulaException(
          formula.at(),
          "the formula gives "
              + word(found.get())
              + ", not a pure number; divide by a value of the same kind, or give the unit");
    }
  }

  private static boolean plain(Unit unit) {
    return switch (unit.dimension()) {
      case SHARE, COUNT, NUMBER -> true;
      default -> false;
    };
  }

  private static String word(Unit.Dimension dimension) {
    return switch (dimension) {
      case ANGLE -> "an angle";
      case FORCE -> "a force";
      case LENGTH -> "a length";
      case VOLUME -> "a volume";
      case TIME -> "a time";
      case SHARE, COUNT, NUMBER -> "a number";
    };
  }

  /** Dimension of a term; empty for pure numbers and where it cannot be told. */
  private Optional<Unit.Dimension> of(Term term) throws FormulaException {
    if (term instanceof Term.Name name) {
      return references
          .get(name.name())
          .subject()
          .unit()
          .filter(unit -> !plain(unit))
          .map(Unit::dimension);
    } else if (term instanceof Term.Sign sign) {
      return of(sign.of());
    } else if (term instanceof Term.Pair pair) {
      return of(pair);
    } else if (term instanceof Term.Call call) {
      return of(call);
    }
    return Optional.empty();
  }

  private Optional<Unit.Dimension> of(Term.Pair pair) throws FormulaException {
    if (words(pair)) {
      return Optional.empty();
    }
    Optional<Unit.Dimension> left = of(pair.left());
    Optional<Unit.Dimension> right = of(pair.right());
    switch (pair.operator()) {
      case "*":
        return left.isPresent() && right.isPresent() ? Optional.empty() : left.or(() -> right);
      case "/":
        return right.isPresent() ? Optional.empty() : left;
      case "^":
        return Optional.empty();
      case "+", "-":
        return same(pair.at(), List.of(left, right));
      default:
        same(pair.at(), List.of(left, right));
        return Optional.empty();
    }
  }

  private Optional<Unit.Dimension> of(Term.Call call) throws FormulaException {
    Functions.Function function = Functions.find(call.function()).orElseThrow();
    java.util.ArrayList<Optional<Unit.Dimension>> args = new java.util.ArrayList<>();
    for (Term arg : call.args()) {
      args.add(of(arg));
    }
    return switch (function.units()) {
      case KEEPS -> same(call.at(), args);
      case FIRST -> args.get(0);
      case CHOOSES -> same(call.at(), args.subList(1, args.size()));
      case DROPS -> Optional.empty();
    };
  }

  private static Optional<Unit.Dimension> same(int at, List<Optional<Unit.Dimension>> all)
      throws FormulaException {
    Optional<Unit.Dimension> first = Optional.empty();
    for (Optional<Unit.Dimension> one : all) {
      if (first.isPresent() && one.isPresent() && !first.equals(one)) {
        throw new FormulaException(
            at, word(first.get()) + " and " + word(one.get()) + " do not convert into each other");
      }
      first = first.or(() -> one);
    }
    return first;
  }

  /** Whether the pair compares the answer of a choice with a code, once that is in order. */
  private boolean words(Term.Pair pair) throws FormulaException {
    Term.Str text =
        pair.left() instanceof Term.Str l ? l : pair.right() instanceof Term.Str r ? r : null;
    if (text == null) {
      return false;
    }
    Term other = pair.left() == text ? pair.right() : pair.left();
    boolean equality = pair.operator().equals("=") || pair.operator().equals("<>");
    if (!equality || !(other instanceof Term.Name name)) {
      throw new FormulaException(
          text.at(), "text may only be compared, by = or <>, with the answer of an item");
    }
    Subject subject = references.get(name.name()).subject();
    if (!(subject instanceof Subject.OfItem of)
        || !(of.item().kind() instanceof ItemKind.Choices choices)
        || !of.numbers().isEmpty()) {
      throw new FormulaException(
          text.at(), "\"" + name.name() + "\" is a number; compare it with a number");
    }
    if (!choices.codes().contains(text.text())) {
      throw new FormulaException(
          text.at(),
          "\""
              + name.name()
              + "\" has no such answer; "
              + NearMiss.hint(text.text(), choices.codes()));
    }
    return true;
  }

  /** Refuses answers and texts where a number is needed. */
  void checkUses(Term term) throws FormulaException {
    if (term instanceof Term.Pair pair) {
      if (!words(pair)) {
        checkUses(pair.left());
        checkUses(pair.right());
      }
    } else if (term instanceof Term.Call call) {
      for (Term arg : call.args()) {
        checkUses(arg);
      }
    } else if (term instanceof Term.Sign sign) {
      checkUses(sign.of());
    } else if (term instanceof Term.Str text) {
      throw new FormulaException(
          text.at(), "text may only be compared, by = or <>, with the answer of an item");
    } else if (term instanceof Term.Name name) {
      if (references.get(name.name()).subject().unit().isEmpty()) {
        throw new FormulaException(
            name.at(),
            "\""
                + name.name()
                + "\" is no number; give its answers a \"value\", or compare it"
                + " with one of them");
      }
    }
  }
}
