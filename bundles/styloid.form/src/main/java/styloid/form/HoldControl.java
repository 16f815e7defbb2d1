package styloid.form;

import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import styloid.model.Choice;
import styloid.model.ItemKey;
import styloid.spi.EntryCheck;
import styloid.spi.Timer;

/** Starts and stops the one hold there can be, and draws it while it runs. */
final class HoldControl {
  private final Clock clock;
  private final Tone tone;
  private final FormPort port;
  private final HoldPane pane;
  private final AnimationTimer pulse =
      new AnimationTimer() {
        @Override
        public void handle(long nanos) {
          tick();
        }
      };
  private Optional<Hold> hold = Optional.empty();
  private String place = "";
  private boolean keyDown;
  private boolean ended;

  HoldControl(Clock clock, Tone tone, FormPort port, HoldPane pane) {
    this.clock = clock;
    this.tone = tone;
    this.port = port;
    this.pane = pane;
  }

  /** The hold that belongs to a field, if it has one. */
  static Optional<Timer> of(Field field) {
    return field.home.state().test().timer(Timer.Kind.HOLD, field.key().item());
  }

  /** The key is up again; until then it only repeats itself. */
  void released() {
    keyDown = false;
  }

  /** The key of the timer: begins, lets go early, or begins again after the end. */
  void toggle(Field field) {
    Optional<Timer> timer = of(field).filter(t -> t.letGo().isPresent());
    if (keyDown || timer.isEmpty()) {
      return;
    }
    keyDown = true;
    Instant now = clock.instant();
    Optional<Hold> running = hold.filter(h -> h.key().equals(field.key()) && !h.over(now));
    if (running.isPresent()) {
      letGo(running.get(), field, now);
    } else {
      int seconds = port.seconds(timer.get());
      hold = Optional.of(new Hold(field.key(), timer.get().letGo().get(), seconds, now));
      place = field.name();
      tick();
      pulse.start();
    }
  }

  /** The time goes first: taking back then brings back the answer's place before its time. */
  private void letGo(Hold held, Field field, Instant now) {
    cancel();
    held.letGo()
        .time()
        .ifPresent(
            item -> {
              ItemKey key = held.key().sibling(item);
              field
                  .home
                  .state()
                  .test()
                  .item(item)
                  .filter(i -> EntryCheck.check(i, held.held(now)).accepted())
                  .ifPresent(i -> port.record(key, held.held(now), false));
            });
    field.act(entry -> entry.choose(new Choice(held.answer(now))));
  }

  /** Draws what is left; sounds once at the end and then rests. */
  void tick() {
    if (hold.isEmpty()) {
      return;
    }
    Hold running = hold.get();
    Instant now = clock.instant();
    pane.show(place, running.share(now), running.secondsLeft(now));
    if (running.over(now)) {
      pulse.stop();
      if (!ended) {
        ended = true;
        tone.play();
      }
    } else {
      ended = false;
    }
  }

  boolean isOn() {
    return hold.isPresent();
  }

  /** Drops the hold without a record; tells whether there was one. */
  boolean cancel() {
    boolean there = hold.isPresent();
    hold = Optional.empty();
    pulse.stop();
    pane.hide();
    return there;
  }
}
