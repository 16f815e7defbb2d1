package styloid.goniometry;

import static styloid.goniometry.GoniometrySheets.addUnlessBlank;
import static styloid.goniometry.GoniometrySheets.text;
import static styloid.spi.SheetBuilder.column;
import static styloid.spi.SheetBuilder.common;
import static styloid.spi.SheetBuilder.words;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.function.BiFunction;
import styloid.model.Digit;
import styloid.model.Item;
import styloid.model.Region;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.spi.Sheet;
import styloid.spi.Sheet.Trace;
import styloid.spi.SheetBuilder;

/** The fingers in grids: a row a side and finger, the joints from left to right. */
final class FingerGrids {
  static final Region REGION = Region.FINGERS;
  private static final int NAME = 26;
  private static final int WIDTH = 9;

  private final SheetBuilder sheet;
  private final List<Plane> planes =
      Planes.ALL.stream().filter(plane -> plane.region() == REGION).toList();
  private final List<Motion> motions =
      planes.stream().flatMap(plane -> plane.ends().stream()).toList();

  FingerGrids(SheetBuilder sheet) {
    this.sheet = sheet;
  }

  void add() {
    measured(
        Mode.ACTIVE,
        List.of("total-active-motion", "total-active-motion-percent", "total-active-motion-class"));
    measured(Mode.PASSIVE, List.of("total-passive-motion"));
    ends();
    strickland();
    for (Mode mode : Mode.values()) {
      arcs(mode);
      pastNeutral(mode);
      for (String kind :
          List.of(
              "side-deficit",
              "reference-deficit",
              "reference-percent",
              "change",
              "change-meaning")) {
        results("sheet.fingers-" + kind, mode, "-" + mode.code() + "-" + kind);
      }
    }
    results("sheet.fingers-lag", Mode.ACTIVE, "-lag");
    results("sheet.fingers-limit", Mode.ACTIVE, "-limit");
  }

  /** How far each finger joint's flexion stays short of the reference, both sides. */
  void picture() {
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Digit digit : EnumSet.copyOf(Item.FINGERS)) {
      for (Plane plane : planes) {
        Motion flexion = plane.toward().orElseThrow();
        ArrayList<Sheet.Cell> row = new ArrayList<>();
        row.add(words(SheetBuilder.ofDigit(text("sheet." + plane.id()), digit)));
        for (Side side : GoniometrySheets.SIDES) {
          ResultId id = new ResultId(flexion.id() + "-active-reference-deficit");
          row.add(GoniometrySheets.drawn(sheet, new Place(side, digit).result(id)));
        }
        addUnlessBlank(rows, row, 1);
      }
    }
    List<Sheet.Column> columns =
        List.of(
            new Sheet.Column(text("sheet.joint"), NAME),
            column("head.side.right", WIDTH),
            column("head.side.left", WIDTH));
    sheet.chart(
        new Sheet.Chart(
            new Sheet.Table(text("chart.fingers"), columns, rows),
            Unit.DEGREE,
            List.of(Trace.BARS, Trace.BARS)));
  }

  /** The angles themselves, and the total with its share and class. */
  private void measured(Mode mode, List<String> totals) {
    ArrayList<Sheet.Column> columns = motionColumns();
    totals.forEach(total -> columns.add(new Sheet.Column(text("sheet." + total), WIDTH)));
    columns.add(column("head.status", 10));
    rows(
        "sheet.fingers-" + mode.code(),
        columns,
        (place, row) -> {
          motions.forEach(motion -> row.add(sheet.entry(place.key(motion, mode))));
          return totals.stream().map(total -> place.result(new ResultId(total))).toList();
        });
  }

  private void ends() {
    rows(
        "sheet.fingers-end-feel",
        motionColumns(),
        (place, row) -> {
          motions.forEach(motion -> row.add(sheet.entry(place.key(motion.endFeel()))));
          return List.of();
        });
  }

  private void strickland() {
    List<String> ids =
        List.of("strickland-percent", "strickland-original-class", "strickland-adjusted-class");
    ArrayList<Sheet.Column> columns = nameColumns();
    ids.forEach(id -> columns.add(new Sheet.Column(text("sheet." + id), WIDTH)));
    columns.add(column("head.status", 10));
    rows(
        "sheet.strickland",
        columns,
        (place, row) -> ids.stream().map(id -> place.result(new ResultId(id))).toList());
  }

  private void arcs(Mode mode) {
    ArrayList<Sheet.Column> columns = nameColumns();
    for (String kind : List.of("arc", "written")) {
      planes.forEach(
          plane ->
              columns.add(
                  new Sheet.Column(
                      text("sheet.of-joint", text("sheet." + plane.id()), text("sheet." + kind)),
                      WIDTH)));
    }
    columns.add(column("head.status", 10));
    rows(
        "sheet.fingers-arc-" + mode.code(),
        columns,
        (place, row) -> {
          ArrayList<ResultKey> keys = new ArrayList<>();
          for (String kind : List.of("-arc-", "-written-")) {
            planes.forEach(
                plane -> keys.add(place.result(new ResultId(plane.id() + kind + mode.code()))));
          }
          return keys;
        });
  }

  /** Deficit and hyperextension of the joints that go past neutral. */
  private void pastNeutral(Mode mode) {
    List<Motion> past = motions.stream().filter(Motion::pastNeutral).toList();
    ArrayList<Sheet.Column> columns = nameColumns();
    List<String> kinds = List.of("deficit", "hyperextension");
    for (String kind : kinds) {
      past.forEach(
          motion ->
              columns.add(
                  new Sheet.Column(
                      text("sheet.past", text("motion." + motion.id()), text("sheet." + kind)),
                      WIDTH)));
    }
    columns.add(column("head.status", 10));
    rows(
        "sheet.fingers-neutral-" + mode.code(),
        columns,
        (place, row) -> {
          ArrayList<ResultKey> keys = new ArrayList<>();
          for (String kind : kinds) {
            past.forEach(
                motion ->
                    keys.add(
                        place.result(new ResultId(motion.id() + "-" + mode.code() + "-" + kind))));
          }
          return keys;
        });
  }

  /** One result of each motion; those a motion does not have leave their column out. */
  private void results(String heading, Mode mode, String ending) {
    ArrayList<Sheet.Column> columns = motionColumns();
    columns.add(column("head.status", 10));
    String own = ending.startsWith("-" + mode.code()) ? heading + "-" + mode.code() : heading;
    rows(
        own,
        columns,
        (place, row) ->
            motions.stream()
                .map(motion -> place.result(new ResultId(motion.id() + ending)))
                .toList());
  }

  private static ArrayList<Sheet.Column> nameColumns() {
    return new ArrayList<>(List.of(new Sheet.Column(text("sheet.finger"), NAME)));
  }

  private ArrayList<Sheet.Column> motionColumns() {
    ArrayList<Sheet.Column> columns = nameColumns();
    motions.forEach(motion -> columns.add(new Sheet.Column(text("motion." + motion.id()), WIDTH)));
    return columns;
  }

  /**
   * A row a side and finger.
   *
   * @param fill adds a row's entries and says which results follow; their weakest status ends it
   */
  private void rows(
      String heading,
      List<Sheet.Column> columns,
      BiFunction<Place, List<Sheet.Cell>, List<ResultKey>> fill) {
    ArrayList<List<Sheet.Cell>> rows = new ArrayList<>();
    for (Side side : GoniometrySheets.SIDES) {
      for (Digit digit : EnumSet.copyOf(Item.FINGERS)) {
        ArrayList<Sheet.Cell> row = new ArrayList<>();
        row.add(words(common("place", side, digit)));
        List<ResultKey> keys = fill.apply(new Place(side, digit), row);
        keys.forEach(key -> row.add(sheet.result(key)));
        if (row.size() < columns.size()) {
          row.add(sheet.status(keys));
        }
        addUnlessBlank(rows, row, 1);
      }
    }
    sheet.table(text(heading), 1, columns, rows);
  }
}
