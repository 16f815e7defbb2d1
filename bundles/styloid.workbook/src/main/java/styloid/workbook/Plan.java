package styloid.workbook;

import java.util.ArrayList;
import java.util.List;
import styloid.spi.Paper;
import styloid.spi.Report;
import styloid.spi.Sheet;

/** Plans the whole workbook of one evaluation. */
final class Plan {
  private Plan() {}

  static Book of(Report report) {
    Say say = new Say(report.texts(), report.definitions());
    Banner banner = Banner.of(report, say);
    SheetNames names = new SheetNames();
    ArrayList<Page> pages = new ArrayList<>();
    PartPages parts = new PartPages(report, say);
    pages.add(SummaryPage.of(report, names.of(say.own("sheet.summary")), banner, parts, say));
    List<String> own =
        List.of("sheet.change", "sheet.entries", "sheet.method", "sheet.cautions", "sheet.workings")
            .stream()
            .map(key -> names.of(say.own(key)))
            .toList();
    for (Report.Part part : report.parts()) {
      for (Sheet sheet : part.sheets().stream().filter(s -> !s.ofSummary()).toList()) {
        pages.add(parts.page(sheet, names.of(say.message(sheet.title())), banner));
      }
    }
    if (ChangePage.applies(report)) {
      pages.add(ChangePage.of(report, own.get(0), banner, say));
    }
    pages.add(EntriesPage.of(report, own.get(1), banner, say));
    pages.add(MethodPage.of(report, own.get(2), banner, say));
    pages.add(CautionsPage.of(report, own.get(3), banner, say));
    pages.add(WorkingsPage.of(report, own.get(4), banner, say));
    Book.Edge edge = edge(report, banner, say);
    return Book.of(
        pages.stream().map(page -> Pagination.of(page, edge.letter())).toList(),
        edge,
        report.context().evaluation().date(),
        report.context().evaluation().therapist().value(),
        say);
  }

  private static Book.Edge edge(Report report, Banner banner, Say say) {
    return new Book.Edge(
        banner.edge(),
        SafeText.forPageEdge(Banner.state(report, say), 40),
        SafeText.forPageEdge(say.date(report.context().evaluation().date()), 40),
        say.own("edge.page", "&P", "&N"),
        report.paper() == Paper.LETTER);
  }
}
