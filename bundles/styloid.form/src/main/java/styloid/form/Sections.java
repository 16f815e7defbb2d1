package styloid.form;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.spi.Group;

/** Chooses how the groups of a page are drawn, and keeps the order of the page. */
final class Sections {
  private static final int SHORT_LIST = 4;

  private Sections() {}

  /** A drawn part of the page. */
  interface Section {
    Node node();

    /** Shows what is asked now and folds the rest. */
    void update();
  }

  static List<Section> of(List<Group> groups, Fields fields) {
    ArrayList<Section> sections = new ArrayList<>();
    ArrayList<Group> lines = new ArrayList<>();
    for (Group group : groups) {
      if (isLine(group)) {
        lines.add(group);
        continue;
      }
      flush(lines, sections, fields);
      sections.add(new GroupSection(group, fields));
    }
    flush(lines, sections, fields);
    return sections;
  }

  private static void flush(List<Group> lines, List<Section> sections, Fields fields) {
    if (!lines.isEmpty()) {
      sections.add(new LinesSection(List.copyOf(lines), fields));
      lines.clear();
    }
  }

  /**
   * Whether a group fits one line of a table with both limbs side by side: one or two short
   * questions always asked, whatever else only follows from their answers or may be left out.
   */
  static boolean isLine(Group group) {
    if (group.layout() != Group.Layout.LEFT_RIGHT_TABLE
        || group.sides().contains(styloid.model.Side.UNSIDED)) {
      return false;
    }
    List<Item> always = group.items().stream().filter(Sections::always).toList();
    return !always.isEmpty()
        && always.size() <= 2
        && always.stream().allMatch(Sections::shortChoice)
        && group.items().stream()
            .allMatch(i -> i.trials() == 1 && i.digits().equals(Item.NO_DIGIT));
  }

  /** Whether an item stands in the line itself. */
  static boolean always(Item item) {
    return item.askWhen().reads().isEmpty() && !item.optional();
  }

  private static boolean shortChoice(Item item) {
    return item.kind() instanceof ItemKind.Choices c && c.codes().size() <= SHORT_LIST;
  }
}
