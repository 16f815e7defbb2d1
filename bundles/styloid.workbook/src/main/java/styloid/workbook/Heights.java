package styloid.workbook;

/**
 * Heights of rows, reckoned from the characters: not every spreadsheet finds the height of wrapped
 * text by itself when it opens a file, and a merged cell never does.
 */
final class Heights {
  /** Height of a row of one line. */
  static final double USUAL = 12.9;

  private static final double POINTS_A_LINE = 1.32;
  private static final double HIGHEST_ROW = 409;

  private Heights() {}

  /** Height of a planned row in points. */
  static double of(Page page, Line line) {
    if (line.picture().isPresent()) {
      return Picture.POINTS;
    }
    return line.across() ? across(page, line) : wrapped(page, line);
  }

  private static double wrapped(Page page, Line line) {
    int most = 1;
    for (int c = 0; c < line.boxes().size(); c++) {
      if (line.boxes().get(c) instanceof Box.Words words) {
        double bold = words.look() == Look.ROW_HEAD || words.look() == Look.HEAD ? 0.98 : 1.08;
        most = Math.max(most, lines(words.text(), (page.widths().get(c) - 1.2) * bold));
      }
    }
    return most == 1 ? USUAL : Math.min(HIGHEST_ROW, most * Styles.POINTS * POINTS_A_LINE + 2);
  }

  private static double across(Page page, Line line) {
    Box.Words words = (Box.Words) line.boxes().get(0);
    double points = Styles.points(words.look());
    double inALine = page.width() * Styles.POINTS / points * 1.05;
    return Math.min(HIGHEST_ROW, lines(words.text(), inALine) * points * POINTS_A_LINE + 2);
  }

  /** Lines a text takes in a width of characters, broken between words. */
  private static int lines(String text, double width) {
    int lines = 0;
    for (String part : text.split("\r\n|\r|\n", -1)) {
      double used = 0;
      lines++;
      for (String word : part.split(" ")) {
        if (used > 0 && used + 1 + word.length() > width) {
          lines++;
          used = 0;
        }
        used += word.length() + (used > 0 ? 1 : 0);
        while (used > width) {
          lines++;
          used -= width;
        }
      }
    }
    return lines;
  }
}
