package styloid.workbook;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.util.CellReference;

/** Compares a file that was read back with what was planned: every cell, name and sheet. */
final class ReadBack {
  private ReadBack() {}

  /** The first difference in words; empty when there is none. */
  static Optional<String> difference(Book book, PackageReader.ReadBook read) {
    if (read.sheets().size() != book.pages().size()) {
      return Optional.of("sheets: " + book.pages().size() + ", read " + read.sheets().size());
    }
    for (int i = 0; i < book.pages().size(); i++) {
      Optional<String> found = sheet(book.pages().get(i), read.sheets().get(i));
      if (found.isPresent()) {
        return found;
      }
    }
    return names(book, read);
  }

  private static Optional<String> sheet(Page page, PackageReader.ReadSheet read) {
    if (!page.name().equals(read.name())) {
      return Optional.of("sheet " + page.name() + ", read " + read.name());
    }
    LinkedHashMap<String, PackageReader.ReadCell> left = new LinkedHashMap<>(read.cells());
    for (int r = 0; r < page.lines().size(); r++) {
      for (int c = 0; c < page.lines().get(r).boxes().size(); c++) {
        Box box = page.lines().get(r).boxes().get(c);
        if (box instanceof Box.Gap) {
          continue;
        }
        String address = CellReference.convertNumToColString(c) + (r + 1);
        PackageReader.ReadCell cell = left.remove(address);
        if (cell == null || !same(box, cell)) {
          return Optional.of("sheet " + page.name() + ", cell " + address);
        }
      }
    }
    // What is left are the empty cells under a merged one.
    return left.entrySet().stream()
        .filter(e -> !e.getValue().value().isEmpty() || !e.getValue().formula().isEmpty())
        .map(e -> "sheet " + page.name() + ", cell " + e.getKey() + " was not planned")
        .findFirst();
  }

  private static boolean same(Box box, PackageReader.ReadCell cell) {
    return box.match(
        words ->
            cell.type().equals("s")
                && cell.formula().isEmpty()
                && cell.value().equals(words.text()),
        figure -> number(figure.value(), figure.format(), "", cell),
        live -> number(live.value(), live.format(), live.formula(), cell),
        gap -> true);
  }

  private static boolean number(
      double value, String format, String formula, PackageReader.ReadCell cell) {
    return cell.type().equals("n")
        && Double.compare(Double.parseDouble(cell.value()), value) == 0
        && cell.format().equals(format)
        && cell.formula().equals(formula);
  }

  private static Optional<String> names(Book book, PackageReader.ReadBook read) {
    for (Map.Entry<String, Book.Place> name : book.names().entrySet()) {
      String sheet = book.pages().get(name.getValue().page()).name();
      String address = BookWriter.reference(sheet, name.getValue());
      if (!address.equals(read.names().get(name.getKey()))) {
        return Optional.of("name " + name.getKey());
      }
    }
    return read.names().size() == book.names().size()
        ? Optional.empty()
        : Optional.of("names: " + book.names().size() + ", read " + read.names().size());
  }
}
