package styloid.grip;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Explanation;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Unit;

/** Short ways to write this test's messages, keys and results. */
final class Say {
  static final TestId GRIP = new TestId("grip");

  private Say() {}

  static Message step(String key, Object... args) {
    return Message.of(GRIP, key, args);
  }

  static ResultKey key(String result, Side side) {
    return new ResultKey(GRIP, new ResultId(result), side, Digit.NONE);
  }

  /** A number as a sentence shows it; the value of the result itself is not rounded. */
  static BigDecimal round(double number, int decimals) {
    return BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP);
  }

  static Quantity round(double number, int decimals, Unit unit) {
    return new Quantity(round(number, decimals), unit);
  }

  static Explanation why(String rule, List<Source> sources, Message... steps) {
    return new Explanation(List.of(steps), sources, rule, Optional.empty());
  }

  static Explanation why(
      String rule, List<Source> sources, List<Message> steps, Optional<String> formula) {
    return new Explanation(steps, sources, rule, formula);
  }

  static Result number(ResultKey key, double number, Unit unit, Explanation why) {
    return Result.computed(key, Quantity.of(number, unit), why);
  }

  static Result choice(ResultKey key, String code, Explanation why) {
    return Result.computed(key, new Choice(code), why);
  }

  /** The result cannot be given because these keys hold no value. */
  static Result incomplete(ResultKey key, List<ItemKey> missing, Explanation why) {
    return Result.incomplete(key, step("why.values-missing", missing.size()), missing, why);
  }

  static Result unavailable(ResultKey key, Message reason, Explanation why) {
    return Result.unavailable(key, reason, why);
  }
}
