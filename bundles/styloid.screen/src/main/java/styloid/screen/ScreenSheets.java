package styloid.screen;

import static styloid.screen.ScreenDefinition.ID;
import static styloid.spi.SheetBuilder.column;
import static styloid.spi.SheetBuilder.words;

import java.util.ArrayList;
import java.util.List;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.spi.Sheet;
import styloid.spi.SheetBuilder;

/** The sheet of the screen: one table of motions by sides, then the areas in numbers. */
final class ScreenSheets {
  private static final List<Side> SIDES = List.of(Side.RIGHT, Side.LEFT);

  /** Endings of a motion's items, with the key of their column's head and its width. */
  private record Part(String ending, String head, int width) {}

  private static final List<Part> PARTS =
      List.of(
          new Part("", "sheet.motion", 12),
          new Part("-pain", "sheet.pain", 8),
          new Part("-pain-site", "sheet.where", 16),
          new Part("-quality", "sheet.quality", 18),
          new Part("-decision", "sheet.decision", 14));

  private ScreenSheets() {}

  static Sheet of(SheetBuilder sheet) {
    motions(sheet);
    areas(sheet);
    return sheet.rest().sheet();
  }

  /** For the first page: how many motions go on to be measured and graded. */
  static List<Sheet> summary(SheetBuilder sheet) {
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    ArrayList<Sheet.Cell> row = new ArrayList<>(List.of(words(text("result.put-forward"))));
    SIDES.forEach(side -> row.add(sheet.again(result("put-forward", side))));
    row.add(new Sheet.Blank());
    if (row.stream().skip(1).anyMatch(cell -> !(cell instanceof Sheet.Blank))) {
      rows.add(row);
    }
    return sheet.summary(text("test.title"), 1, rows);
  }

  private static void motions(SheetBuilder sheet) {
    ArrayList<Sheet.Column> columns =
        new ArrayList<>(
            List.of(column("head.region", 14), new Sheet.Column(text("sheet.motion-head"), 31)));
    for (Side side : SIDES) {
      for (Part part : PARTS) {
        columns.add(column(side, text(part.head()), part.width()));
      }
      columns.add(column(side, text("sheet.next"), 16));
    }
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Area area : Area.all()) {
      for (String motion : area.motions()) {
        boolean recorded =
            SIDES.stream()
                .anyMatch(
                    side -> PARTS.stream().anyMatch(p -> sheet.recorded(key(motion, p, side))));
        if (recorded) {
          rows.add(row(sheet, area, motion));
        }
      }
    }
    sheet.table(text("sheet.motions"), 2, columns, rows);
  }

  private static List<Sheet.Cell> row(SheetBuilder sheet, Area area, String motion) {
    ArrayList<Sheet.Cell> row = new ArrayList<>();
    row.add(words(text("group." + area.id())));
    row.add(words(text("item." + motion)));
    for (Side side : SIDES) {
      PARTS.forEach(part -> row.add(sheet.entry(key(motion, part, side))));
      row.add(sheet.result(result(motion + "-next", side)));
    }
    return row;
  }

  private static void areas(SheetBuilder sheet) {
    ArrayList<Sheet.Column> columns =
        new ArrayList<>(List.of(column("head.region", 14), column("head.status", 10)));
    for (Side side : SIDES) {
      columns.add(column(side, text("sheet.not-full"), 12));
      columns.add(column(side, text("sheet.painful"), 8));
    }
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Area area : Area.all()) {
      List<String> ids = List.of(area.id() + "-not-full", area.id() + "-painful");
      addRow(sheet, rows, text("group." + area.id()), ids);
    }
    addRow(sheet, rows, text("sheet.all"), List.of("put-forward"));
    sheet.table(text("sheet.areas"), 2, columns, rows);
  }

  private static void addRow(
      SheetBuilder sheet, List<List<Sheet.Cell>> rows, Message name, List<String> ids) {
    ArrayList<Sheet.Cell> cells = new ArrayList<>();
    ArrayList<ResultKey> keys = new ArrayList<>();
    for (Side side : SIDES) {
      ids.forEach(id -> keys.add(result(id, side)));
    }
    keys.forEach(key -> cells.add(sheet.result(key)));
    if (ids.size() == 1) {
      cells.add(1, new Sheet.Blank());
      cells.add(new Sheet.Blank());
    }
    if (cells.stream().anyMatch(cell -> !(cell instanceof Sheet.Blank))) {
      ArrayList<Sheet.Cell> row = new ArrayList<>(List.of(words(name), sheet.status(keys)));
      row.addAll(cells);
      rows.add(row);
    }
  }

  private static ItemKey key(String motion, Part part, Side side) {
    return new ItemKey(ID, new ItemId(motion + part.ending()), side, Digit.NONE, 1);
  }

  private static ResultKey result(String id, Side side) {
    return new ResultKey(ID, new ResultId(id), side, Digit.NONE);
  }

  private static Message text(String key) {
    return Message.of(ID, key);
  }
}
