package styloid.plan;

import styloid.model.Message;
import styloid.spi.Labels;

/** The words of plans. */
public final class PlanWords {
  /** Scope of every message a plan carries. */
  public static final String SCOPE = "plan";

  private PlanWords() {}

  public static Labels labels() {
    return Labels.beside(PlanWords.class);
  }

  static Message message(String key, Object... args) {
    return Message.of(SCOPE, key, args);
  }
}
