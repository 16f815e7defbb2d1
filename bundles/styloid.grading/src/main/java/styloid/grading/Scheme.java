package styloid.grading;

import java.util.Map;
import styloid.model.Codes;

/** Which grades the clinic gives; the observations are the same. */
enum Scheme {
  WHOLE,
  PLUS_MINUS;

  /** The clinic's choice; {@link #WHOLE} when unset or none of the two. */
  static final String CHOICE = "grading.scheme";

  private final String code = Codes.of(this);

  static Scheme of(Map<String, String> choices) {
    return choices.getOrDefault(CHOICE, "").equals(PLUS_MINUS.code()) ? PLUS_MINUS : WHOLE;
  }

  String code() {
    return code;
  }
}
