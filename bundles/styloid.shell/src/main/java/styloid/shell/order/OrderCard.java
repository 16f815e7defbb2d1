package styloid.shell.order;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import styloid.plan.Plan;
import styloid.plan.PlannedStep;
import styloid.plan.StepId;
import styloid.shell.frame.Make;
import styloid.shell.frame.Spread;

/** The order as a list to choose a step from. */
final class OrderCard {
  private final OrderWords words;
  private final ListView<PlannedStep> list = new ListView<>();
  private final Label summary = Make.text("");
  private final CheckBox follow;
  private final VBox node;
  private Optional<Plan> shown = Optional.empty();

  /**
   * The card.
   *
   * @param chosen told of the step to open
   * @param followed told whether the order is to be followed
   * @param close takes the card away
   */
  OrderCard(
      OrderWords words,
      boolean following,
      Consumer<StepId> chosen,
      Consumer<Boolean> followed,
      Runnable close) {
    this.words = words;
    follow = new CheckBox(words.say("order.follow"));
    follow.setSelected(following);
    follow.selectedProperty().addListener((o, was, is) -> followed.accept(is));
    Runnable open = () -> selected().ifPresent(chosen);
    list.setCellFactory(view -> new OrderCell(words));
    list.setAccessibleText(words.say("order.title"));
    list.setPrefHeight(470);
    list.setMinHeight(140);
    list.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            event.consume();
            open.run();
          }
        });
    list.setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2) {
            open.run();
          }
        });
    follow.setWrapText(true);
    summary.setMinHeight(Region.USE_PREF_SIZE);
    Spread foot =
        new Spread(
            260,
            follow,
            Make.button(words.say("order.close"), close),
            Make.button(words.say("order.open"), open, "primary"));
    VBox.setVgrow(list, javafx.scene.layout.Priority.ALWAYS);
    node = Make.card(1060, Make.text(words.say("order.title"), "title"), summary, list, foot);
    node.setMinHeight(330);
  }

  VBox node() {
    return node;
  }

  void focus() {
    Platform.runLater(list::requestFocus);
  }

  boolean isShown() {
    return node.getScene() != null;
  }

  /** Shows the order as it is now; what is chosen stays chosen. */
  void show(Optional<Plan> plan) {
    if (plan.equals(shown)) {
      return;
    }
    shown = plan;
    Optional<StepId> before = selected();
    summary.setText(plan.map(words::summary).orElse(words.say("order.none")));
    list.getItems().setAll(plan.map(Plan::order).orElse(java.util.List.of()));
    int at = 0;
    for (int i = 0; i < list.getItems().size(); i++) {
      if (before.equals(Optional.of(list.getItems().get(i).step().id()))) {
        at = i;
      }
    }
    list.getSelectionModel().select(at);
  }

  private Optional<StepId> selected() {
    return Optional.ofNullable(list.getSelectionModel().getSelectedItem()).map(p -> p.step().id());
  }
}
