package styloid.custom;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.model.norm.NormTable;

/** What a name in a formula can stand for. */
sealed interface Subject {

  /** Sides it has a value for. */
  Set<Side> sides();

  /** Digits it has a value for. */
  Set<Digit> digits();

  /** Values it has for one side and digit. */
  int trials();

  /** Unit of its number; empty when it is no number. */
  Optional<Unit> unit();

  /**
   * An item.
   *
   * @param numbers the number each answer of a choice stands for, by code; empty when none do
   */
  record OfItem(Item item, Map<String, BigDecimal> numbers) implements Subject {
    @Override
    public Set<Side> sides() {
      return item.sides();
    }

    @Override
    public Set<Digit> digits() {
      return item.digits();
    }

    @Override
    public int trials() {
      return item.trials();
    }

    @Override
    public Optional<Unit> unit() {
      if (item.kind() instanceof ItemKind.Number number) {
        return Optional.of(number.unit());
      }
      return numbers.isEmpty() ? Optional.empty() : Optional.of(Unit.NUMBER);
    }
  }

  /** A result of the same test; without a unit it is a class. */
  record OfResult(ResultId id, Set<Side> sides, Set<Digit> digits, Optional<Unit> unit)
      implements Subject {
    @Override
    public int trials() {
      return 1;
    }
  }

  /**
   * A figure of a norm table for the patient and the side of the result.
   *
   * @param figure {@code mean}, {@code sd} or a centile such as {@code p50}
   */
  record OfNorm(String norm, NormTable table, Map<String, String> keys, String figure)
      implements Subject {
    @Override
    public Set<Side> sides() {
      return Item.NO_SIDE;
    }

    @Override
    public Set<Digit> digits() {
      return Item.NO_DIGIT;
    }

    @Override
    public int trials() {
      return 1;
    }

    @Override
    public Optional<Unit> unit() {
      return Optional.of(table.unit());
    }
  }
}
