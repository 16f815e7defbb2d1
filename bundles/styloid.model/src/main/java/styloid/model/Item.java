package styloid.model;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * One thing that can be recorded.
 *
 * @param sides sides it is recorded for, never empty; {@link Side#UNSIDED} alone when not of a limb
 * @param digits digits it is recorded for; {@link Digit#NONE} alone when not of a digit
 * @param trials how often it is taken, from 1
 * @param askWhen when it is asked; an entry may be recorded all the same
 * @param demand what it asks of the limb
 * @param optional whether an evaluation is complete without it
 * @param joint the joint of a digit it is about; empty where it is of no digit or of all its joints
 */
public record Item(
    ItemId id,
    ItemKind kind,
    Set<Side> sides,
    Set<Digit> digits,
    int trials,
    Condition askWhen,
    Demand demand,
    boolean optional,
    Optional<DigitJoint> joint) {

  public static final Set<Side> BOTH = Set.of(Side.RIGHT, Side.LEFT);
  public static final Set<Side> NO_SIDE = Set.of(Side.UNSIDED);
  public static final Set<Digit> NO_DIGIT = Set.of(Digit.NONE);
  public static final Set<Digit> FINGERS =
      Set.of(Digit.INDEX, Digit.MIDDLE, Digit.RING, Digit.LITTLE);

  /** An item of no one joint of a digit. */
  public Item(
      ItemId id,
      ItemKind kind,
      Set<Side> sides,
      Set<Digit> digits,
      int trials,
      Condition askWhen,
      Demand demand,
      boolean optional) {
    this(id, kind, sides, digits, trials, askWhen, demand, optional, Optional.empty());
  }

  public Item {
    Objects.requireNonNull(id, "id");
    Objects.requireNonNull(kind, "kind");
    sides = Set.copyOf(sides);
    digits = Set.copyOf(digits);
    Objects.requireNonNull(askWhen, "askWhen");
    Objects.requireNonNull(demand, "demand");
    Objects.requireNonNull(joint, "joint");
    if (sides.isEmpty() || sides.contains(Side.UNSIDED) && sides.size() > 1) {
      throw new IllegalArgumentException(id + ": sides are right and/or left, or unsided alone");
    }
    if (digits.isEmpty() || digits.contains(Digit.NONE) && digits.size() > 1) {
      throw new IllegalArgumentException(id + ": digits are named, or none alone");
    }
    if (trials < 1 || trials > 99) {
      throw new IllegalArgumentException(id + ": trials must be 1 to 99");
    }
  }

  /** An item always asked, once, of both limbs, no digit. */
  public static Item bothSides(String id, ItemKind kind, Demand demand) {
    return new Item(new ItemId(id), kind, BOTH, NO_DIGIT, 1, Condition.always(), demand, false);
  }

  /** An item of the person or instrument, not of a limb; optional. */
  public static Item unsided(String id, ItemKind kind) {
    return new Item(
        new ItemId(id), kind, NO_SIDE, NO_DIGIT, 1, Condition.always(), Demand.NONE, true);
  }

  public Item withTrials(int count) {
    return new Item(id, kind, sides, digits, count, askWhen, demand, optional, joint);
  }

  public Item withDigits(Set<Digit> which) {
    return new Item(id, kind, sides, which, trials, askWhen, demand, optional, joint);
  }

  public Item askedWhen(Condition condition) {
    return new Item(id, kind, sides, digits, trials, condition, demand, optional, joint);
  }

  public Item asOptional() {
    return new Item(id, kind, sides, digits, trials, askWhen, demand, true, joint);
  }

  /** The same item, about one joint of a digit or, where empty, of none. */
  public Item about(Optional<DigitJoint> which) {
    return new Item(id, kind, sides, digits, trials, askWhen, demand, optional, which);
  }

  /**
   * Every key this item has in a test: side (right first), then digit (radial first), then trial.
   */
  public List<ItemKey> keys(TestId test) {
    ArrayList<ItemKey> keys = new ArrayList<>();
    for (Side side : EnumSet.copyOf(sides)) {
      keys.addAll(keys(test, side));
    }
    return keys;
  }

  /** The keys of one side. */
  public List<ItemKey> keys(TestId test, Side side) {
    ArrayList<ItemKey> keys = new ArrayList<>();
    for (Digit digit : EnumSet.copyOf(digits)) {
      for (int trial = 1; trial <= trials; trial++) {
        keys.add(new ItemKey(test, id, side, digit, trial));
      }
    }
    return keys;
  }

  /** Whether the key is one of this item's. */
  public boolean has(ItemKey key) {
    return key.item().equals(id)
        && sides.contains(key.side())
        && digits.contains(key.digit())
        && key.trial() <= trials;
  }
}
