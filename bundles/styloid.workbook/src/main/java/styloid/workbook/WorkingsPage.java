package styloid.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import styloid.model.Result;
import styloid.spi.Report;

/**
 * How each result came about, step by step. A sheet of its own, since it is long and few will print
 * it; why a result has no value stands beside it on the sheet of its test.
 */
final class WorkingsPage {
  private static final List<Integer> WIDTHS = List.of(40, 18, 18, 80);

  private WorkingsPage() {}

  static Page of(Report report, String name, Banner banner, Say say) {
    PageBuilder page = new PageBuilder(name, banner);
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (Result result : report.context().results().all()) {
      if (result.value().isPresent()) {
        rows.add(row(result, say));
      }
    }
    if (rows.isEmpty()) {
      return page.across(say.own("summary.no-results"), Look.TEXT).build();
    }
    List<String> heads =
        List.of(
            say.own("head.result"),
            say.own("head.place"),
            say.own("head.rule"),
            say.own("head.steps"));
    return page.across(say.own("workings.lead"), Look.LEGEND)
        .printedSoFar()
        .table(heads, WIDTHS, rows)
        .build();
  }

  private static List<Box> row(Result result, Say say) {
    String place = say.texts().place(result.key().side(), result.key().digit());
    String what = say.test(result.key().test()) + ": " + say.result(result.key());
    String steps = result.why().steps().stream().map(say::message).collect(Collectors.joining(" "));
    return List.of(
        Box.words(what, Look.ROW_HEAD),
        Box.words(place.isEmpty() ? say.own("no-side") : place, Look.ROW_HEAD),
        Box.words(result.why().rule(), Look.TEXT),
        Box.words(steps, Look.TEXT));
  }
}
