package styloid.goniometry;

import static styloid.spi.SheetBuilder.column;
import static styloid.spi.SheetBuilder.words;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import styloid.model.Digit;
import styloid.model.Message;
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
  private static final int NAME = 30;
  private static final int WIDTH = 10;
  private static final int WORDS = 16;

  private final SheetBuilder sheet;

  private GoniometrySheets(SheetBuilder sheet) {
    this.sheet = sheet;
  }

  static Sheet of(SheetBuilder sheet) {
    GoniometrySheets sheets = new GoniometrySheets(sheet);
    sheets.arcs();
    for (Mode mode : Mode.values()) {
      sheets.comparisons(mode);
    }
    sheets.limits();
    new FingerGrids(sheet).add();
    sheets.changes();
    sheets.picture();
    return sheet.rest().sheet();
  }

  private static List<Plane> joints() {
    return Planes.ALL.stream().filter(plane -> !plane.region().equals(FingerGrids.REGION)).toList();
  }

  private static List<Motion> motions() {
    return joints().stream().flatMap(plane -> plane.ends().stream()).toList();
  }

  /** Start, end, arc and the written form of each joint plane, active and passive, both sides. */
  private void arcs() {
    ArrayList<Sheet.Column> columns =
        new ArrayList<>(
            List.of(
                new Sheet.Column(text("sheet.joint"), NAME),
                new Sheet.Column(text("sheet.mode"), 8)));
    for (Side side : SIDES) {
      for (String part : List.of("start", "end")) {
        columns.add(column(side, text("sheet." + part), WIDTH));
        columns.add(column(side, text("sheet.end-feel-" + part), WIDTH));
      }
      columns.add(column(side, text("sheet.arc"), WIDTH));
      columns.add(column(side, text("sheet.written"), 14));
    }
    columns.add(column("head.status", 12));
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Plane plane : joints()) {
      for (Mode mode : Mode.values()) {
        addArc(plane, mode, rows);
      }
    }
    sheet.table(text("sheet.joints"), 2, columns, rows);
  }

  private void addArc(Plane plane, Mode mode, List<List<Sheet.Cell>> rows) {
    Digit digit = new TreeSet<>(plane.digits()).first();
    ArrayList<Sheet.Cell> row = new ArrayList<>();
    ArrayList<ResultKey> results = new ArrayList<>();
    String name = plane.hasArc() ? "sheet.from-to" : "sheet.one-end";
    row.add(
        words(
            text(
                name,
                text("group." + plane.id()),
                text("motion." + plane.away().id()),
                text("motion." + plane.toward().orElse(plane.away()).id()))));
    row.add(words(text("sheet." + mode.code())));
    for (Side side : SIDES) {
      Place place = new Place(side, digit);
      // What has one end only has it as its end; it starts at neutral.
      List<Motion> ends = plane.ends();
      if (ends.size() == 1) {
        row.add(new Sheet.Blank());
        row.add(new Sheet.Blank());
      }
      for (Motion end : ends) {
        row.add(sheet.entry(place.key(end, mode)));
        row.add(
            mode == Mode.PASSIVE ? sheet.entry(place.key(end.endFeel())) : new Sheet.Blank());
      }
      for (String kind : List.of("-arc-", "-written-")) {
        ResultKey key = place.result(new ResultId(plane.id() + kind + mode.code()));
        results.add(key);
        row.add(sheet.result(key));
      }
    }
    row.add(sheet.status(results));
    addUnlessBlank(rows, row, 2);
  }

  private void comparisons(Mode mode) {
    String code = "-" + mode.code();
    List<String> kinds =
        mode == Mode.ACTIVE
            ? List.of("side-deficit", "reference-deficit", "reference-percent", "z", "percentile")
            : List.of("side-deficit", "reference-deficit", "mean-deficit");
    List<String> after =
        List.of("deficit", "hyperextension");
    ArrayList<String> all = new ArrayList<>(kinds);
    all.addAll(after);
    perSide("sheet.compared" + code, all, code + "-");
  }

  private void limits() {
    perSide("sheet.limits", List.of("lag", "limit"), "-");
  }

  private void changes() {
    for (Mode mode : Mode.values()) {
      String code = "-" + mode.code();
      perSide("sheet.changed" + code, List.of("change", "change-meaning"), code + "-");
    }
  }

  /** A row a motion: these results of its right, then of its left. */
  private void perSide(String heading, List<String> kinds, String before) {
    ArrayList<Sheet.Column> columns =
        new ArrayList<>(List.of(new Sheet.Column(text("sheet.motion"), NAME)));
    for (Side side : SIDES) {
      for (String kind : kinds) {
        int width = kind.equals("limit") || kind.equals("change-meaning") ? WORDS : WIDTH;
        columns.add(column(side, text("sheet." + kind), width));
      }
    }
    columns.add(column("head.status", 12));
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Motion motion : motions()) {
      ArrayList<Sheet.Cell> row = new ArrayList<>(List.of(words(text("motion." + motion.id()))));
      ArrayList<ResultKey> keys = new ArrayList<>();
      for (Side side : SIDES) {
        Place place = new Place(side, new TreeSet<>(motion.digits()).first());
        kinds.forEach(kind -> keys.add(place.result(new ResultId(motion.id() + before + kind))));
      }
      keys.forEach(key -> row.add(sheet.result(key)));
      row.add(sheet.status(keys));
      addUnlessBlank(rows, row, 1);
    }
    sheet.table(text(heading), 1, columns, rows);
  }

  /** How far each active motion stays short of the reference, both sides beside each other. */
  private void picture() {
    for (String kind : List.of("reference-deficit", "side-deficit")) {
      ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
      for (Motion motion : motions()) {
        ArrayList<Sheet.Cell> row = new ArrayList<>(List.of(words(text("motion." + motion.id()))));
        for (Side side : SIDES) {
          Place place = new Place(side, new TreeSet<>(motion.digits()).first());
          row.add(drawn(place.result(new ResultId(motion.id() + "-active-" + kind))));
        }
        addUnlessBlank(rows, row, 1);
      }
      List<Sheet.Column> columns =
          List.of(
              new Sheet.Column(text("sheet.motion"), NAME),
              column("head.side.right", WIDTH),
              column("head.side.left", WIDTH));
      Sheet.Table table = new Sheet.Table(text("chart." + kind), columns, rows);
      if (kind.equals("reference-deficit") || noReference()) {
        sheet.chart(new Sheet.Chart(table, Unit.DEGREE, List.of(Trace.BARS, Trace.BARS)));
      }
    }
  }

  /** Whether the chosen reference gave no deficit at all, so that only the other side is left. */
  private boolean noReference() {
    return motions().stream()
        .flatMap(
            motion ->
                SIDES.stream()
                    .map(side -> new Place(side, new TreeSet<>(motion.digits()).first()))
                    .map(p -> p.result(new ResultId(motion.id() + "-active-reference-deficit"))))
        .noneMatch(key -> sheet.find(key).flatMap(r -> r.quantity()).isPresent());
  }

  /** A number read from its own cell, without that cell's name; blank where there is none. */
  private Sheet.Cell drawn(ResultKey key) {
    return sheet
        .find(key)
        .flatMap(result -> result.quantity())
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
