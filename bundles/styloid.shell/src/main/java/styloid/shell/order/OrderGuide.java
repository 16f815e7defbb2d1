package styloid.shell.order;

import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import styloid.model.ItemKey;
import styloid.plan.StepId;
import styloid.session.OpenEvaluation;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** Shows the test order, opens its steps and, if asked, follows it. Used on the JavaFX thread. */
public final class OrderGuide {
  private final Shell.Screens screens;
  private final OrderWords words;
  private final Supplier<OpenEvaluation> open;
  private final Consumer<ItemKey> goTo;
  private final Button button;
  private boolean following;
  private Optional<OrderCard> card = Optional.empty();

  /**
   * A guide through one evaluation.
   *
   * @param open the evaluation as it is now
   * @param goTo puts entry at a place of the work sheet
   */
  public OrderGuide(
      Shell.Screens screens, Texts texts, Supplier<OpenEvaluation> open, Consumer<ItemKey> goTo) {
    this.screens = screens;
    this.words = new OrderWords(texts);
    this.open = open;
    this.goTo = goTo;
    this.button = Make.button(words.say("order.title"), this::show);
  }

  /** Opens the order; says whether it is followed. */
  public Button button() {
    return button;
  }

  /** Shows the order over the work sheet. */
  public void show() {
    OrderCard made =
        new OrderCard(words, following, this::openStep, this::follow, screens::uncover);
    card = Optional.of(made);
    made.show(open.get().order());
    screens.cover(made.node());
    made.focus();
  }

  /** Brings the order up to date, where it is shown. */
  public void update() {
    card.filter(OrderCard::isShown).ifPresent(shown -> shown.show(open.get().order()));
  }

  private void follow(boolean asked) {
    following = asked;
    button.setText(words.say(asked ? "order.followed" : "order.title"));
  }

  private void openStep(StepId step) {
    screens.uncover();
    new StepWay(open.get()).start(step).ifPresent(goTo);
  }

  /**
   * Goes to the next step of the order where it is followed and the work sheet is about to leave a
   * step.
   *
   * @param to where the work sheet would go; empty at the end of the page
   * @return whether it led there
   */
  public boolean leads(ItemKey from, Optional<ItemKey> to) {
    Optional<ItemKey> next =
        following ? new StepWay(open.get()).onward(from, to) : Optional.empty();
    next.ifPresent(goTo);
    return next.isPresent();
  }
}
