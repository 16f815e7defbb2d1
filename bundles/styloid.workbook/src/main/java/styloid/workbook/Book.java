package styloid.workbook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A whole workbook as planned: what is written, and what the written file is compared with.
 *
 * @param names cell names and where they stand
 * @param day given as the file's date, so that the same report gives the same bytes
 */
record Book(List<Page> pages, Map<String, Place> names, Edge edge, LocalDate day, String author) {

  /** A cell of a page, both counted from 0. */
  record Place(int page, int row, int column) {}

  /**
   * What stands at the edge of every printed page, in the file format's own spelling.
   *
   * @param letter whether the reader's country prints on US letter instead of A4
   */
  record Edge(String top, String topRight, String bottom, String bottomRight, boolean letter) {}

  Book {
    pages = List.copyOf(pages);
  }

  /**
   * Finishes pages: texts are cut to what a cell holds, names placed (the first cell of a name has
   * it), formulas spelled for the file. A formula that reads a name no cell has, or that leads back
   * to itself, stays a plain number.
   */
  static Book of(List<Page> pages, Edge edge, LocalDate day, String author, Say say) {
    LinkedHashMap<String, Place> names = places(pages);
    Map<Box.Live, FormulaText.Ready> live = live(pages, names.keySet());
    ArrayList<Page> finished = new ArrayList<>();
    for (int p = 0; p < pages.size(); p++) {
      ArrayList<Line> lines = new ArrayList<>();
      for (int r = 0; r < pages.get(p).lines().size(); r++) {
        Line line = pages.get(p).lines().get(r);
        ArrayList<Box> boxes = new ArrayList<>();
        for (int c = 0; c < line.boxes().size(); c++) {
          Box box = line.boxes().get(c);
          boolean own = box.name().map(names::get).equals(Optional.of(new Place(p, r, c)));
          boxes.add(finish(box, own, live, say));
        }
        lines.add(line.withBoxes(boxes));
      }
      finished.add(pages.get(p).withLines(lines));
    }
    return new Book(finished, names, edge, day, author);
  }

  private static LinkedHashMap<String, Place> places(List<Page> pages) {
    LinkedHashMap<String, Place> names = new LinkedHashMap<>();
    for (int p = 0; p < pages.size(); p++) {
      for (int r = 0; r < pages.get(p).lines().size(); r++) {
        List<Box> boxes = pages.get(p).lines().get(r).boxes();
        for (int c = 0; c < boxes.size(); c++) {
          Place place = new Place(p, r, c);
          boxes.get(c).name().ifPresent(name -> names.putIfAbsent(name, place));
        }
      }
    }
    return names;
  }

  /** The formulas that can stand: all they read is there, and none of it waits for them. */
  private static Map<Box.Live, FormulaText.Ready> live(List<Page> pages, Set<String> names) {
    HashSet<String> settled = new HashSet<>(names);
    ArrayList<Waiting> waiting = new ArrayList<>();
    for (Page page : pages) {
      for (Line line : page.lines()) {
        for (Box box : line.boxes()) {
          if (box instanceof Box.Live formula) {
            FormulaText.read(formula.formula())
                .filter(ready -> names.containsAll(ready.names()))
                .ifPresent(ready -> waiting.add(new Waiting(formula, ready)));
          }
        }
      }
    }
    waiting.forEach(one -> one.formula().name().ifPresent(settled::remove));
    IdentityHashMap<Box.Live, FormulaText.Ready> standing = new IdentityHashMap<>();
    while (waiting.removeIf(one -> stands(one, settled, standing))) {
      // Each round settles what only waited for the round before.
    }
    return standing;
  }

  private record Waiting(Box.Live formula, FormulaText.Ready ready) {}

  private static boolean stands(
      Waiting one, Set<String> settled, Map<Box.Live, FormulaText.Ready> standing) {
    if (!settled.containsAll(one.ready().names())) {
      return false;
    }
    standing.put(one.formula(), one.ready());
    one.formula().name().ifPresent(settled::add);
    return true;
  }

  private static Box finish(Box box, boolean own, Map<Box.Live, FormulaText.Ready> live, Say say) {
    return box.match(
        words -> words(words, own, say),
        figure ->
            new Box.Figure(
                figure.value(), figure.format(), figure.look(), figure.name().filter(n -> own)),
        formula -> formula(formula, own, live),
        gap -> gap);
  }

  /** Nearly every text fits as it is. */
  private static Box words(Box.Words words, boolean own, Say say) {
    String text = SafeText.fit(words.text(), left -> say.own("cut", left));
    boolean same = text.equals(words.text()) && (own || words.name().isEmpty());
    return same ? words : new Box.Words(text, words.look(), words.name().filter(n -> own));
  }

  private static Box formula(Box.Live formula, boolean own, Map<Box.Live, FormulaText.Ready> live) {
    Optional<String> name = formula.name().filter(n -> own);
    return Optional.ofNullable(live.get(formula))
        .<Box>map(r -> new Box.Live(r.text(), formula.value(), formula.format(), name))
        .orElseGet(() -> new Box.Figure(formula.value(), formula.format(), Look.CALCULATED, name));
  }
}
