package styloid.model;

import java.util.Objects;

/** Free text, as typed. */
public record Text(String text) implements Value {
  public Text {
    Objects.requireNonNull(text, "text");
  }
}
