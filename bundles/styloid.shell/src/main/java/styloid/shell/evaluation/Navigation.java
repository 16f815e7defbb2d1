package styloid.shell.evaluation;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
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

/**
 * The map of both limbs; under it all tests, and of the open one its regions, or its groups where
 * it is one page; each with its state as shape and word.
 */
final class Navigation extends VBox {
  /** Share of the height the map may take. */
  private static final double MAP_SHARE = 0.58;

  private static final double MAP_HEIGHT = 346;

  private final Texts texts;
  private final Consumer<Page> toPage;
  private final Consumer<Group> toGroup;
  private final VBox items = new VBox(2);
  private final ScrollPane list = new ScrollPane(items);
  private final List<Item> made = new ArrayList<>();
  private Page shown;
  private PatientContext counted;

  /** One line and what its state is drawn from. */
  private record Item(
      Button button, StateMark mark, Label name, Label state, Page page, List<Group> groups) {}

  Navigation(Texts texts, Region map, Consumer<Page> toPage, Consumer<Group> toGroup) {
    this.texts = texts;
    this.toPage = toPage;
    this.toGroup = toGroup;
    getStyleClass().add("navigation");
    map.prefHeightProperty().bind(Bindings.min(MAP_HEIGHT, heightProperty().multiply(MAP_SHARE)));
    map.minHeightProperty().bind(map.prefHeightProperty());
    list.setFitToWidth(true);
    list.setFocusTraversable(false);
    list.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    items.getStyleClass().add("navigation-items");
    setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(map, list);
  }

  /** Shows where one is; states are counted again only when something was recorded. */
  void show(Stand stand, Page current) {
    boolean moved = shown == null || !shown.equals(current);
    if (moved) {
      shown = current;
      build(stand, current);
      Platform.runLater(this::reveal);
    }
    if (moved || !sameEntries(stand.open().context())) {
      counted = stand.open().context();
      made.forEach(item -> update(item, stand));
    }
  }

  /** Brings the line one is at into sight. */
  private void reveal() {
    double spare = items.getHeight() - list.getViewportBounds().getHeight();
    made.stream()
        .filter(i -> spare > 0 && i.page().isPlaceOf(shown))
        .findFirst()
        .ifPresent(
            i -> {
              double top = i.button().getBoundsInParent().getMinY();
              double from = top - list.getViewportBounds().getHeight() / 3;
              list.setVvalue(Math.max(0, Math.min(1, from / spare)));
            });
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
      if (page.region().isEmpty() && page.groups().size() > 1) {
        for (Group group : page.groups()) {
          add("nav-group", name(group, page), page, List.of(group), () -> toGroup.accept(group));
        }
      }
    }
  }

  private String name(Group group, Page page) {
    return texts.label(page.test().id().value(), "group." + group.id());
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
    Button button = style.equals("nav-group") ? group(mark) : line(style, mark, label, state);
    button.getStyleClass().addAll("nav", style);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setOnAction(e -> go.run());
    items.getChildren().add(button);
    made.add(new Item(button, mark, label, state, page, groups));
  }

  private static Button line(String style, StateMark mark, Label label, Label state) {
    boolean whole = style.equals("nav-test");
    HBox line =
        whole
            ? new HBox(8, mark, new VBox(label, state))
            : new HBox(7, mark, label, Make.gap(), state);
    line.setAlignment(Pos.CENTER_LEFT);
    Button button = new Button("", line);
    line.prefWidthProperty().bind(button.widthProperty().subtract(whole ? 18 : 25));
    return button;
  }

  /** Names of groups may be long: they break, with the state behind them. */
  private static Button group(StateMark mark) {
    Button button = new Button("", mark);
    button.setWrapText(true);
    button.setGraphicTextGap(7);
    return button;
  }

  private void update(Item item, Stand stand) {
    FormState form = stand.form(item.page().test());
    Completion completion = Completion.of(form, item.groups());
    item.mark().show(completion.stage());
    String word = texts.label(FormView.SCOPE, "stage." + completion.stage().code());
    boolean under = completion.stage() == Completion.Stage.IN_PROGRESS;
    item.state().setText(under ? Shell.say(texts, "nav.left", completion.open()) : word);
    String full = under ? word + ", " + item.state().getText() : word;
    // The empty ring says it; names of motions that begin alike need the room.
    boolean motion = item.button().getStyleClass().contains("nav-group");
    Make.shown(item.state(), !motion || completion.stage() != Completion.Stage.UNTOUCHED);
    if (item.button().isWrapText()) {
      String shown = item.name().getText() + ", " + item.state().getText();
      item.button().setText(shown);
    }
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
