package styloid.workbook;

import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import styloid.model.Entry;
import styloid.model.InSpite;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Value;
import styloid.spi.Report;

/** The ledger: every entry in its order, superseded ones too, with who and when. */
final class EntriesPage {
  private static final List<Integer> WIDTHS =
      List.of(7, 16, 30, 9, 12, 7, 16, 14, 12, 19, 18, 30, 36);
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT).withZone(ZoneOffset.UTC);

  private EntriesPage() {}

  static Page of(Report report, String name, Banner banner, Say say) {
    Map<ItemKey, Entry> last = new HashMap<>();
    report.ledger().entries().forEach(entry -> last.put(entry.key(), entry));
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (Entry entry : report.ledger().entries()) {
      rows.add(row(rows.size() + 1, entry, last.get(entry.key()) == entry, say));
    }
    PageBuilder page = new PageBuilder(name, banner);
    page.across(say.own(rows.isEmpty() ? "entries.empty" : "entries.lead"), Look.LEGEND);
    List<String> heads =
        List.of(
            say.own("head.number"),
            say.own("head.test"),
            say.own("head.item"),
            say.own("head.side"),
            say.own("head.digit"),
            say.own("head.trial"),
            say.own("head.value"),
            say.own("head.state"),
            say.own("head.confirmed"),
            say.own("head.when"),
            say.own("head.who"),
            say.own("head.override"),
            say.own("head.overrode"));
    page.table(heads, WIDTHS, rows);
    return page.build();
  }

  private static List<Box> row(int number, Entry entry, boolean last, Say say) {
    ItemKey key = entry.key();
    String state =
        !last
            ? "entry.superseded"
            : entry.value().isPresent() ? "entry.current" : "entry.taken-back";
    return List.of(
        new Box.Figure(number, "0", Look.VALUE, Optional.empty()),
        Box.words(say.test(key.test()), Look.TEXT),
        Box.words(say.item(key), Look.ROW_HEAD),
        Box.words(say.side(key.side()), Look.ROW_HEAD),
        Box.words(say.digit(key.digit()), Look.TEXT),
        new Box.Figure(key.trial(), "0", Look.VALUE, Optional.empty()),
        value(entry, last, say),
        Box.words(say.own(state), Look.TEXT),
        Box.words(say.own(entry.confirmed() ? "yes" : "nothing"), Look.TEXT),
        Box.words(WHEN.format(entry.at()), Look.TEXT),
        Box.words(entry.by().value(), Look.TEXT),
        Box.words(
            entry.override().map(InSpite::reason).orElseGet(() -> say.own("nothing")), Look.TEXT),
        Box.words(
            entry
                .override()
                .map(override -> Banner.overridden(override, say))
                .orElseGet(() -> say.own("nothing")),
            Look.TEXT));
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
