package styloid.form;

import java.util.ArrayList;
import styloid.model.Digit;
import styloid.model.Message;
import styloid.model.Precaution;
import styloid.model.Side;
import styloid.spi.Texts;

/** A precaution in words: what, where, until when, set by whom. */
public final class PrecautionText {
  private PrecautionText() {}

  /** "no resistance: left wrist, until 3 May 2026, set by Dr Example". */
  public static String of(Precaution precaution, Texts texts) {
    ArrayList<String> parts = new ArrayList<>();
    parts.add(what(precaution, texts));
    precaution.until().ifPresent(day -> parts.add(say(texts, "until", texts.date(day))));
    if (!precaution.setBy().isBlank()) {
      parts.add(say(texts, "set-by", precaution.setBy()));
    }
    if (!precaution.note().isBlank()) {
      parts.add(precaution.note());
    }
    return String.join(", ", parts);
  }

  /** "no resistance: left wrist". */
  public static String what(Precaution precaution, Texts texts) {
    String side =
        precaution.side() == Side.UNSIDED
            ? texts.label(FormView.SCOPE, "both-sides")
            : texts.word(precaution.side());
    String part =
        precaution.digit() == Digit.NONE
            ? texts.word(precaution.region())
            : texts.word(precaution.digit());
    return say(texts, "precaution", texts.word(precaution.kind()), side, part);
  }

  private static String say(Texts texts, String key, Object... args) {
    return texts.text(Message.of(FormView.SCOPE, key, args));
  }
}
