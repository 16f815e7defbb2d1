package styloid.shell.evaluation;

import java.util.Optional;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import styloid.model.ItemKey;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** Offers to record the usual answer for the rest of a page's test, asks once, and does it. */
final class RestOffer {
  private static final int AT_ONCE = 4;

  private final Shell shell;
  private final Texts texts;
  private final Supplier<Optional<RestAs>> rest;
  private final Runnable done;
  private final Button button = Make.button("", this::ask);

  /**
   * @param rest what is to be offered now
   * @param done runs once all is recorded
   */
  RestOffer(Shell shell, Texts texts, Supplier<Optional<RestAs>> rest, Runnable done) {
    this.shell = shell;
    this.texts = texts;
    this.rest = rest;
    this.done = done;
  }

  Button button() {
    return button;
  }

  void draw() {
    Optional<RestAs> there = rest.get();
    Make.shown(button, there.isPresent());
    there.ifPresent(r -> button.setText(say("rest.offer", answer(r), r.keys().size())));
  }

  private String answer(RestAs all) {
    return texts.choice(all.keys().get(0), all.answer().code());
  }

  void ask() {
    rest.get().ifPresent(this::ask);
  }

  private void ask(RestAs all) {
    Button yes =
        Make.button(
            say("rest.yes", answer(all), all.keys().size()),
            () -> {
              shell.screens().uncover();
              record(all, 0);
            },
            "primary");
    Button no = Make.button(say("cancel"), shell.screens()::uncover);
    shell
        .screens()
        .cover(
            Make.card(
                560,
                Make.text(say("rest.title", answer(all)), "title"),
                Make.text(say("rest.words", answer(all), all.keys().size())),
                new HBox(10, yes, no)));
    Platform.runLater(yes::requestFocus);
  }

  /** A few at a time, so that the window never waits for all of them. */
  private void record(RestAs all, int from) {
    int to = Math.min(all.keys().size(), from + AT_ONCE);
    for (ItemKey key : all.keys().subList(from, to)) {
      shell.session().record(key, all.answer(), false);
    }
    if (to < all.keys().size()) {
      Platform.runLater(() -> record(all, to));
    } else {
      done.run();
    }
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
