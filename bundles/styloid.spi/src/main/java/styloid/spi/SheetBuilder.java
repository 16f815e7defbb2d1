package styloid.spi;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.PatientContext;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.SourceStatus;
import styloid.model.Value;

/**
 * Puts a test's sheet together so that nothing is left out: it knows which entries and results
 * stand somewhere already, and {@link #rest} gives the others a plain place. Of a result without a
 * value the cell says so and points to a note with the reason; each reason is written once.
 */
public final class SheetBuilder {
  private static final int NAME_WIDTH = 28;
  private static final int VALUE_WIDTH = 10;
  private static final int STATUS_WIDTH = 10;

  private final TestDefinition definition;
  private final PatientContext context;
  private final Map<ResultKey, Result> results = new LinkedHashMap<>();
  private final Set<ItemKey> shownEntries = new HashSet<>();
  private final Set<ResultKey> shownResults = new HashSet<>();
  private final LinkedHashSet<Message> notes = new LinkedHashSet<>();
  private final ArrayList<Sheet.Block> blocks = new ArrayList<>();

  public SheetBuilder(TestDefinition definition, PatientContext context, List<Result> results) {
    this.definition = definition;
    this.context = context;
    results.forEach(result -> this.results.put(result.key(), result));
  }

  public TestDefinition definition() {
    return definition;
  }

  public PatientContext context() {
    return context;
  }

  /** The cell of an entry; blank where nothing is recorded. */
  public Sheet.Cell entry(ItemKey key) {
    Optional<Entry> entry =
        definition.has(key) ? context.snapshot().entry(key) : Optional.<Entry>empty();
    entry.ifPresent(e -> shownEntries.add(key));
    return entry
        .flatMap(Entry::value)
        .map(value -> Sheets.entered(key, value))
        .orElseGet(Sheet.Blank::new);
  }

  public boolean recorded(ItemKey key) {
    return definition.has(key) && context.snapshot().entry(key).isPresent();
  }

  /** The result of a key, if the test gave one. */
  public Optional<Result> find(ResultKey key) {
    return Optional.ofNullable(results.get(key));
  }

  /** The cell of a result; blank where none was given or nothing it needs was recorded. */
  public Sheet.Cell result(ResultKey key) {
    Optional<Result> found = find(key);
    found.ifPresent(result -> shownResults.add(key));
    return found.map(this::cell).orElseGet(Sheet.Blank::new);
  }

  private Sheet.Cell cell(Result result) {
    return result
        .outcome()
        .match(
            value -> Sheets.derived(definition, result),
            incomplete ->
                begun(result)
                    ? note("see-note.incomplete", incomplete.reason())
                    : new Sheet.Blank(),
            unavailable -> note("see-note", unavailable.reason()));
  }

  private Sheet.Cell note(String key, Message reason) {
    notes.add(reason);
    int number = new ArrayList<>(notes).indexOf(reason) + 1;
    return words(common(key, number));
  }

  /** Whether anything was recorded that an incomplete result waits for more of. */
  private boolean begun(Result result) {
    return Sheets.begun(definition, result, context);
  }

  /** The weakest source status among the results of these keys that have a value. */
  public Sheet.Cell status(Collection<ResultKey> keys) {
    Optional<SourceStatus> weakest =
        keys.stream()
            .flatMap(key -> find(key).stream())
            .filter(result -> result.value().isPresent())
            .map(result -> result.why().status())
            .max(SourceStatus::compareTo);
    return weakest
        .<Sheet.Cell>map(status -> words(common("status-of." + status.code())))
        .orElseGet(Sheet.Blank::new);
  }

  /**
   * Adds a table, without the columns in which every cell is blank (the first ones, {@code kept} of
   * them, always stay); nothing when it has no rows.
   */
  public SheetBuilder table(
      Message heading, int kept, List<Sheet.Column> columns, List<List<Sheet.Cell>> rows) {
    ArrayList<Integer> used = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      int column = i;
      boolean any = rows.stream().anyMatch(row -> !(row.get(column) instanceof Sheet.Blank));
      if (i < kept || any) {
        used.add(i);
      }
    }
    if (!rows.isEmpty() && used.size() > kept) {
      blocks.add(
          new Sheet.Table(
              heading,
              used.stream().map(columns::get).toList(),
              rows.stream().map(row -> used.stream().map(row::get).toList()).toList()));
    }
    return this;
  }

  /** Adds a chart, unless it would show less than two numbers. */
  public SheetBuilder chart(Sheet.Chart chart) {
    long numbers =
        chart.table().rows().stream()
            .flatMap(row -> row.stream().skip(1))
            .filter(cell -> cell instanceof Sheet.Figure || cell instanceof Sheet.Derived)
            .count();
    if (numbers > 1) {
      blocks.add(chart);
    }
    return this;
  }

  public SheetBuilder text(Message text, Sheet.Role role) {
    blocks.add(new Sheet.Paragraph(text, role));
    return this;
  }

  /** Adds what stands nowhere yet: entries by group, then results with both sides in a row. */
  public SheetBuilder rest() {
    for (Group group : definition.groups()) {
      boolean open =
          group.items().stream()
              .flatMap(item -> item.keys(definition.id()).stream())
              .anyMatch(key -> recorded(key) && !shownEntries.contains(key));
      if (open) {
        Sheets.entries(definition.id(), group, context, key -> !shownEntries.contains(key))
            .ifPresent(blocks::add);
        group.items().forEach(item -> shownEntries.addAll(item.keys(definition.id())));
      }
    }
    results();
    return this;
  }

  private record Line(ResultId result, Digit digit) {}

  private void results() {
    LinkedHashMap<Line, List<Result>> lines = new LinkedHashMap<>();
    for (Result result : results.values()) {
      if (!shownResults.contains(result.key())) {
        Line line = new Line(result.key().result(), result.key().digit());
        lines.computeIfAbsent(line, l -> new ArrayList<>()).add(result);
      }
    }
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    lines.forEach(
        (line, found) -> {
          List<Sheet.Cell> row = row(line, found);
          if (row.subList(1, 4).stream().anyMatch(cell -> !(cell instanceof Sheet.Blank))) {
            rows.add(row);
          }
        });
    List<Sheet.Column> columns =
        List.of(
            column("head.result", NAME_WIDTH),
            column("head.side.right", VALUE_WIDTH),
            column("head.side.left", VALUE_WIDTH),
            column("head.no-side", VALUE_WIDTH),
            column("head.status", STATUS_WIDTH));
    table(common("head.results"), 1, columns, rows);
  }

  private List<Sheet.Cell> row(Line line, List<Result> found) {
    Message name = Message.of(definition.id(), "result." + line.result());
    List<ResultKey> keys = found.stream().map(Result::key).toList();
    ArrayList<Sheet.Cell> row = new ArrayList<>();
    row.add(words(ofDigit(name, line.digit())));
    for (Side side : List.of(Side.RIGHT, Side.LEFT, Side.UNSIDED)) {
      row.add(result(new ResultKey(definition.id(), line.result(), side, line.digit())));
    }
    row.add(status(keys));
    return row;
  }

  /** The finished sheet, named after the test, with the notes its cells point to. */
  public Sheet sheet() {
    ArrayList<Sheet.Block> all = new ArrayList<>(blocks);
    if (!notes.isEmpty()) {
      all.add(new Sheet.Paragraph(common("head.notes"), Sheet.Role.HEADING));
      int number = 1;
      for (Message reason : notes) {
        all.add(new Sheet.Paragraph(common("note", number++, reason), Sheet.Role.TEXT));
      }
    }
    Message title = Message.of(definition.id(), "test.title");
    return new Sheet(definition.id().value(), title, all);
  }

  /**
   * Lines for the first page of a report: a table of right and left, without names of its own.
   * Empty when there are no rows.
   *
   * @param most the longest list still read at a glance; more are left out and counted
   */
  public List<Sheet> summary(Message heading, int most, List<List<Sheet.Cell>> rows) {
    if (rows.isEmpty()) {
      return List.of();
    }
    List<Sheet.Column> columns =
        List.of(
            column("head.item", NAME_WIDTH),
            column("head.side.right", VALUE_WIDTH),
            column("head.side.left", VALUE_WIDTH),
            column("head.remark", VALUE_WIDTH));
    ArrayList<Sheet.Block> lines = new ArrayList<>();
    List<List<Sheet.Cell>> first = rows.subList(0, Math.min(most, rows.size()));
    int used = first.stream().allMatch(row -> row.get(3) instanceof Sheet.Blank) ? 3 : 4;
    lines.add(
        new Sheet.Table(
            heading,
            columns.subList(0, used),
            first.stream().map(row -> row.subList(0, used)).toList()));
    if (rows.size() > most) {
      lines.add(new Sheet.Paragraph(common("more-rows", rows.size() - most), Sheet.Role.TEXT));
    }
    Message title = Message.of(definition.id(), "test.title");
    return List.of(new Sheet(Sheet.SUMMARY, title, lines));
  }

  /** The value of a result once more, without its name; blank where it has none. */
  public Sheet.Cell again(ResultKey key) {
    Optional<Result> found = find(key).filter(result -> result.value().isPresent());
    return found
        .flatMap(Result::quantity)
        .map(quantity -> Sheets.copy(key, quantity, decimals(key)))
        .or(() -> found.map(result -> unnamed(Sheets.derived(definition, result))))
        .orElseGet(Sheet.Blank::new);
  }

  private int decimals(ResultKey key) {
    return definition.result(key).map(ResultDefinition::decimals).orElse(1);
  }

  /** The value of an entry once more, without its name; blank where nothing is recorded. */
  public Sheet.Cell again(ItemKey key) {
    Optional<Value> value = recorded(key) ? context.snapshot().value(key) : Optional.<Value>empty();
    return value
        .filter(Quantity.class::isInstance)
        .map(Quantity.class::cast)
        .<Sheet.Cell>map(
            q ->
                new Sheet.Derived(
                    q.amount(),
                    q.unit(),
                    Math.max(0, q.amount().scale()),
                    Optional.of(key.cellName()),
                    Optional.empty()))
        .or(() -> value.map(v -> unnamed(Sheets.entered(key, v))))
        .orElseGet(Sheet.Blank::new);
  }

  private static Sheet.Cell unnamed(Sheet.Cell cell) {
    return cell instanceof Sheet.Words words ? words(words.text()) : cell;
  }

  /** "wrist extension, index finger". */
  public static Message ofDigit(Message name, Digit digit) {
    return digit == Digit.NONE ? name : common("item-of-digit", name, digit);
  }

  public static Sheet.Cell words(Message text) {
    return new Sheet.Words(text, Optional.empty());
  }

  /** A column headed by words every test shares. */
  public static Sheet.Column column(String commonKey, int width) {
    return new Sheet.Column(common(commonKey), width);
  }

  /** A column headed by a side and a word of the test. */
  public static Sheet.Column column(Side side, Message what, int width) {
    return new Sheet.Column(common("head.of-side." + side.code(), what), width);
  }

  /** Words every test shares. */
  public static Message common(String key, Object... args) {
    return Message.of(Texts.COMMON, key, args);
  }
}
