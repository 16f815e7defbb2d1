package styloid.goniometry;

import static styloid.goniometry.GoniometrySheets.SIDES;
import static styloid.goniometry.GoniometrySheets.text;
import static styloid.spi.SheetBuilder.words;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import styloid.model.Digit;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.Side;
import styloid.spi.Sheet;
import styloid.spi.SheetBuilder;

/**
 * For the first page: the active motions that stay further short of the other side than the
 * measurement error, the furthest first.
 */
final class MotionSummary {
  private static final int MOST = 8;

  private record Short(Motion motion, Digit digit, Side side, Quantity by) {}

  private MotionSummary() {}

  static List<Sheet> of(SheetBuilder sheet, Settings settings) {
    BigDecimal error = settings.error().orElse(new BigDecimal(Settings.DEFAULT_ERROR));
    ArrayList<Short> found = new ArrayList<>();
    for (Motion motion : Planes.motions().toList()) {
      for (Digit digit : new TreeSet<>(motion.digits())) {
        for (Side side : SIDES) {
          deficit(sheet, motion, new Place(side, digit))
              .filter(by -> by.amount().compareTo(error) > 0)
              .ifPresent(by -> found.add(new Short(motion, digit, side, by)));
        }
      }
    }
    found.sort(Comparator.comparing((Short s) -> s.by().amount()).reversed());
    List<List<Sheet.Cell>> rows = found.stream().map(s -> row(sheet, s)).toList();
    return sheet.summary(text("sheet.summary"), MOST, rows);
  }

  private static Optional<Quantity> deficit(SheetBuilder sheet, Motion motion, Place place) {
    return sheet
        .find(place.result(new ResultId(motion.id() + "-active-side-deficit")))
        .flatMap(Result::quantity);
  }

  private static List<Sheet.Cell> row(SheetBuilder sheet, Short found) {
    ArrayList<Sheet.Cell> row = new ArrayList<>();
    row.add(words(SheetBuilder.ofDigit(text("motion." + found.motion().id()), found.digit())));
    for (Side side : SIDES) {
      row.add(sheet.again(new Place(side, found.digit()).key(found.motion(), Mode.ACTIVE)));
    }
    row.add(words(text("sheet.short", found.side(), found.by())));
    return row;
  }
}
