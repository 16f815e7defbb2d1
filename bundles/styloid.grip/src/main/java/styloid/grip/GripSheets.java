package styloid.grip;

import static styloid.spi.SheetBuilder.column;
import static styloid.spi.SheetBuilder.common;
import static styloid.spi.SheetBuilder.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.spi.Sheet;
import styloid.spi.SheetBuilder;

/** The sheet of the test: trials, statistics beside the norm, side and change, then the curves. */
final class GripSheets {
  private static final int NAME = 26;
  private static final int WIDTH = 10;
  private static final int WORDS = 16;
  private static final List<Side> HANDS = List.of(Side.RIGHT, Side.LEFT);

  private final SheetBuilder sheet;

  private GripSheets(SheetBuilder sheet) {
    this.sheet = sheet;
  }

  static Sheet of(SheetBuilder sheet, NormChoice choice) {
    GripSheets sheets = new GripSheets(sheet);
    sheets.trials();
    sheets.statistics();
    sheets.comparisons();
    new GripCharts(sheet, choice).add();
    return sheet.rest().sheet();
  }

  /** For the first page: the mean of each hand, and where it stands against the norm. */
  static List<Sheet> summary(SheetBuilder sheet) {
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      for (String kind : List.of("mean-", "band-")) {
        String what = kind.equals("mean-") ? "sheet.mean-of" : "sheet.band-of";
        ArrayList<Sheet.Cell> row = new ArrayList<>();
        row.add(words(Say.step(what, name(measure))));
        HANDS.forEach(side -> row.add(sheet.again(Say.key(kind + measure.code(), side))));
        row.add(new Sheet.Blank());
        addUnlessBlank(rows, row, 1);
      }
    }
    return sheet.summary(Say.step("sheet.summary"), 2 * Measure.values().length, rows);
  }

  private void trials() {
    ArrayList<Sheet.Column> columns = new ArrayList<>(List.of(column("head.item", NAME)));
    for (Side side : HANDS) {
      for (int trial = 1; trial <= Measure.TRIALS; trial++) {
        columns.add(new Sheet.Column(common("head.side-trial." + side.code(), trial), WIDTH));
      }
      columns.add(column(side, Say.step("sheet.pain"), WIDTH));
    }
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      ArrayList<Sheet.Cell> row = new ArrayList<>(List.of(words(name(measure))));
      for (Side side : HANDS) {
        for (int trial = 1; trial <= Measure.TRIALS; trial++) {
          row.add(sheet.entry(key(measure.item(), side, trial)));
        }
        row.add(sheet.entry(key(new ItemId(measure.code() + "-pain"), side, 1)));
      }
      addUnlessBlank(rows, row, 1);
    }
    sheet.table(Say.step("sheet.trials"), 1, columns, rows);
  }

  private void statistics() {
    ArrayList<Sheet.Column> columns =
        new ArrayList<>(List.of(column("head.item", NAME), column("head.hand", WIDTH)));
    for (String what : List.of("mean", "max", "sd", "cv", "z", "percentile")) {
      columns.add(new Sheet.Column(Say.step("sheet." + what), WIDTH));
    }
    columns.add(new Sheet.Column(Say.step("sheet.band"), WORDS));
    columns.add(column("head.status", 10));
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      for (Side side : HANDS) {
        List<ResultKey> keys =
            Stream.of("mean-", "max-", "sd-", "cv-", "z-", "percentile-", "band-")
                .map(kind -> Say.key(kind + measure.code(), side))
                .toList();
        addUnlessBlank(
            rows, row(List.of(words(name(measure)), words(common("side", side))), keys), 2);
      }
    }
    List<ResultKey> best =
        Stream.of("", "best-power", "", "", "z-best", "percentile-best", "band-best")
            .map(id -> Say.key(id.isEmpty() ? "none" : id, Side.UNSIDED))
            .toList();
    addUnlessBlank(
        rows, row(List.of(words(name(Measure.POWER)), words(Say.step("sheet.better"))), best), 2);
    sheet.table(Say.step("sheet.statistics"), 2, columns, rows);
  }

  private ArrayList<Sheet.Cell> row(List<Sheet.Cell> heads, List<ResultKey> keys) {
    ArrayList<Sheet.Cell> row = new ArrayList<>(heads);
    keys.forEach(key -> row.add(sheet.result(key)));
    row.add(sheet.status(keys));
    return row;
  }

  private void comparisons() {
    List<Sheet.Column> columns =
        List.of(
            column("head.item", NAME),
            new Sheet.Column(Say.step("sheet.involved-ratio"), WIDTH),
            new Sheet.Column(Say.step("sheet.dominant-ratio"), WIDTH),
            column(Side.RIGHT, Say.step("sheet.change"), WIDTH),
            column(Side.RIGHT, Say.step("sheet.change-percent"), WIDTH),
            column(Side.LEFT, Say.step("sheet.change"), WIDTH),
            column(Side.LEFT, Say.step("sheet.change-percent"), WIDTH),
            column("head.status", 10));
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Measure measure : Measure.values()) {
      String code = measure.code();
      List<ResultKey> keys =
          List.of(
              Say.key("involved-ratio-" + code, Side.UNSIDED),
              Say.key("dominant-ratio-" + code, Side.UNSIDED),
              Say.key("change-" + code, Side.RIGHT),
              Say.key("change-percent-" + code, Side.RIGHT),
              Say.key("change-" + code, Side.LEFT),
              Say.key("change-percent-" + code, Side.LEFT));
      addUnlessBlank(rows, row(List.of(words(name(measure))), keys), 1);
    }
    sheet.table(Say.step("sheet.compared"), 1, columns, rows);
  }

  /** Leaves out what nobody began. */
  static void addUnlessBlank(List<List<Sheet.Cell>> rows, List<Sheet.Cell> row, int heads) {
    if (row.stream().skip(heads).anyMatch(cell -> !(cell instanceof Sheet.Blank))) {
      rows.add(row);
    }
  }

  static Message name(Measure measure) {
    return Say.step("item." + measure.code());
  }

  static ItemKey key(ItemId item, Side side, int trial) {
    return new ItemKey(Say.GRIP, item, side, Digit.NONE, trial);
  }
}
