package styloid.spi;

import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import styloid.model.Codes;
import styloid.model.Item;
import styloid.model.Region;
import styloid.model.Side;

/**
 * Items done together, such as one motion; its words stand in the labels under {@code group.<id>}.
 *
 * @param region where it is listed
 * @param loads regions a precaution on which withholds it
 * @param walk how entry moves on through its sides
 * @param layout how it is drawn
 * @param cautions ids of cautions that belong to this group
 */
public record Group(
    String id,
    Region region,
    Set<Region> loads,
    List<Item> items,
    Walk walk,
    Layout layout,
    List<String> cautions,
    Guide guide) {

  /** The way entry takes through a group. */
  public enum Walk {
    /** All items of one side, then of the other; the uninvolved side first. */
    SIDE_BY_SIDE,
    /** Each item and trial on one side, then on the other. */
    ALTERNATING;

    public String code() {
      return Codes.of(this);
    }
  }

  /** How a group is drawn. */
  public enum Layout {
    LIST,
    LEFT_RIGHT_TABLE,
    DIGIT_GRID;

    public String code() {
      return Codes.of(this);
    }
  }

  public Group {
    if (id == null || !id.matches("[a-z][a-z0-9]*(-[a-z0-9]+)*")) {
      throw new IllegalArgumentException("not a group id: " + id);
    }
    Objects.requireNonNull(region, "region");
    loads = Set.copyOf(loads);
    items = List.copyOf(items);
    Objects.requireNonNull(walk, "walk");
    Objects.requireNonNull(layout, "layout");
    cautions = List.copyOf(cautions);
    Objects.requireNonNull(guide, "guide");
    if (items.isEmpty()) {
      throw new IllegalArgumentException("group " + id + " has no items");
    }
  }

  /** Every side any item of the group has, right before left. */
  public Set<Side> sides() {
    EnumSet<Side> sides = EnumSet.noneOf(Side.class);
    items.forEach(item -> sides.addAll(item.sides()));
    return sides;
  }
}
