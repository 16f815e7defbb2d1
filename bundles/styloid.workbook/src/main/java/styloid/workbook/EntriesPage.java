package styloid.workbook;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import styloid.model.Entry;
import styloid.model.InSpite;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Value;
import styloid.spi.Report;

/** The ledger: every entry in its order, superseded ones too, with who and when. */
final class EntriesPage {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("uuuu-MM-dd", Locale.ROOT).withZone(ZoneOffset.UTC);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);

  /** A column, unless what it says is the same for all and said above them. */
  private record Column(String head, int width, Function<Entry, Box> cell) {}

  private EntriesPage() {}

  static Page of(Report report, String name, Banner banner, Say say) {
    List<Entry> entries = report.ledger().entries();
    PageBuilder page = new PageBuilder(name, banner);
    if (entries.isEmpty()) {
      return page.across(say.own("entries.empty"), Look.LEGEND).build();
    }
    ArrayList<String> lead = new ArrayList<>(List.of(say.own("entries.lead")));
    List<Column> columns = columns(entries, lead, say);
    page.across(String.join(" ", lead), Look.LEGEND);
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (Entry entry : entries) {
      ArrayList<Box> row = new ArrayList<>();
      row.add(new Box.Figure(rows.size() + 1, "0", Look.VALUE, Optional.empty()));
      columns.forEach(column -> row.add(column.cell().apply(entry)));
      rows.add(row);
    }
    ArrayList<String> heads = new ArrayList<>(List.of(say.own("head.number")));
    ArrayList<Integer> widths = new ArrayList<>(List.of(6));
    for (Column column : columns) {
      heads.add(say.own(column.head()));
      widths.add(column.width());
    }
    return page.narrowTable(heads, widths, rows).build();
  }

  private static List<Column> columns(List<Entry> entries, List<String> lead, Say say) {
    Map<ItemKey, Entry> last = new HashMap<>();
    entries.forEach(entry -> last.put(entry.key(), entry));
    ArrayList<Column> columns = new ArrayList<>();
    columns.add(new Column("head.test", 15, e -> text(say.test(e.key().test()))));
    columns.add(new Column("head.item", 38, e -> head(item(e, say))));
    columns.add(new Column("head.side", 10, e -> head(say.side(e.key().side()))));
    columns.add(
        new Column(
            "head.trial",
            6,
            e -> new Box.Figure(e.key().trial(), "0", Look.VALUE, Optional.empty())));
    columns.add(new Column("head.value", 18, e -> value(e, last.get(e.key()) == e, say)));
    columns.add(new Column("head.state", 10, e -> text(say.own(state(e, last.get(e.key()) == e)))));
    if (entries.stream().anyMatch(Entry::confirmed)) {
      columns.add(
          new Column("head.confirmed", 10, e -> text(say.own(e.confirmed() ? "yes" : "nothing"))));
    }
    if (one(entries, e -> DAY.format(e.at()))) {
      lead.add(say.own("entries.day", DAY.format(entries.get(0).at())));
      columns.add(new Column("head.time", 9, e -> text(TIME.format(e.at()))));
    } else {
      columns.add(new Column("head.when", 19, e -> text(WHEN.format(e.at()))));
    }
    if (one(entries, Entry::by)) {
      lead.add(say.own("entries.all-by", entries.get(0).by().value()));
    } else {
      columns.add(new Column("head.who", 16, e -> text(e.by().value())));
    }
    if (entries.stream().anyMatch(e -> e.override().isPresent())) {
      columns.add(new Column("head.override", 24, e -> text(overriding(e, InSpite::reason, say))));
      columns.add(
          new Column(
              "head.overrode",
              26,
              e -> text(overriding(e, spite -> Banner.overridden(spite, say), say))));
    }
    return columns;
  }

  private static String overriding(Entry entry, Function<InSpite, String> what, Say say) {
    return entry.override().map(what).orElseGet(() -> say.own("nothing"));
  }

  private static boolean one(List<Entry> entries, Function<Entry, Object> what) {
    return entries.stream().map(what).distinct().count() == 1;
  }

  private static String item(Entry entry, Say say) {
    return say.itemOfDigit(say.item(entry.key()), entry.key().digit());
  }

  private static String state(Entry entry, boolean last) {
    if (!last) {
      return "entry.superseded";
    }
    return entry.value().isPresent() ? "entry.current" : "entry.taken-back";
  }

  private static Box text(String words) {
    return Box.words(words, Look.TEXT);
  }

  private static Box head(String words) {
    return Box.words(words, Look.ROW_HEAD);
  }

  /**
   * Carries the cell name too, for entries no other sheet shows; the first cell of a name has it.
   */
  private static Box value(Entry entry, boolean last, Say say) {
    Optional<String> name = last ? Optional.of(entry.key().cellName()) : Optional.empty();
    Optional<Value> value = entry.value();
    if (value.isEmpty()) {
      return Box.words(say.own("entry.nothing"), Look.VALUE);
    }
    if (value.get() instanceof Quantity q) {
      String format = Formats.of(q.unit(), q.amount().scale());
      return new Box.Figure(q.amount().doubleValue(), format, Look.VALUE, name);
    }
    return new Box.Words(say.texts().value(entry.key(), value.get()), Look.VALUE, name);
  }
}
