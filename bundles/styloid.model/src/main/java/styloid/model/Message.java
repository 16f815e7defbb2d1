package styloid.model;

import java.math.BigDecimal;
import java.util.List;
import java.util.Objects;

/**
 * A sentence to be said in the reader's language: a key of a scope (a test id or a part of the
 * suite) with arguments put in for {@code {0}}, {@code {1}} and so on.
 *
 * @param args strings, whole numbers, {@link BigDecimal}s, {@link Quantity}s, enums of this package
 *     or messages
 */
public record Message(String scope, String key, List<Object> args) {
  public Message {
    Objects.requireNonNull(scope, "scope");
    Objects.requireNonNull(key, "key");
    args = List.copyOf(args);
    for (Object arg : args) {
      boolean known =
          arg instanceof String
              || arg instanceof Integer
              || arg instanceof BigDecimal
              || arg instanceof Quantity
              || arg instanceof Enum<?>
              || arg instanceof Message;
      if (!known) {
        throw new IllegalArgumentException("a message cannot carry a " + arg.getClass());
      }
    }
  }

  public static Message of(String scope, String key, Object... args) {
    return new Message(scope, key, List.of(args));
  }

  public static Message of(TestId test, String key, Object... args) {
    return new Message(test.value(), key, List.of(args));
  }

  /** Text that is the same in every language, such as what a person typed. */
  public static Message verbatim(String text) {
    return new Message("", "verbatim", List.of(text));
  }
}
