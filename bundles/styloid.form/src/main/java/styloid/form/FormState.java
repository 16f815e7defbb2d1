package styloid.form;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import styloid.model.Entry;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.Group;
import styloid.spi.TestDefinition;
import styloid.spi.Withheld;

/**
 * All a form draws, immutable.
 *
 * @param unsaved keys whose latest entry is not on disk yet
 * @param drafts text under way in fields
 * @param storeFails whether the disk refuses what is unsaved
 * @param readOnly whether nothing can be recorded: signed, or the module is missing
 */
public record FormState(
    TestDefinition test,
    PatientContext context,
    Set<ItemKey> unsaved,
    Map<ItemKey, String> drafts,
    boolean storeFails,
    boolean readOnly) {

  public FormState {
    Objects.requireNonNull(test, "test");
    Objects.requireNonNull(context, "context");
    unsaved = Set.copyOf(unsaved);
    drafts = Map.copyOf(drafts);
  }

  Optional<Value> value(ItemKey key) {
    return context.snapshot().value(key);
  }

  /** The value of the newest earlier visit that has one. */
  public Optional<Value> lastValue(ItemKey key) {
    for (PatientContext.Past past : context.past()) {
      Optional<Value> value = past.snapshot().value(key);
      if (value.isPresent()) {
        return value;
      }
    }
    return Optional.empty();
  }

  boolean asked(Item item, ItemKey key) {
    return item.askWhen().holds(context.snapshot(), key);
  }

  /** The precautions that forbid an item here on the day of the evaluation. */
  public List<Precaution> withheldBy(Group group, Item item, ItemKey key) {
    return Withheld.by(group, item, key, context.precautions(), context.evaluation().date());
  }

  FieldStatus status(Group group, Item item, ItemKey key) {
    if (drafts.containsKey(key)) {
      return FieldStatus.UNFINISHED;
    } else if (unsaved.contains(key)) {
      return storeFails ? FieldStatus.NOT_SAVED : FieldStatus.SAVING;
    } else if (value(key).isPresent()) {
      return FieldStatus.SAVED;
    } else if (!withheldBy(group, item, key).isEmpty()) {
      return FieldStatus.WITHHELD;
    }
    return asked(item, key) ? FieldStatus.EMPTY : FieldStatus.NOT_ASKED;
  }

  /** Whether entry stops here: asked, and not withheld with its absence recorded already. */
  boolean stopsAt(Group group, Item item, ItemKey key) {
    boolean settled = value(key).isPresent() && !withheldBy(group, item, key).isEmpty();
    return asked(item, key) && !settled;
  }

  /** The sides in the order they are done: uninvolved first, right before left otherwise. */
  public List<Side> sides() {
    Set<Side> involved = context.patient().involved();
    boolean leftFirst = involved.contains(Side.RIGHT) && !involved.contains(Side.LEFT);
    return leftFirst ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.RIGHT, Side.LEFT);
  }

  /** The unit a bare number is taken in: that of the item's latest entry, else its first. */
  Unit unitFor(ItemKey key, ItemKind.Number kind) {
    Unit unit = kind.unit();
    for (Entry entry : context.snapshot().entries()) {
      if (entry.key().ref().equals(key.ref())
          && entry.value().orElse(null) instanceof Quantity quantity) {
        unit = quantity.unit();
      }
    }
    return kind.units().contains(unit) ? unit : kind.unit();
  }

  /** Sides any item of the group has, in the order they are done; unsided first. */
  List<Side> sides(Group group) {
    EnumSet<Side> has = EnumSet.copyOf(group.sides());
    return Stream.concat(Stream.of(Side.UNSIDED), sides().stream()).filter(has::contains).toList();
  }
}
