package styloid.form;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import javafx.scene.input.KeyCode;

/**
 * The keys a foot pedal sends, so that both hands stay on the patient.
 *
 * @param next does what Enter does
 * @param timer does what the key of the timer does
 */
public record Pedals(Optional<KeyCode> next, Optional<KeyCode> timer) {
  public static final Pedals NONE = new Pedals(Optional.empty(), Optional.empty());

  /** Keys that pedals commonly send and that mean nothing else in the form. */
  public static final List<KeyCode> OFFERED =
      List.of(
          KeyCode.PAGE_DOWN,
          KeyCode.PAGE_UP,
          KeyCode.F5,
          KeyCode.F10,
          KeyCode.F13,
          KeyCode.F14,
          KeyCode.F15);

  public Pedals {
    Objects.requireNonNull(next, "next");
    Objects.requireNonNull(timer, "timer");
  }

  /** What a key asks for when it comes from a pedal; with Ctrl held it does not. */
  Optional<Command> command(KeyCode key, boolean control) {
    if (control) {
      return Optional.empty();
    } else if (timer.filter(key::equals).isPresent()) {
      return Optional.of(Command.TIMER);
    }
    return next.filter(key::equals).map(k -> Command.ENTER);
  }
}
