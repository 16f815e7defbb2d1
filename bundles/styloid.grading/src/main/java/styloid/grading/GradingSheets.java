package styloid.grading;

import static styloid.grading.GradingDefinition.ID;
import static styloid.spi.SheetBuilder.column;
import static styloid.spi.SheetBuilder.common;
import static styloid.spi.SheetBuilder.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.spi.Sheet;
import styloid.spi.SheetBuilder;

/** The sheet of manual grading: a row a motion and side, then the grades by nerve and root. */
final class GradingSheets {
  private static final List<Side> SIDES = List.of(Side.RIGHT, Side.LEFT);
  private static final int NAME = 30;
  private static final int MOST_OF_SUMMARY = 8;

  /** What is recorded of a motion, in the order of the columns, with their widths. */
  private static final List<Map.Entry<String, Integer>> ITEMS =
      List.of(
          Map.entry("range", 12),
          Map.entry("hold", 12),
          Map.entry("hold-time", 8),
          Map.entry("reduced", 10),
          Map.entry("contraction", 10),
          Map.entry("pain", 7),
          Map.entry("substitution", 11),
          Map.entry("typed", 8),
          Map.entry("note", 24));

  private final SheetBuilder sheet;
  private final List<Motion> catalogue;
  private final List<Supply> supplies;

  private GradingSheets(SheetBuilder sheet, List<Motion> catalogue, List<Supply> supplies) {
    this.sheet = sheet;
    this.catalogue = catalogue;
    this.supplies = supplies;
  }

  static Sheet of(SheetBuilder sheet, List<Motion> catalogue, List<Supply> supplies) {
    GradingSheets sheets = new GradingSheets(sheet, catalogue, supplies);
    sheets.motions();
    sheets.supplies();
    return sheet.rest().sheet();
  }

  /** For the first page: the motions whose grade is not 5 at both sides, or in doubt. */
  static List<Sheet> summary(SheetBuilder sheet, List<Motion> catalogue) {
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Motion motion : catalogue) {
      for (Digit digit : new TreeSet<>(motion.digits())) {
        if (SIDES.stream().anyMatch(side -> notable(sheet, motion, side, digit))) {
          ArrayList<Sheet.Cell> row = new ArrayList<>();
          row.add(words(SheetBuilder.ofDigit(text("group." + motion.id()), digit)));
          SIDES.forEach(side -> row.add(sheet.again(result(motion.id() + "-grade", side, digit))));
          boolean doubtful =
              SIDES.stream()
                  .anyMatch(side -> !is(sheet, motion.id() + "-doubt", side, digit, "no-doubt"));
          row.add(doubtful ? words(text("sheet.doubtful")) : new Sheet.Blank());
          rows.add(row);
        }
      }
    }
    return sheet.summary(text("sheet.summary"), MOST_OF_SUMMARY, rows);
  }

  private static boolean notable(SheetBuilder sheet, Motion motion, Side side, Digit digit) {
    return !is(sheet, motion.id() + "-grade", side, digit, "5")
        || !is(sheet, motion.id() + "-doubt", side, digit, "no-doubt");
  }

  /** Whether a result is this answer; also true where it has no value. */
  private static boolean is(SheetBuilder sheet, String id, Side side, Digit digit, String code) {
    return sheet
        .find(result(id, side, digit))
        .flatMap(Result::value)
        .map(new Choice(code)::equals)
        .orElse(true);
  }

  private void motions() {
    ArrayList<Sheet.Column> columns =
        new ArrayList<>(
            List.of(
                new Sheet.Column(text("sheet.motion"), NAME),
                column("head.side", 8),
                new Sheet.Column(text("sheet.grade"), 11),
                new Sheet.Column(text("sheet.doubt"), 18)));
    ITEMS.forEach(
        item -> columns.add(new Sheet.Column(text("sheet." + item.getKey()), item.getValue())));
    columns.add(column("head.status", 10));
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Motion motion : catalogue) {
      for (Digit digit : new TreeSet<>(motion.digits())) {
        for (Side side : SIDES) {
          addMotion(motion, digit, side, rows);
        }
      }
    }
    sheet.table(text("sheet.motions"), 4, columns, rows);
  }

  private void addMotion(Motion motion, Digit digit, Side side, List<List<Sheet.Cell>> rows) {
    boolean any =
        ITEMS.stream().anyMatch(item -> sheet.recorded(key(motion, item.getKey(), side, digit)));
    if (!any) {
      return;
    }
    ResultKey grade = result(motion.id() + "-grade", side, digit);
    ResultKey doubt = result(motion.id() + "-doubt", side, digit);
    ArrayList<Sheet.Cell> row = new ArrayList<>();
    row.add(words(SheetBuilder.ofDigit(text("group." + motion.id()), digit)));
    row.add(words(common("side", side)));
    row.add(sheet.result(grade));
    row.add(sheet.result(doubt));
    ITEMS.forEach(item -> row.add(sheet.entry(key(motion, item.getKey(), side, digit))));
    row.add(sheet.status(List.of(grade, doubt)));
    rows.add(row);
  }

  private void supplies() {
    ArrayList<Sheet.Column> columns =
        new ArrayList<>(
            List.of(new Sheet.Column(text("sheet.supply"), NAME), column("head.side", 8)));
    for (String kind : Supply.RESULTS) {
      columns.add(new Sheet.Column(text("sheet." + kind), kind.equals("median") ? 18 : 11));
    }
    columns.add(column("head.status", 10));
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Supply supply : supplies) {
      for (Side side : SIDES) {
        List<ResultKey> keys =
            Supply.RESULTS.stream()
                .map(kind -> new ResultKey(ID, supply.results().get(kind), side, Digit.NONE))
                .toList();
        boolean graded =
            keys.stream().anyMatch(k -> sheet.find(k).flatMap(r -> r.value()).isPresent());
        if (graded) {
          ArrayList<Sheet.Cell> row = new ArrayList<>();
          row.add(words(text("sheet." + supply.id())));
          row.add(words(common("side", side)));
          keys.forEach(key -> row.add(sheet.result(key)));
          row.add(sheet.status(keys));
          rows.add(row);
        }
      }
    }
    sheet.table(text("sheet.supplies"), 2, columns, rows);
  }

  private static ItemKey key(Motion motion, String item, Side side, Digit digit) {
    return new ItemKey(ID, new ItemId(motion.id() + "-" + item), side, digit, 1);
  }

  private static ResultKey result(String id, Side side, Digit digit) {
    return new ResultKey(ID, new ResultId(id), side, digit);
  }

  private static Message text(String key) {
    return Message.of(ID, key);
  }
}
