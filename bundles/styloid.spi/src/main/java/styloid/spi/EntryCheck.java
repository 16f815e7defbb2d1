package styloid.spi;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.Problem;
import styloid.model.Quantity;
import styloid.model.Text;
import styloid.model.Unit;
import styloid.model.Value;

/**
 * Turns what was typed into a value of an item, and judges values of any origin. Pure: the same for
 * the window, the file reader and the headless commands.
 */
public final class EntryCheck {
  private EntryCheck() {}

  /** What came of a typed text. */
  public record Checked(Optional<Value> value, Optional<Problem> problem) {
    /** A value that may be stored as it is. */
    public boolean accepted() {
      return value.isPresent() && problem.isEmpty();
    }

    /** A value to be stored only once the therapist has confirmed it. */
    public boolean asks() {
      return value.isPresent() && problem.isPresent();
    }
  }

  /**
   * Reads a typed text. Numbers may use the locale's decimal sign or a point and may end with a
   * unit sign the item knows; a choice is its place in the list (from 1) or its code.
   *
   * @param unit unit taken when none is typed; one of the item's
   */
  public static Checked parse(String typed, Item item, Unit unit, Locale locale) {
    String text = typed.strip();
    if (text.isEmpty()) {
      return refused(item, "check.empty");
    }
    return item.kind()
        .match(
            n -> number(text, item, n, unit, locale),
            c -> choice(text, item, c),
            w -> check(item, new Text(typed)));
  }

  private static Checked number(
      String text, Item item, ItemKind.Number kind, Unit unit, Locale locale) {
    Unit typedUnit = unit;
    String digits = text;
    for (Unit known : kind.units()) {
      String sign = known.sign();
      if (!sign.isEmpty()
          && text.toLowerCase(Locale.ROOT).endsWith(sign.toLowerCase(Locale.ROOT))) {
        typedUnit = known;
        digits = text.substring(0, text.length() - sign.length()).strip();
        break;
      }
    }
    char decimal = DecimalFormatSymbols.getInstance(locale).getDecimalSeparator();
    String plain = digits.replace(decimal, '.').replace('\u2212', '-');
    if (!plain.matches("[+-]?(\\d{1,12}(\\.\\d{0,12})?|\\.\\d{1,12})")) {
      return refused(item, "check.not-a-number", text);
    }
    String clean = plain.endsWith(".") ? plain.substring(0, plain.length() - 1) : plain;
    return check(item, new Quantity(new BigDecimal(clean), typedUnit));
  }

  private static Checked choice(String text, Item item, ItemKind.Choices kind) {
    List<String> codes = kind.codes();
    if (text.matches("\\d{1,2}") && !codes.contains(text)) {
      int place = Integer.parseInt(text);
      if (place < 1 || place > codes.size()) {
        return refused(item, "check.no-such-choice", text, codes.size());
      }
      return check(item, new Choice(codes.get(place - 1)));
    }
    if (!codes.contains(text)) {
      return refused(item, "check.no-such-choice", text, codes.size());
    }
    return check(item, new Choice(text));
  }

  /** Judges a value: accepted, to be confirmed, or refused with the reason. */
  public static Checked check(Item item, Value value) {
    return value.match(
        quantity -> quantity(item, quantity),
        choice ->
            item.kind() instanceof ItemKind.Choices c && c.codes().contains(choice.code())
                ? accepted(choice)
                : refused(item, "check.wrong-kind", choice.code()),
        text -> words(item, text),
        (Absence absence) -> accepted(absence));
  }

  private static Checked quantity(Item item, Quantity quantity) {
    if (!(item.kind() instanceof ItemKind.Number kind)) {
      return refused(item, "check.wrong-kind", quantity);
    }
    if (!kind.units().contains(quantity.unit())) {
      return refused(item, "check.wrong-unit", quantity.unit().ucum());
    }
    if (quantity.amount().stripTrailingZeros().scale() > kind.decimals()) {
      return refused(item, "check.too-many-decimals", quantity, kind.decimals());
    }
    BigDecimal amount = quantity.unit().convert(quantity.amount(), kind.unit());
    if (amount.compareTo(kind.min()) < 0 || amount.compareTo(kind.max()) > 0) {
      return refused(
          item,
          "check.impossible",
          quantity,
          new Quantity(kind.min(), kind.unit()),
          new Quantity(kind.max(), kind.unit()));
    }
    if (amount.compareTo(kind.likelyMin()) < 0 || amount.compareTo(kind.likelyMax()) > 0) {
      Message ask =
          Message.of(
              Texts.COMMON,
              "check.implausible",
              quantity,
              new Quantity(kind.likelyMin(), kind.unit()),
              new Quantity(kind.likelyMax(), kind.unit()));
      return new Checked(
          Optional.of(quantity),
          Optional.of(new Problem(item.id().value(), ask, Problem.Severity.ASK_ONCE)));
    }
    return accepted(quantity);
  }

  private static Checked words(Item item, Text text) {
    if (!(item.kind() instanceof ItemKind.Words kind)) {
      return refused(item, "check.wrong-kind", text.text());
    }
    if (text.text().length() > kind.longest()) {
      return refused(item, "check.too-long", kind.longest());
    }
    return accepted(text);
  }

  private static Checked accepted(Value value) {
    return new Checked(Optional.of(value), Optional.empty());
  }

  private static Checked refused(Item item, String key, Object... args) {
    Message why = Message.of(Texts.COMMON, key, args);
    return new Checked(
        Optional.empty(),
        Optional.of(new Problem(item.id().value(), why, Problem.Severity.REFUSED)));
  }
}
