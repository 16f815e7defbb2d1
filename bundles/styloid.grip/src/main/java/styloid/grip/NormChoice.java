package styloid.grip;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import styloid.model.Evaluation;
import styloid.model.Source;
import styloid.model.SourceStatus;
import styloid.model.Unit;
import styloid.model.norm.NormRow;
import styloid.model.norm.NormTable;
import styloid.spi.Setting;

/**
 * The norm tables this test knows and which of them an evaluation goes by. The clinic's choice
 * stands in {@link Evaluation#choices()} under {@code grip.norm} for grip and {@code
 * grip.norm.palmar} and so on for pinch; without one the 1985 table is used.
 */
final class NormChoice {
  static final String DEFAULT = "mathiowetz-1985";

  private static final List<String> NAMES =
      List.of(
          DEFAULT,
          "massy-westropp-2011",
          "steiber-2016",
          "steiber-2016-height",
          "dodds-2014",
          "palmar-decade");

  private final Map<String, NormTable> tables;

  NormChoice() {
    LinkedHashMap<String, NormTable> read = new LinkedHashMap<>();
    for (String name : NAMES) {
      read.put(name, NormTable.beside(NormChoice.class, name + ".csv", Unit.Dimension.FORCE));
    }
    tables = Map.copyOf(read);
  }

  Map<String, NormTable> tables() {
    return tables;
  }

  /** Key of the choice for a measure. */
  static String key(Measure measure) {
    return measure == Measure.POWER ? "grip.norm" : "grip.norm." + measure.code();
  }

  /** The choice the clinic has for a measure; none where only one table has rows of it. */
  Stream<Setting> setting(Measure measure) {
    List<String> fitting = NAMES.stream().filter(n -> table(n, measure).isPresent()).toList();
    return fitting.size() < 2
        ? Stream.empty()
        : Stream.of(new Setting(key(measure), fitting, DEFAULT));
  }

  /** Name of the table chosen for a measure. */
  static String name(Evaluation evaluation, Measure measure) {
    return evaluation.choices().getOrDefault(key(measure), DEFAULT);
  }

  /** The table of that name, if it is one of ours and has rows of the measure. */
  Optional<NormTable> table(String name, Measure measure) {
    return Optional.ofNullable(tables.get(name))
        .filter(t -> t.rows().stream().anyMatch(r -> r.keys().equals(measure.tableKeys())));
  }

  /** Whether the table gives one figure for the better of both hands. */
  static boolean bestOfBoth(NormTable table) {
    return "best of both".equals(table.headers().get("hands"));
  }

  static boolean centilesOnly(NormTable table) {
    return table.rows().stream().allMatch(r -> r.sd().isEmpty());
  }

  /** The row's source, and the table's score as a source of its own where that was not read. */
  static List<Source> sources(NormTable table, Optional<NormRow> row) {
    ArrayList<Source> sources = new ArrayList<>();
    NormRow cited = row.orElse(table.rows().get(0));
    sources.add(table.source(cited));
    if (table.headers().getOrDefault("score_status", "").startsWith("memory")) {
      sources.add(new Source(table.citation() + " (score used)", SourceStatus.MEMORY));
    }
    return sources;
  }
}
