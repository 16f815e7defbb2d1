package styloid.model;

import java.util.Objects;

/** Something a user can put right: where it is, what it is, how grave. Never an exception. */
public record Problem(String field, Message text, Severity severity) {
  /** How far it goes. */
  public enum Severity {
    /** Nothing is stored until it is put right. */
    REFUSED,
    /** Asked once; kept when confirmed. */
    ASK_ONCE
  }

  public Problem {
    Objects.requireNonNull(field, "field");
    Objects.requireNonNull(text, "text");
    Objects.requireNonNull(severity, "severity");
  }
}
