package styloid.spi;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.text.NumberFormat;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Text;
import styloid.model.Unit;
import styloid.model.Value;

/**
 * Turns messages, labels, values and numbers into words of one language. Immutable. The words every
 * part shares (sides, digits, absences and so on) are its own, under the scope {@value #COMMON}.
 */
public final class Texts {
  public static final String COMMON = "common";

  private final Map<String, Labels> scopes;
  private final Locale locale;

  /** Only ever cloned: making one takes far longer, and none may be used by two threads. */
  private final NumberFormat numbers;

  /** Words of these scopes, for readers of {@code locale}. */
  public Texts(Map<String, Labels> scopes, Locale locale) {
    HashMap<String, Labels> all = new HashMap<>(scopes);
    all.put(COMMON, Labels.beside(Texts.class));
    this.scopes = Map.copyOf(all);
    this.locale = locale;
    numbers = NumberFormat.getNumberInstance(locale);
    numbers.setGroupingUsed(false);
    numbers.setRoundingMode(RoundingMode.HALF_UP);
  }

  /** The same, with one scope more or replaced. */
  public Texts with(String scope, Labels labels) {
    HashMap<String, Labels> all = new HashMap<>(scopes);
    all.put(scope, labels);
    return new Texts(all, locale);
  }

  public Locale locale() {
    return locale;
  }

  /**
   * The words of a key, if it has any. An answer ({@code choice.<item>.<code>}) falls back to the
   * test's shared {@code choice.<code>} and then to that of everybody.
   */
  public Optional<String> find(String scope, String key) {
    Optional<String> own = ofScope(scope, key);
    if (own.isPresent() || !key.startsWith("choice.")) {
      return own;
    }
    String code = key.substring(key.indexOf('.', "choice.".length()) + 1);
    return ofScope(scope, "choice." + code).or(() -> ofScope(COMMON, "choice." + code));
  }

  private Optional<String> ofScope(String scope, String key) {
    Labels labels = scopes.get(scope);
    return labels == null ? Optional.empty() : labels.find(locale.getLanguage(), key);
  }

  /** The words of a key; the key itself where it has none, so that nothing shows blank. */
  public String label(String scope, String key) {
    return find(scope, key).orElse(key);
  }

  public String text(Message message) {
    if (message.scope().isEmpty()) {
      return String.valueOf(message.args().get(0));
    }
    String pattern = label(message.scope(), message.key());
    StringBuilder text = new StringBuilder();
    int from = 0;
    for (int open = pattern.indexOf('{'); open >= 0; open = pattern.indexOf('{', from)) {
      int close = pattern.indexOf('}', open);
      String inside = close < 0 ? "" : pattern.substring(open + 1, close);
      text.append(pattern, from, open);
      if (inside.matches("\\d{1,2}") && Integer.parseInt(inside) < message.args().size()) {
        text.append(argument(message.args().get(Integer.parseInt(inside))));
        from = close + 1;
      } else {
        text.append('{');
        from = open + 1;
      }
    }
    return text.append(pattern.substring(from)).toString();
  }

  private String argument(Object arg) {
    if (arg instanceof Message m) {
      return text(m);
    } else if (arg instanceof Quantity q) {
      return quantity(q);
    } else if (arg instanceof BigDecimal number) {
      return number(number);
    } else if (arg instanceof Enum<?> constant) {
      return word(constant);
    }
    return String.valueOf(arg);
  }

  /** The word of an enum constant of the model, such as "right" or "not done". */
  public String word(Enum<?> constant) {
    String type = constant.getDeclaringClass().getSimpleName().toLowerCase(Locale.ROOT);
    return label(COMMON, type + "." + Codes.of(constant));
  }

  /** "Right index", "Left", or nothing for what belongs to no limb; first letter a capital. */
  public String place(Side side, Digit digit) {
    String place = side == Side.UNSIDED ? "" : word(side);
    if (digit != Digit.NONE) {
      place = (place + " " + word(digit)).trim();
    }
    return place.isEmpty() ? "" : place.substring(0, 1).toUpperCase(locale) + place.substring(1);
  }

  /** A number with all its digits. */
  public String number(BigDecimal number) {
    return number(number, Math.max(0, number.scale()));
  }

  /** A number with this many digits after the point, halves away from zero. */
  public String number(BigDecimal number, int decimals) {
    NumberFormat format = (NumberFormat) numbers.clone();
    format.setMinimumFractionDigits(decimals);
    format.setMaximumFractionDigits(decimals);
    return format.format(number);
  }

  public String quantity(Quantity quantity) {
    return withUnit(number(quantity.amount()), quantity.unit());
  }

  public String quantity(Quantity quantity, int decimals) {
    return withUnit(number(quantity.amount(), decimals), quantity.unit());
  }

  private static String withUnit(String number, Unit unit) {
    String gap = unit == Unit.DEGREE || unit.sign().isEmpty() ? "" : " ";
    return number + gap + unit.sign();
  }

  public String date(LocalDate date) {
    return DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(locale).format(date);
  }

  /** Name of an item: {@code item.<id>} of its test's labels. */
  public String item(ItemKey key) {
    return label(key.test().value(), "item." + key.item());
  }

  /** Words of one answer of an item: its own ones if any, else those shared by the test. */
  public String choice(ItemKey key, String code) {
    return find(key.test().value(), "choice." + key.item() + "." + code).orElse(code);
  }

  /** A recorded value in words, with its unit. */
  public String value(ItemKey key, Value value) {
    return value.match(
        this::quantity,
        (Choice c) -> choice(key, c.code()),
        Text::text,
        a -> a.note().isBlank() ? word(a.reason()) : word(a.reason()) + " (" + a.note() + ")");
  }

  /** Words of all an item's answers, in order, as shown beside the digit keys; empty for others. */
  public List<String> choices(ItemKey key, Item item) {
    return item.kind() instanceof ItemKind.Choices choices
        ? choices.codes().stream().map(code -> choice(key, code)).toList()
        : List.of();
  }
}
