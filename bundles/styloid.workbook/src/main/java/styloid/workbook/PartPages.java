package styloid.workbook;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import styloid.model.Entry;
import styloid.model.Message;
import styloid.model.TestId;
import styloid.spi.Report;
import styloid.spi.Sheet;

/** The sheets the tests gave, as pages. */
final class PartPages {
  /** What a cell may be called in every spreadsheet without being taken for an address. */
  private static final String NAME = "[a-z][a-z0-9_]*__[a-z0-9_]+";

  private final Say say;
  private final Set<String> entered = new HashSet<>();

  PartPages(Report report, Say say) {
    this.say = say;
    for (Entry entry : report.ledger().entries()) {
      entered.add(entry.key().cellName());
    }
  }

  Page page(Sheet sheet, String name, Banner banner) {
    PageBuilder page = new PageBuilder(name, banner).freezeFirstColumn();
    page.across(say.own("legend"), Look.LEGEND);
    blocks(page, sheet);
    if (sheet.blocks().isEmpty()) {
      page.across(say.own("sheet.empty"), Look.TEXT);
    }
    return page.build();
  }

  private void blocks(PageBuilder page, Sheet sheet) {
    for (Sheet.Block block : sheet.blocks()) {
      if (block instanceof Sheet.Chart chart) {
        chart(page, chart);
      } else if (block instanceof Sheet.Table table) {
        page.heading(say.message(table.heading()));
        table(page, table, this::box);
      } else if (block instanceof Sheet.Paragraph paragraph) {
        page.across(say.message(paragraph.text()), look(paragraph.role()));
      }
    }
  }

  /** Adds what the tests have for the first page; answers which tests had something. */
  Set<TestId> summaries(PageBuilder page, Report report) {
    HashSet<TestId> summed = new HashSet<>();
    for (Report.Part part : report.parts()) {
      for (Sheet sheet : part.sheets()) {
        if (sheet.ofSummary()) {
          summed.add(part.definition().id());
          blocks(page, sheet);
        }
      }
    }
    return summed;
  }

  private static Look look(Sheet.Role role) {
    return switch (role) {
      case HEADING -> Look.HEADING;
      case TEXT -> Look.TEXT;
      case CAUTION -> Look.CAUTION;
    };
  }

  private void chart(PageBuilder page, Sheet.Chart chart) {
    String title = say.message(chart.table().heading());
    String sign = chart.unit().sign();
    page.picture(new Picture(title, sign, chart.traces(), chart.table().rows().size()));
    table(page, named(chart.table()), this::drawn);
  }

  /** The table of a chart: what is no number is said with the name of its row, not in the cell. */
  private Sheet.Table named(Sheet.Table table) {
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (List<Sheet.Cell> cells : table.rows()) {
      ArrayList<Sheet.Cell> row = new ArrayList<>(cells);
      for (int i = 1; i < cells.size(); i++) {
        if (cells.get(i) instanceof Sheet.Words absent) {
          String name = say.message(((Sheet.Words) row.get(0)).text());
          String column = say.message(table.columns().get(i).head());
          String both = say.own("chart.absent", name, column, say.message(absent.text()));
          row.set(0, new Sheet.Words(Message.verbatim(both), Optional.empty()));
          row.set(i, new Sheet.Blank());
        }
      }
      rows.add(row);
    }
    return new Sheet.Table(table.heading(), table.columns(), rows);
  }

  /** No cell at all where there is no number, or a spreadsheet would draw the text as zero. */
  private Box drawn(Sheet.Cell cell, boolean first) {
    return cell instanceof Sheet.Blank ? Box.gap() : box(cell, first);
  }

  private void table(
      PageBuilder page, Sheet.Table table, BiFunction<Sheet.Cell, Boolean, Box> box) {
    ArrayList<String> heads = new ArrayList<>();
    ArrayList<Integer> widths = new ArrayList<>();
    for (Sheet.Column column : table.columns()) {
      heads.add(say.message(column.head()));
      widths.add(column.width());
    }
    ArrayList<List<Box>> rows = new ArrayList<>();
    for (List<Sheet.Cell> cells : table.rows()) {
      ArrayList<Box> row = new ArrayList<>();
      cells.forEach(cell -> row.add(box.apply(cell, row.isEmpty())));
      rows.add(row);
    }
    page.narrowTable(heads, widths, rows);
  }

  private Box box(Sheet.Cell cell, boolean first) {
    return cell.match(
        words -> words(words, first),
        figure ->
            new Box.Figure(
                figure.amount().doubleValue(),
                Formats.of(figure.unit(), figure.amount().scale()),
                Look.ENTERED,
                sound(figure.name())),
        this::derived,
        blank -> Box.words(say.own("nothing"), Look.VALUE));
  }

  private Box words(Sheet.Words words, boolean first) {
    Optional<String> name = sound(words.name());
    Look look = name.filter(entered::contains).isPresent() ? Look.ENTERED : Look.CALCULATED;
    Look plain = first ? Look.ROW_HEAD : Look.TEXT;
    String text = say.message(words.text());
    if (text.isEmpty() && name.isEmpty()) {
      return Box.words(say.own("nothing"), plain);
    }
    return new Box.Words(text, name.isPresent() ? look : plain, name);
  }

  private Box derived(Sheet.Derived derived) {
    String format = Formats.of(derived.unit(), derived.decimals());
    double value = derived.amount().doubleValue();
    Optional<String> name = sound(derived.name());
    return derived
        .formula()
        .<Box>map(formula -> new Box.Live(formula, value, format, name))
        .orElseGet(() -> new Box.Figure(value, format, Look.CALCULATED, name));
  }

  private static Optional<String> sound(Optional<String> name) {
    return name.filter(n -> n.length() <= 255 && n.matches(NAME));
  }
}
