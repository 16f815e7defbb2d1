package styloid.grip;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Text;

/**
 * Whether an instrument was calibrated within the last twelve months (common practice; the same day
 * a year later is still current).
 */
final class Calibration {
  static final int MONTHS = 12;
  private static final String RULE = "grip-calibration";

  private Calibration() {}

  static List<Result> of(PatientContext context) {
    return List.of(of(context, "grip-calibration"), of(context, "pinch-calibration"));
  }

  private static Result of(PatientContext context, String id) {
    ResultKey key = Say.key(id, Side.UNSIDED);
    ItemKey item = new ItemKey(Say.GRIP, new ItemId(id + "-date"), Side.UNSIDED, Digit.NONE, 1);
    Explanation rule = Say.why(RULE, Sources.COMMON, Say.step("step.calibration.rule", MONTHS));
    Optional<Text> text =
        context.snapshot().value(item).filter(Text.class::isInstance).map(Text.class::cast);
    if (text.isEmpty()) {
      return Say.incomplete(key, List.of(item), rule);
    }
    String typed = text.get().text().strip();
    Optional<LocalDate> read = read(typed);
    LocalDate today = context.evaluation().date();
    if (read.isEmpty()) {
      return Say.unavailable(key, Say.step("why.not-a-date", typed), rule);
    }
    if (read.get().isAfter(today)) {
      return Say.unavailable(key, Say.step("why.date-ahead", typed), rule);
    }
    LocalDate due = read.get().plusMonths(MONTHS);
    return Say.choice(
        key,
        today.isAfter(due) ? "overdue" : "current",
        Say.why(
            RULE,
            Sources.COMMON,
            Say.step("step.calibration.rule", MONTHS),
            Say.step("step.calibration", typed, due.toString(), today.toString())));
  }

  private static Optional<LocalDate> read(String typed) {
    try {
      return Optional.of(LocalDate.parse(typed));
    } catch (DateTimeParseException notADate) {
      return Optional.empty();
    }
  }
}
