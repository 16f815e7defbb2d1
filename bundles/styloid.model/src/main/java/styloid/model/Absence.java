package styloid.model;

import java.util.Objects;

/** Why there is no value. It makes a score incomplete, never low. */
public record Absence(Reason reason, String note) implements Value {
  /** The reasons, in the order they are offered. */
  public enum Reason {
    NOT_DONE,
    REFUSED,
    UNABLE,
    PAIN,
    PRECAUTION,
    EQUIPMENT;

    public String code() {
      return Codes.of(this);
    }
  }

  public Absence {
    Objects.requireNonNull(reason, "reason");
    Objects.requireNonNull(note, "note");
  }

  public Absence(Reason reason) {
    this(reason, "");
  }
}
