package styloid.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import styloid.model.Result;
import styloid.model.Source;
import styloid.spi.Report;
import styloid.spi.Setting;
import styloid.spi.TestDefinition;

/**
 * Method and sources: each source used once, the tests with their versions, each result's steps.
 */
final class MethodPage {
  private static final List<Integer> WIDTHS = List.of(38, 16, 26, 50);

  /** Uses named for one source; the sheet of workings says the rule of every result. */
  private static final int MOST_USES = 4;

  private MethodPage() {}

  /** What one source was used for. */
  private record Use(TreeSet<String> rules, TreeSet<String> what) {
    Use() {
      this(new TreeSet<>(), new TreeSet<>());
    }
  }

  static Page of(Report report, String name, Banner banner, Say say) {
    PageBuilder page = new PageBuilder(name, banner);
    page.across(say.own("method.lead"), Look.LEGEND);
    sources(page, report, say);
    tests(page, report, say);
    settings(page, report, say);
    return page.build();
  }

  private static void sources(PageBuilder page, Report report, Say say) {
    Map<Source, Use> uses = new LinkedHashMap<>();
    for (Result result : report.context().results().all()) {
      for (Source source : result.why().sources()) {
        Use use = uses.computeIfAbsent(source, s -> new Use());
        use.rules().add(result.why().rule());
        use.what().add(say.test(result.key().test()) + ": " + say.result(result.key()));
      }
    }
    for (Report.Caution caution : report.cautions()) {
      Use use = uses.computeIfAbsent(caution.source(), s -> new Use());
      use.what().add(caution.test() + ": " + say.own("method.cautions"));
    }
    page.heading(say.own("method.sources"));
    if (uses.isEmpty()) {
      page.across(say.own("method.none"), Look.TEXT);
      return;
    }
    ArrayList<List<Box>> rows = new ArrayList<>();
    uses.forEach((source, use) -> rows.add(source(source, use, say)));
    List<String> heads =
        List.of(
            say.own("head.source"),
            say.own("head.status"),
            say.own("head.rule"),
            say.own("head.used-for"));
    page.narrowTable(heads, WIDTHS, rows);
  }

  private static List<Box> source(Source source, Use use, Say say) {
    String rules = use.rules().isEmpty() ? say.own("nothing") : String.join(", ", use.rules());
    return List.of(
        Box.words(source.citation(), Look.ROW_HEAD),
        Box.words(say.texts().word(source.status()), Look.TEXT),
        Box.words(rules, Look.TEXT),
        Box.words(uses(use.what(), say), Look.TEXT));
  }

  private static String uses(TreeSet<String> what, Say say) {
    String named = what.stream().limit(MOST_USES).collect(Collectors.joining("; "));
    int more = what.size() - MOST_USES;
    return more <= 0 ? named : say.own("method.more-uses", named, more);
  }

  private static void settings(PageBuilder page, Report report, Say say) {
    Map<String, String> choices = report.context().evaluation().choices();
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (TestDefinition test : report.definitions()) {
      String scope = test.id().value();
      for (Setting setting : test.settings()) {
        String code = choices.getOrDefault(setting.key(), setting.preset());
        String words = say.texts().find(scope, setting.labelKey(code)).orElse(code);
        boolean chosen = choices.containsKey(setting.key());
        rows.add(
            List.of(
                Box.words(say.test(test.id()), Look.ROW_HEAD),
                Box.words(say.texts().label(scope, setting.labelKey()), Look.TEXT),
                Box.words(chosen ? words : say.own("method.setting-preset", words), Look.TEXT)));
      }
    }
    if (rows.isEmpty()) {
      return;
    }
    page.heading(say.own("method.settings"));
    List<String> heads =
        List.of(say.own("head.test"), say.own("head.setting"), say.own("head.chosen"));
    page.narrowTable(heads, List.of(), rows);
  }

  private static void tests(PageBuilder page, Report report, Say say) {
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (TestDefinition test : report.definitions()) {
      String used = report.context().evaluation().versions().get(test.id());
      String first = used == null ? test.version() : used;
      rows.add(
          List.of(
              Box.words(say.test(test.id()), Look.ROW_HEAD),
              Box.words(test.version(), Look.TEXT),
              Box.words(first, Look.TEXT)));
    }
    if (rows.isEmpty()) {
      return;
    }
    page.heading(say.own("method.tests"));
    List<String> heads =
        List.of(say.own("head.test"), say.own("head.version"), say.own("head.first-version"));
    page.narrowTable(heads, List.of(), rows);
  }
}
