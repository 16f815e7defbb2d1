package styloid.model;

import java.util.regex.Pattern;

/** One of an item's listed answers, by its code. */
public record Choice(String code) implements Value {
  private static final Pattern CODE = Pattern.compile("[a-z0-9]+([.+-][a-z0-9]+|[+-])*");

  public Choice {
    if (code == null || !CODE.matcher(code).matches()) {
      throw new IllegalArgumentException("not a choice code: " + code);
    }
  }
}
