package styloid.shell.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import styloid.form.Completion;
import styloid.form.FormState;
import styloid.form.FormView;
import styloid.form.StateMark;
import styloid.model.PatientContext;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Group;
import styloid.spi.Texts;

/** All tests, and of the open one its regions and steps, each with its state as shape and word. */
final class Navigation extends ScrollPane {
  private final Texts texts;
  private final Consumer<Page> toPage;
  private final Consumer<Group> toGroup;
  private final VBox items = new VBox(2);
  private final List<Item> made = new ArrayList<>();
  private Page shown;
  private PatientContext counted;

  /** One line and what its state is drawn from. */
  private record Item(
      Button button, StateMark mark, Label name, Label state, Page page, List<Group> groups) {}

  Navigation(Texts texts, Consumer<Page> toPage, Consumer<Group> toGroup) {
    this.texts = texts;
    this.toPage = toPage;
    this.toGroup = toGroup;
    getStyleClass().add("navigation");
    setFitToWidth(true);
    setFocusTraversable(false);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    items.getStyleClass().add("navigation-items");
    setContent(items);
  }

  /** Shows where one is; states are counted again only when something was recorded. */
  void show(Stand stand, Page current) {
    boolean moved = shown == null || !shown.equals(current);
    if (moved) {
      shown = current;
      build(stand, current);
    }
    if (moved || !sameEntries(stand.open().context())) {
      counted = stand.open().context();
      made.forEach(item -> update(item, stand));
    }
  }

  private boolean sameEntries(PatientContext now) {
    return counted != null
        && counted.snapshot() == now.snapshot()
        && counted.precautions().equals(now.precautions());
  }

  private void build(Stand stand, Page current) {
    items.getChildren().clear();
    made.clear();
    Page before = null;
    for (Page page : stand.pages()) {
      boolean newTest = before == null || !before.test().id().equals(page.test().id());
      if (newTest) {
        add("nav-test", title(page), page, page.test().groups(), () -> toPage.accept(page));
      }
      before = page;
      if (!page.test().id().equals(current.test().id())) {
        continue;
      }
      boolean here = page.isPlaceOf(current);
      page.region()
          .ifPresent(
              region -> {
                String style = here ? "nav-here" : "nav-region";
                add(
                    style,
                    capital(texts.word(region)),
                    page,
                    page.groups(),
                    () -> toPage.accept(page));
              });
      if (here && page.groups().size() > 1) {
        for (Group group : page.groups()) {
          add("nav-group", name(page, group), page, List.of(group), () -> toGroup.accept(group));
        }
      }
    }
  }

  /** "MP flexion" under "Fingers", and without what stands in brackets: the list is narrow. */
  private String name(Page page, Group group) {
    String name =
        texts
            .label(page.test().id().value(), "group." + group.id())
            .replaceFirst("(?<=\\S)\\s*\\(.*\\)$", "");
    String first = name.split(" ")[0];
    String word = first.replace(",", "").toLowerCase(texts.locale());
    boolean said =
        page.region().isPresent()
            && name.length() > first.length()
            && texts.word(group.region()).startsWith(word);
    return said ? capital(name.substring(first.length() + 1)) : name;
  }

  private String title(Page page) {
    return texts.label(page.test().id().value(), "test.title");
  }

  private String capital(String word) {
    return word.substring(0, 1).toUpperCase(texts.locale()) + word.substring(1);
  }

  private void add(String style, String name, Page page, List<Group> groups, Runnable go) {
    StateMark mark = new StateMark();
    Label label = new Label(name);
    label.getStyleClass().add("nav-name");
    Label state = Make.word("", "nav-state");
    boolean whole = style.equals("nav-test");
    HBox line =
        whole
            ? new HBox(8, mark, new VBox(label, state))
            : new HBox(7, mark, label, Make.gap(), state);
    line.setAlignment(Pos.CENTER_LEFT);
    Button button = new Button("", line);
    button.getStyleClass().addAll("nav", style);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setOnAction(e -> go.run());
    int indent = whole ? 18 : style.equals("nav-group") ? 37 : 25;
    line.prefWidthProperty().bind(button.widthProperty().subtract(indent));
    button.setTooltip(new Tooltip(name));
    items.getChildren().add(button);
    made.add(new Item(button, mark, label, state, page, groups));
  }

  private void update(Item item, Stand stand) {
    FormState form = stand.form(item.page().test());
    Completion completion = Completion.of(form, item.groups());
    item.mark().show(completion.stage());
    String word = texts.label(FormView.SCOPE, "stage." + completion.stage().code());
    boolean under = completion.stage() == Completion.Stage.IN_PROGRESS;
    item.state().setText(under ? Shell.say(texts, "nav.left", completion.open()) : word);
    String full = under ? word + ", " + item.state().getText() : word;
    item.button().setAccessibleText(item.name().getText() + ", " + full);
  }

  /** Puts the focus on the line one is at. */
  void focusHere() {
    made.stream()
        .filter(i -> i.page().isPlaceOf(shown))
        .findFirst()
        .ifPresent(i -> i.button().requestFocus());
  }
}
