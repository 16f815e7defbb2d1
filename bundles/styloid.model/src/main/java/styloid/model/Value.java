package styloid.model;

import java.util.function.Function;

/** What was recorded for an item. A missing value is an {@link Absence}, never zero or null. */
public sealed interface Value permits Quantity, Choice, Text, Absence {

  /** Handles every kind of value; a new kind will not compile until each caller handles it. */
  default <T> T match(
      Function<Quantity, T> quantity,
      Function<Choice, T> choice,
      Function<Text, T> text,
      Function<Absence, T> absence) {
    if (this instanceof Quantity q) {
      return quantity.apply(q);
    } else if (this instanceof Choice c) {
      return choice.apply(c);
    } else if (this instanceof Text t) {
      return text.apply(t);
    }
    return absence.apply((Absence) this);
  }
}
