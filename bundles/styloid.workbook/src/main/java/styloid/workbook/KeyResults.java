package styloid.workbook;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import styloid.model.Digit;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Value;
import styloid.spi.Report;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;

/**
 * The results of the summary: of each test first those that belong to it as a whole, then those in
 * which the sides differ, up to a number that leaves the summary on one page.
 */
final class KeyResults {
  private static final int MOST_OF_A_TEST = 4;

  private KeyResults() {}

  private record Spot(ResultId result, Digit digit) {}

  /** {@code summed} are the tests that said themselves what belongs on the first page. */
  static void add(PageBuilder page, Report report, Set<TestId> summed, Say say) {
    if (report.context().results().all().stream().allMatch(r -> r.value().isEmpty())) {
      page.across(say.own("summary.no-results"), Look.TEXT);
    }
    for (TestDefinition test : report.definitions()) {
      List<Map<Side, Result>> found = summed.contains(test.id()) ? List.of() : found(test, report);
      List<Map<Side, Result>> shown = shown(test, found, say);
      if (shown.isEmpty()) {
        continue;
      }
      ArrayList<List<Box>> rows = new ArrayList<>();
      shown.forEach(one -> rows.add(row(test, one, say)));
      boolean unsided = shown.stream().anyMatch(one -> one.containsKey(Side.UNSIDED));
      page.heading(say.test(test.id()));
      SummaryPage.sides(page, say.own("head.result"), say.own("head.status"), rows, unsided, say);
      int more = found.size() - shown.size();
      if (more > 0) {
        page.across(say.own("summary.more-results", more), Look.TEXT);
      }
    }
  }

  /** Results with at least one value, both sides together. */
  private static List<Map<Side, Result>> found(TestDefinition test, Report report) {
    LinkedHashMap<Spot, EnumMap<Side, Result>> whole = new LinkedHashMap<>();
    LinkedHashMap<Spot, EnumMap<Side, Result>> grouped = new LinkedHashMap<>();
    for (Result result : report.context().results().of(test.id())) {
      boolean ofGroup = test.result(result.key()).flatMap(ResultDefinition::group).isPresent();
      (ofGroup ? grouped : whole)
          .computeIfAbsent(
              new Spot(result.key().result(), result.key().digit()), s -> new EnumMap<>(Side.class))
          .put(result.key().side(), result);
    }
    ArrayList<Map<Side, Result>> all = new ArrayList<>(whole.values());
    all.addAll(grouped.values());
    all.removeIf(sides -> sides.values().stream().allMatch(r -> r.value().isEmpty()));
    return all;
  }

  private static List<Map<Side, Result>> shown(
      TestDefinition test, List<Map<Side, Result>> found, Say say) {
    ArrayList<Map<Side, Result>> shown = new ArrayList<>();
    for (Map<Side, Result> one : found) {
      Result any = one.values().iterator().next();
      boolean whole = test.result(any.key()).flatMap(ResultDefinition::group).isEmpty();
      Set<String> different = new LinkedHashSet<>();
      one.values().forEach(result -> different.add(text(test, result, say)));
      if (shown.size() < MOST_OF_A_TEST && (whole || different.size() > 1 || one.size() == 1)) {
        shown.add(one);
      }
    }
    return shown;
  }

  /** What a reader sees of a result. */
  private static String text(TestDefinition test, Result result, Say say) {
    int decimals = test.result(result.key()).map(ResultDefinition::decimals).orElse(1);
    return result
        .quantity()
        .map(q -> say.texts().quantity(q, decimals))
        .or(() -> result.value().map(value -> say.resultValue(result.key(), value)))
        .orElse("");
  }

  private static List<Box> row(TestDefinition test, Map<Side, Result> sides, Say say) {
    Result any = sides.values().iterator().next();
    Set<String> status = new LinkedHashSet<>();
    sides.values().forEach(r -> status.add(say.texts().word(r.why().status())));
    return List.of(
        Box.words(say.itemOfDigit(say.result(any.key()), any.key().digit()), Look.ROW_HEAD),
        box(test, sides.get(Side.RIGHT), say),
        box(test, sides.get(Side.LEFT), say),
        Box.words(status.stream().collect(Collectors.joining(", ")), Look.TEXT),
        box(test, sides.get(Side.UNSIDED), say));
  }

  private static Box box(TestDefinition test, Result result, Say say) {
    if (result == null) {
      return Box.words(say.own("nothing"), Look.VALUE);
    }
    return result
        .outcome()
        .match(
            value -> value(test, result, value, say),
            incomplete -> Box.words(say.message(incomplete.reason()), Look.CALCULATED),
            unavailable -> Box.words(say.message(unavailable.reason()), Look.CALCULATED));
  }

  /** A number is read from the cell on the test's own sheet. */
  private static Box value(TestDefinition test, Result result, Value value, Say say) {
    if (value instanceof Quantity q) {
      int decimals = test.result(result.key()).map(ResultDefinition::decimals).orElse(1);
      return new Box.Live(
          result.key().cellName(),
          q.amount().doubleValue(),
          Formats.of(q.unit(), decimals),
          Optional.empty());
    }
    return Box.words(say.resultValue(result.key(), value), Look.CALCULATED);
  }
}
