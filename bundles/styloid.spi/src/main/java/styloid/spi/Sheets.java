package styloid.spi;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Outcome;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Value;

/** Sheets and cells made from a definition alone. */
public final class Sheets {
  private static final int NAME_WIDTH = 34;
  private static final int VALUE_WIDTH = 14;

  private Sheets() {}

  /** One sheet with every entry of a test and every result of what was begun. */
  public static List<Sheet> fromItems(
      TestDefinition definition, PatientContext context, List<Result> results) {
    return List.of(new SheetBuilder(definition, context, results).rest().sheet());
  }

  /** The entries of a group; empty when nothing of it was recorded. */
  public static Optional<Sheet.Block> entries(TestId test, Group group, PatientContext context) {
    return entries(test, group, context, key -> true);
  }

  /** Only the entries of these keys. */
  static Optional<Sheet.Block> entries(
      TestId test, Group group, PatientContext context, Predicate<ItemKey> which) {
    int trials = group.items().stream().mapToInt(Item::trials).max().orElse(1);
    ArrayList<Sheet.Column> columns = new ArrayList<>();
    columns.add(new Sheet.Column(common("head.item"), NAME_WIDTH));
    for (Side side : group.sides()) {
      for (int trial = 1; trial <= trials; trial++) {
        columns.add(new Sheet.Column(head(side, trial, trials), VALUE_WIDTH));
      }
    }
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Item item : group.items()) {
      for (Digit digit : EnumSet.copyOf(item.digits())) {
        row(test, group, item, digit, trials, context, which).ifPresent(rows::add);
      }
    }
    if (rows.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Sheet.Table(Message.of(test, "group." + group.id()), columns, rows));
  }

  /**
   * Whether anything was recorded that the result belongs to: all that merely waits for a test
   * nobody began would fill every visit's sheet.
   */
  static boolean begun(TestDefinition definition, Result result, PatientContext context) {
    if (!(result.outcome() instanceof Outcome.Incomplete)) {
      return true;
    }
    Side side = result.key().side();
    Digit digit = result.key().digit();
    Optional<Group> group =
        definition
            .result(result.key())
            .flatMap(ResultDefinition::group)
            .flatMap(id -> definition.groups().stream().filter(g -> g.id().equals(id)).findFirst());
    List<Item> items = group.map(Group::items).orElseGet(definition::items);
    return context.snapshot().entries().stream()
        .map(Entry::key)
        .filter(key -> side == Side.UNSIDED || key.side() == side)
        .filter(key -> digit == Digit.NONE || key.digit() == digit)
        .anyMatch(key -> items.stream().anyMatch(item -> item.has(key)));
  }

  private static Message head(Side side, int trial, int trials) {
    if (side == Side.UNSIDED) {
      return trials == 1 ? common("head.value") : common("head.trial", trial);
    }
    return trials == 1
        ? common("head.side." + side.code())
        : common("head.side-trial." + side.code(), trial);
  }

  private static Optional<List<Sheet.Cell>> row(
      TestId test,
      Group group,
      Item item,
      Digit digit,
      int trials,
      PatientContext context,
      Predicate<ItemKey> which) {
    ArrayList<Sheet.Cell> cells = new ArrayList<>();
    Message name = Message.of(test, "item." + item.id());
    cells.add(words(digit == Digit.NONE ? name : common("item-of-digit", name, digit)));
    boolean any = false;
    for (Side side : group.sides()) {
      for (int trial = 1; trial <= trials; trial++) {
        ItemKey key = new ItemKey(test, item.id(), side, digit, trial);
        Optional<Entry> entry =
            item.has(key) && which.test(key) ? context.snapshot().entry(key) : Optional.empty();
        any |= entry.isPresent();
        cells.add(
            entry.flatMap(Entry::value).map(v -> entered(key, v)).orElseGet(Sheet.Blank::new));
      }
    }
    return any ? Optional.of(cells) : Optional.empty();
  }

  /** The cell of a recorded value: a number stays one, an absence is its word. */
  public static Sheet.Cell entered(ItemKey key, Value value) {
    Optional<String> name = Optional.of(key.cellName());
    return value.match(
        q -> new Sheet.Figure(q.amount(), q.unit(), name),
        c -> new Sheet.Words(Message.of(key.test(), "choice." + key.item() + "." + c.code()), name),
        t -> new Sheet.Words(Message.verbatim(t.text()), name),
        a ->
            new Sheet.Words(
                a.note().isBlank()
                    ? common("absent", a.reason())
                    : common("absent-with-note", a.reason(), a.note()),
                name));
  }

  /** The cell of a result: a live number, words, or the reason why there is none. */
  public static Sheet.Cell derived(TestDefinition definition, Result result) {
    Optional<String> name = Optional.of(result.key().cellName());
    int decimals = definition.result(result.key()).map(ResultDefinition::decimals).orElse(1);
    return result
        .outcome()
        .match(
            value ->
                value.match(
                    (Quantity q) -> number(q.amount(), q, decimals, result, name),
                    c ->
                        new Sheet.Words(
                            Message.of(
                                definition.id(),
                                "choice." + result.key().result() + "." + c.code()),
                            name),
                    t -> new Sheet.Words(Message.verbatim(t.text()), name),
                    a -> new Sheet.Words(common("absent", a.reason()), name)),
            incomplete -> new Sheet.Words(incomplete.reason(), Optional.empty()),
            unavailable -> new Sheet.Words(unavailable.reason(), Optional.empty()));
  }

  /** A result's number once more, read from the cell that has its name. */
  public static Sheet.Cell copy(ResultKey key, Quantity value, int decimals) {
    return new Sheet.Derived(
        value.amount(), value.unit(), decimals, Optional.of(key.cellName()), Optional.empty());
  }

  private static Sheet.Cell number(
      BigDecimal amount, Quantity q, int decimals, Result result, Optional<String> name) {
    return new Sheet.Derived(amount, q.unit(), decimals, result.why().formula(), name);
  }

  private static Sheet.Cell words(Message text) {
    return new Sheet.Words(text, Optional.empty());
  }

  private static Message common(String key, Object... args) {
    return Message.of(Texts.COMMON, key, args);
  }
}
