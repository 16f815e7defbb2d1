package styloid.form;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import styloid.spi.Group;
import styloid.spi.TestDefinition;

/** Chooses how the groups of a page are drawn, and keeps the order of the page. */
public final class Sections {
  private Sections() {}

  /** A drawn part of the page. */
  interface Section {
    Node node();

    /** Shows what is asked now and folds the rest. */
    void update();
  }

  static List<Section> of(List<Group> groups, Fields fields) {
    ArrayList<Section> sections = new ArrayList<>();
    ArrayList<Group> tables = new ArrayList<>();
    for (Group group : groups) {
      if (group.layout() == Group.Layout.LEFT_RIGHT_TABLE) {
        tables.add(group);
        continue;
      }
      flush(tables, sections, fields);
      sections.add(new GroupSection(group, fields));
    }
    flush(tables, sections, fields);
    return sections;
  }

  private static void flush(List<Group> tables, List<Section> sections, Fields fields) {
    if (!tables.isEmpty()) {
      sections.add(new TableSection(List.copyOf(tables), fields));
      tables.clear();
    }
  }

  /** Whether a whole test reads as one table, and so belongs on one page. */
  public static boolean onePage(TestDefinition test) {
    return test.groups().stream().allMatch(g -> g.layout() == Group.Layout.LEFT_RIGHT_TABLE)
        && test.items().stream().allMatch(i -> i.trials() == 1);
  }
}
