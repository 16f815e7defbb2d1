package styloid.workbook;

import java.util.List;

/**
 * One planned row of a worksheet.
 *
 * @param across whether its only cell runs across the whole width of the sheet
 */
record Line(List<Box> boxes, boolean across) {
  Line {
    boxes = List.copyOf(boxes);
    if (across && boxes.size() != 1) {
      throw new IllegalArgumentException("a line across the sheet has one cell");
    }
  }

  static Line empty() {
    return new Line(List.of(), false);
  }

  static Line across(String text, Look look) {
    return new Line(List.of(Box.words(text, look)), true);
  }

  static Line of(List<Box> boxes) {
    return new Line(boxes, false);
  }
}
