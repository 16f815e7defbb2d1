package styloid.shell.evaluation;

import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import styloid.model.ItemKey;
import styloid.shell.frame.Make;
import styloid.shell.frame.Shell;
import styloid.spi.Texts;

/** Offers to record everything still open of a test as its usual answer, and asks once. */
final class RestOffer {
  private static final int AT_ONCE = 4;

  private final Shell shell;
  private final Texts texts;
  private final Runnable recorded;
  private final Button button = Make.button("", this::ask);
  private Optional<RestAs> offered = Optional.empty();

  /**
   * @param recorded called once all is recorded
   */
  RestOffer(Shell shell, Texts texts, Runnable recorded) {
    this.shell = shell;
    this.texts = texts;
    this.recorded = recorded;
  }

  Button button() {
    return button;
  }

  /** Follows the page; the offer stands only where something is left. */
  void show(Stand stand, Page page) {
    offered =
        page.test()
            .restAs()
            .filter(code -> !stand.readOnly(page.test()))
            .map(code -> RestAs.of(stand.form(page.test()), code))
            .filter(r -> !r.keys().isEmpty());
    Make.shown(button, offered.isPresent());
    offered.ifPresent(r -> button.setText(say("rest.offer", answer(r), r.keys().size())));
  }

  private String answer(RestAs rest) {
    return texts.choice(rest.keys().get(0), rest.answer().code());
  }

  /** Asks before anything is recorded. */
  void ask() {
    offered.ifPresent(
        r -> {
          Button yes =
              Make.button(
                  say("rest.yes", answer(r), r.keys().size()),
                  () -> {
                    shell.screens().uncover();
                    record(r, 0);
                  },
                  "primary");
          Button no = Make.button(say("cancel"), shell.screens()::uncover);
          shell
              .screens()
              .cover(
                  Make.card(
                      560,
                      Make.text(say("rest.title", answer(r)), "title"),
                      Make.text(say("rest.words", answer(r), r.keys().size())),
                      new HBox(10, yes, no)));
          Platform.runLater(yes::requestFocus);
        });
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
      recorded.run();
    }
  }

  private String say(String key, Object... args) {
    return Shell.say(texts, key, args);
  }
}
