package styloid.model;

/** One of an item's listed answers, by its code. */
public record Choice(String code) implements Value {
  public Choice {
    if (code == null || !code.matches("[a-z0-9]+([.+-][a-z0-9]+|[+-])*")) {
      throw new IllegalArgumentException("not a choice code: " + code);
    }
  }
}
