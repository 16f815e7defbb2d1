package styloid.form;

import java.util.Optional;
import javafx.scene.input.KeyCode;
import styloid.model.Codes;

/** What a key asks for while a field has the focus; its words are {@code keys.<code>}. */
enum Command {
  /** Records and goes on to what must be filled. */
  ENTER,
  /** Records and goes on to the next place of any kind. */
  NEXT,
  PREVIOUS,
  NO_VALUE,
  OTHER_SIDE,
  UNIT,
  /** Starts the hold of the place, or lets go early. */
  TIMER,
  /** Asks why a withheld place is done all the same. */
  OVERRIDE,
  BACK,
  UNDO,
  REDO,
  WHY,
  KEYS;

  String code() {
    return Codes.of(this);
  }

  /**
   * The command of a key that gives no character.
   *
   * @param control the platform's command key is held
   */
  static Optional<Command> pressed(KeyCode key, boolean control, boolean shift) {
    return switch (key) {
      case ENTER -> shift ? Optional.empty() : Optional.of(ENTER);
      case DOWN -> Optional.of(NEXT);
      case TAB -> Optional.of(shift ? PREVIOUS : NEXT);
      case UP -> Optional.of(PREVIOUS);
      case ESCAPE -> Optional.of(BACK);
      case F1 -> Optional.of(KEYS);
      case F2 -> Optional.of(WHY);
      case F7 -> Optional.of(OTHER_SIDE);
      case F8 -> Optional.of(NO_VALUE);
      case F9 -> Optional.of(TIMER);
      case Z -> control ? Optional.of(shift ? REDO : UNDO) : Optional.empty();
      case Y -> control ? Optional.of(REDO) : Optional.empty();
      default -> Optional.empty();
    };
  }

  /**
   * The command of a typed character.
   *
   * @param words whether the field takes free text, where every character is text
   */
  static Optional<Command> typed(String character, boolean words) {
    if (words) {
      return Optional.empty();
    }
    return switch (character) {
      case "*" -> Optional.of(NO_VALUE);
      case "/" -> Optional.of(OTHER_SIDE);
      case "?" -> Optional.of(KEYS);
      case "w", "W" -> Optional.of(WHY);
      case "+" -> Optional.of(TIMER);
      case "o", "O" -> Optional.of(OVERRIDE);
      case "u", "U" -> Optional.of(UNIT);
      default -> Optional.empty();
    };
  }
}
