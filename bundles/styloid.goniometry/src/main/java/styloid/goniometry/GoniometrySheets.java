package styloid.goniometry;

import static styloid.spi.SheetBuilder.column;
import static styloid.spi.SheetBuilder.common;
import static styloid.spi.SheetBuilder.words;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import styloid.model.Message;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.spi.Sheet;
import styloid.spi.Sheet.Trace;
import styloid.spi.SheetBuilder;
import styloid.spi.Sheets;

/** The sheet of goniometry: joints first, then the fingers in grids, then pictures of deficits. */
final class GoniometrySheets {
  static final List<Side> SIDES = List.of(Side.RIGHT, Side.LEFT);
  private static final int NAME = 26;
  private static final int WIDTH = 9;
  private static final int WORDS = 12;
  private static final int STATUS = 10;

  private final SheetBuilder sheet;

  private GoniometrySheets(SheetBuilder sheet) {
    this.sheet = sheet;
  }

  static Sheet of(SheetBuilder sheet) {
    GoniometrySheets sheets = new GoniometrySheets(sheet);
    sheets.arcs();
    sheets.results(
        "sheet.compared-active",
        "-active-",
        List.of(
            "side-deficit",
            "reference-deficit",
            "reference-percent",
            "z",
            "percentile",
            "deficit",
            "hyperextension"));
    sheets.results(
        "sheet.compared-passive",
        "-passive-",
        List.of("side-deficit", "reference-deficit", "mean-deficit", "deficit", "hyperextension"));
    sheets.results("sheet.limits", "-", List.of("lag", "limit"));
    for (Mode mode : Mode.values()) {
      sheets.results(
          "sheet.changed-" + mode.code(),
          "-" + mode.code() + "-",
          List.of("change", "change-meaning"));
    }
    FingerGrids fingers = new FingerGrids(sheet);
    fingers.add();
    sheets.pictures();
    fingers.picture();
    return sheet.rest().sheet();
  }

  private static List<Plane> joints() {
    return Planes.ALL.stream().filter(plane -> plane.region() != FingerGrids.REGION).toList();
  }

  private static List<Motion> motions() {
    return joints().stream().flatMap(plane -> plane.ends().stream()).toList();
  }

  private static Place place(Motion motion, Side side) {
    return new Place(side, new TreeSet<>(motion.digits()).first());
  }

  /** Start, end, arc and the written form of each joint plane: a row a side and mode. */
  private void arcs() {
    List<Sheet.Column> columns =
        List.of(
            new Sheet.Column(text("sheet.joint"), NAME),
            column("head.side", 7),
            new Sheet.Column(text("sheet.mode"), WIDTH),
            new Sheet.Column(text("sheet.start"), WIDTH),
            new Sheet.Column(text("sheet.end-feel-start"), WIDTH),
            new Sheet.Column(text("sheet.end"), WIDTH),
            new Sheet.Column(text("sheet.end-feel-end"), WIDTH),
            new Sheet.Column(text("sheet.arc"), WIDTH),
            new Sheet.Column(text("sheet.written"), WIDTH),
            column("head.status", STATUS));
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Plane plane : joints()) {
      for (Mode mode : Mode.values()) {
        SIDES.forEach(side -> addArc(plane, mode, side, rows));
      }
    }
    sheet.table(text("sheet.joints"), 3, columns, rows);
  }

  private void addArc(Plane plane, Mode mode, Side side, List<List<Sheet.Cell>> rows) {
    Place place = place(plane.away(), side);
    ArrayList<Sheet.Cell> row = new ArrayList<>();
    row.add(
        words(
            plane
                .toward()
                .map(
                    toward ->
                        text(
                            "sheet.from-to",
                            text("motion." + plane.away().id()),
                            text("motion." + toward.id())))
                .orElseGet(() -> text("motion." + plane.away().id()))));
    row.add(words(common("side", side)));
    row.add(words(text("sheet." + mode.code())));
    if (!plane.hasArc()) {
      // It starts at neutral and has one end only.
      row.add(new Sheet.Blank());
      row.add(new Sheet.Blank());
    }
    for (Motion end : plane.ends()) {
      row.add(sheet.entry(place.key(end, mode)));
      row.add(mode == Mode.PASSIVE ? sheet.entry(place.key(end.endFeel())) : new Sheet.Blank());
    }
    List<ResultKey> results =
        List.of(
            place.result(new ResultId(plane.id() + "-arc-" + mode.code())),
            place.result(new ResultId(plane.id() + "-written-" + mode.code())));
    results.forEach(key -> row.add(sheet.result(key)));
    row.add(sheet.status(results));
    addUnlessBlank(rows, row, 3);
  }

  /** A row a motion and side with these of its results. */
  private void results(String heading, String before, List<String> kinds) {
    ArrayList<Sheet.Column> columns =
        new ArrayList<>(
            List.of(new Sheet.Column(text("sheet.motion"), NAME), column("head.side", 7)));
    for (String kind : kinds) {
      int width = kind.equals("limit") || kind.equals("change-meaning") ? WORDS : WIDTH;
      columns.add(new Sheet.Column(text("sheet." + kind), width));
    }
    columns.add(column("head.status", STATUS));
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Motion motion : motions()) {
      for (Side side : SIDES) {
        ArrayList<Sheet.Cell> row = new ArrayList<>();
        row.add(words(text("motion." + motion.id())));
        row.add(words(common("side", side)));
        List<ResultKey> keys =
            kinds.stream()
                .map(kind -> place(motion, side).result(new ResultId(motion.id() + before + kind)))
                .toList();
        keys.forEach(key -> row.add(sheet.result(key)));
        row.add(sheet.status(keys));
        addUnlessBlank(rows, row, 2);
      }
    }
    sheet.table(text(heading), 2, columns, rows);
  }

  /** Degrees short of the reference; of the other side where the reference gives none. */
  private void pictures() {
    boolean referred =
        motions().stream()
            .flatMap(motion -> SIDES.stream().map(side -> deficit(motion, side, "reference")))
            .anyMatch(key -> sheet.find(key).flatMap(Result::quantity).isPresent());
    String against = referred ? "reference" : "side";
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Motion motion : motions()) {
      ArrayList<Sheet.Cell> row = new ArrayList<>(List.of(words(text("motion." + motion.id()))));
      SIDES.forEach(side -> row.add(drawn(sheet, deficit(motion, side, against))));
      addUnlessBlank(rows, row, 1);
    }
    List<Sheet.Column> columns =
        List.of(
            new Sheet.Column(text("sheet.motion"), NAME),
            column("head.side.right", 7),
            column("head.side.left", WIDTH));
    Sheet.Table table = new Sheet.Table(text("chart." + against + "-deficit"), columns, rows);
    sheet.chart(new Sheet.Chart(table, Unit.DEGREE, List.of(Trace.BARS, Trace.BARS)));
  }

  private static ResultKey deficit(Motion motion, Side side, String against) {
    return place(motion, side)
        .result(new ResultId(motion.id() + "-active-" + against + "-deficit"));
  }

  /** A number read from its own cell, without that cell's name; blank where there is none. */
  static Sheet.Cell drawn(SheetBuilder sheet, ResultKey key) {
    return sheet
        .find(key)
        .flatMap(Result::quantity)
        .<Sheet.Cell>map(q -> Sheets.copy(key, q, 0))
        .orElseGet(Sheet.Blank::new);
  }

  static void addUnlessBlank(List<List<Sheet.Cell>> rows, List<Sheet.Cell> row, int heads) {
    if (row.stream().skip(heads).anyMatch(cell -> !(cell instanceof Sheet.Blank))) {
      rows.add(row);
    }
  }

  static Message text(String key, Object... args) {
    return Message.of(Goniometry.ID, key, args);
  }
}
