package styloid.goniometry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Digit;
import styloid.model.ErrorRange;
import styloid.model.Explanation;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Source;
import styloid.model.Unit;
import styloid.model.Value;

/** Collects the steps of one result on the way to its outcome. Used once, by one thread. */
final class Calculation {
  /** Digits kept where a quotient does not end. */
  static final MathContext PRECISION = MathContext.DECIMAL64;

  private final String rule;
  private final ArrayList<Source> sources = new ArrayList<>();
  private final ArrayList<Message> steps = new ArrayList<>();
  private Optional<String> formula = Optional.empty();
  private Optional<ErrorRange> error = Optional.empty();

  /** A calculation whose page in docs/rules is {@code rule} and whose words are {@code rule.*}. */
  Calculation(String rule, Source source) {
    this.rule = rule;
    sources.add(source);
    steps.add(words("rule." + rule));
  }

  Calculation source(Source source) {
    if (!sources.contains(source)) {
      sources.add(source);
    }
    return this;
  }

  Calculation step(String key, Object... args) {
    steps.add(words("step." + key, args));
    return this;
  }

  /** The step that puts a percentage into its class. */
  Calculation grade(Bands bands, BigDecimal share) {
    Bands.Band band = bands.of(share);
    return band.equals(bands.bands().get(0))
        ? step("class-lowest", percent(share), percent(bands.bands().get(1).low()))
        : step("class", percent(share), percent(band.low()));
  }

  Calculation formula(String text) {
    formula = Optional.of(text);
    return this;
  }

  /** The error of measuring the result is judged against. */
  Calculation error(ErrorRange stated) {
    error = Optional.of(stated);
    return this;
  }

  Result computed(ResultKey key, BigDecimal amount, Unit unit) {
    return computed(key, new Quantity(amount, unit));
  }

  Result computed(ResultKey key, Value value) {
    return Result.computed(key, value, why(formula));
  }

  Result incomplete(ResultKey key, List<ItemKey> missing) {
    return Result.incomplete(
        key, words("incomplete", names(missing)), missing, why(Optional.empty()));
  }

  Result unavailable(ResultKey key, String reason, Object... args) {
    return unavailable(key, words("unavailable." + reason, args));
  }

  Result unavailable(ResultKey key, Message reason) {
    return Result.unavailable(key, reason, why(Optional.empty()));
  }

  private Explanation why(Optional<String> shown) {
    return new Explanation(steps, sources, rule, shown, error);
  }

  static Message words(String key, Object... args) {
    return Message.of(Goniometry.ID, key, args);
  }

  /** An item and where it was recorded: "Elbow flexion, active (Right)". */
  static Message name(ItemKey key) {
    Message item = words("item." + key.item());
    return key.digit() == Digit.NONE
        ? words("at-side", item, key.side())
        : words("at-digit", item, key.side(), key.digit());
  }

  private static Message names(List<ItemKey> keys) {
    Message all = name(keys.get(keys.size() - 1));
    for (int i = keys.size() - 2; i >= 0; i--) {
      all = words("and", name(keys.get(i)), all);
    }
    return all;
  }

  /** An angle as shown in a step. */
  static Quantity degrees(BigDecimal amount) {
    return new Quantity(shown(amount), Unit.DEGREE);
  }

  /** A share as shown in a step, to a tenth. */
  static Quantity percent(BigDecimal amount) {
    return new Quantity(shown(amount), Unit.PERCENT);
  }

  /** A number as shown in a step: as it is, or rounded to a tenth when it has more digits. */
  static BigDecimal shown(BigDecimal amount) {
    BigDecimal plain = amount.stripTrailingZeros();
    return plain.scale() > 1
        ? amount.setScale(1, RoundingMode.HALF_UP)
        : plain.setScale(Math.max(0, plain.scale()));
  }

  /** A number as it stands in a formula. */
  static String literal(BigDecimal amount) {
    String plain = amount.toPlainString();
    return amount.signum() < 0 ? "(" + plain + ")" : plain;
  }
}
