package styloid.model;

import java.util.Locale;

/** One spelling for every enum constant that leaves the program: lower case, words by hyphens. */
public final class Codes {
  private Codes() {}

  /** {@code NO_ACTIVE_MOTION} becomes {@code no-active-motion}. */
  public static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The constant a code stands for.
   *
   * @throws IllegalArgumentException when the type has no such constant; the message lists those it
   *     has
   */
  public static <E extends Enum<E>> E parse(Class<E> type, String code) {
    for (E constant : type.getEnumConstants()) {
      if (of(constant).equals(code)) {
        return constant;
      }
    }
    StringBuilder known = new StringBuilder();
    for (E constant : type.getEnumConstants()) {
      known.append(known.length() == 0 ? "" : ", ").append(of(constant));
    }
    throw new IllegalArgumentException("\"" + code + "\" is none of " + known);
  }

  /**
   * Checks an identifier: lower-case letters, digits and single hyphens, starting with a letter.
   *
   * @throws IllegalArgumentException when {@code text} is not of that form
   */
  static String slug(String what, String text) {
    if (text == null || !slug(text) || text.length() > 80) {
      throw new IllegalArgumentException(
          what + " \"" + text + "\" must be lower-case letters, digits and single hyphens");
    }
    return text;
  }

  /** Words of letters and digits joined by single hyphens, the first beginning with a letter. */
  private static boolean slug(String text) {
    boolean wordBegun = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean letter = c >= 'a' && c <= 'z';
      boolean digit = c >= '0' && c <= '9' && i > 0;
      if (!letter && !digit && !(wordBegun && c == '-')) {
        return false;
      }
      wordBegun = c != '-';
    }
    return wordBegun;
  }
}
