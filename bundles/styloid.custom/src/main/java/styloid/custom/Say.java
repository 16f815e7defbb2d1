package styloid.custom;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.TestId;
import styloid.model.norm.NormLookup;

/** Sentences every declared test shares; their words are copied into the labels of each. */
final class Say {
  static final String PREFIX = "declared.";
  private static final MathContext SHOWN = new MathContext(6);

  private Say() {}

  static Message of(TestId test, String key, Object... args) {
    return Message.of(test, PREFIX + key, args);
  }

  static Message quantity(TestId test, Quantity quantity) {
    return of(test, "quantity", quantity);
  }

  /** A calculated quantity with six digits that count. */
  static Message rounded(TestId test, Quantity quantity) {
    return quantity(test, new Quantity(shown(quantity.amount()), quantity.unit()));
  }

  static BigDecimal shown(BigDecimal number) {
    BigDecimal rounded = number.round(SHOWN);
    return rounded.scale() <= 0 ? rounded.setScale(0) : rounded.stripTrailingZeros();
  }

  /** The messages one after another. */
  static Message list(TestId test, List<Message> messages) {
    Message all = messages.get(0);
    for (Message next : messages.subList(1, messages.size())) {
      all = of(test, "list", all, next);
    }
    return all;
  }

  static Message missing(TestId test, NormLookup.Missing missing) {
    String covered = missing.covered().map(Object::toString).orElse("");
    return of(test, "norm." + missing.reason().code(), covered);
  }
}
