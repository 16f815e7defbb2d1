package styloid.workbook;

import java.util.List;
import java.util.Optional;

/**
 * One planned row of a worksheet.
 *
 * @param across whether its only cell runs across the whole width of the sheet
 * @param picture a chart that fills the row
 */
record Line(List<Box> boxes, boolean across, Optional<Picture> picture) {
  Line {
    boxes = List.copyOf(boxes);
    if (across && boxes.size() != 1) {
      throw new IllegalArgumentException("a line across the sheet has one cell");
    }
  }

  static Line empty() {
    return new Line(List.of(), false, Optional.empty());
  }

  static Line across(String text, Look look) {
    return new Line(List.of(Box.words(text, look)), true, Optional.empty());
  }

  static Line of(List<Box> boxes) {
    return new Line(boxes, false, Optional.empty());
  }

  static Line of(Picture picture) {
    return new Line(List.of(), false, Optional.of(picture));
  }

  Line withBoxes(List<Box> other) {
    return new Line(other, across, picture);
  }
}
