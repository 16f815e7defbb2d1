package styloid.workbook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import styloid.spi.Texts;

class BookTest {
  private static final Say SAY = new Say(new Texts(Map.of(), Locale.ENGLISH), List.of());

  private static Book book(Box... boxes) {
    Page page =
        new Page("S", List.of(Line.of(List.of(boxes))), List.of(9, 9, 9, 9, 9), 0, 0, -1, false);
    Book.Edge edge = new Book.Edge("", "", "", "", false);
    return Book.of(List.of(page), edge, LocalDate.of(2026, 1, 1), "nobody", SAY);
  }

  private static Box live(String formula, String name) {
    return new Box.Live(formula, 1, "0", Optional.of(name));
  }

  private static Box figure(double value, String name) {
    return new Box.Figure(value, "0", Look.ENTERED, Optional.of(name));
  }

  private static List<Class<?>> kinds(Book book) {
    return book.pages().get(0).lines().get(0).boxes().stream()
        .<Class<?>>map(Box::getClass)
        .toList();
  }

  private static List<Class<?>> kinds(Class<?>... kinds) {
    return Arrays.asList(kinds);
  }

  @Test
  void formulaOverAbsentNameStaysANumber() {
    Book book = book(live("a__x*2", "a__r"));
    assertEquals(kinds(Box.Figure.class), kinds(book));
  }

  @Test
  void formulaOverAFormulaThatStaysANumberIsLive() {
    Book book = book(live("a__gone", "a__r"), live("a__r+1", "a__q"));
    assertEquals(kinds(Box.Figure.class, Box.Live.class), kinds(book));
  }

  @Test
  void formulasThatLeadBackToThemselvesStayNumbers() {
    Book book =
        book(
            live("a__r+1", "a__q"),
            live("a__q-1", "a__r"),
            live("a__s", "a__s"),
            figure(1, "a__x"),
            live("a__x", "a__t"));
    assertEquals(
        kinds(
            Box.Figure.class, Box.Figure.class, Box.Figure.class, Box.Figure.class, Box.Live.class),
        kinds(book));
  }

  @Test
  void firstCellOfANameHasIt() {
    Book book = book(figure(1, "a__x"), figure(2, "a__x"));
    assertEquals(Map.of("a__x", new Book.Place(0, 0, 0)), book.names());
    Box second = book.pages().get(0).lines().get(0).boxes().get(1);
    assertEquals(Optional.empty(), second.name());
    assertInstanceOf(Box.Figure.class, second);
  }

  @Test
  void comparisonFindsEveryKindOfDifference() throws IOException {
    Book book = book(figure(1, "a__x"), Box.words("word", Look.TEXT), live("a__x*2", "a__y"));
    Map<String, Book> others =
        Map.of(
            "A1",
                book(
                    figure(1.0000000001, "a__x"),
                    Box.words("word", Look.TEXT),
                    live("a__x*2", "a__y")),
            "B1", book(figure(1, "a__x"), Box.words("Word", Look.TEXT), live("a__x*2", "a__y")),
            "C1", book(figure(1, "a__x"), Box.words("word", Look.TEXT), live("a__x*3", "a__y")),
            "D1",
                book(
                    figure(1, "a__x"),
                    Box.words("word", Look.TEXT),
                    live("a__x*2", "a__y"),
                    figure(4, "a__w")));
    PackageReader.ReadBook same = read(book);
    assertEquals(Optional.empty(), ReadBack.difference(book, same));
    for (Map.Entry<String, Book> other : others.entrySet()) {
      String found = ReadBack.difference(book, read(other.getValue())).orElse("");
      assertTrue(found.contains(other.getKey()), other.getKey() + " but found: " + found);
    }
    Book unit =
        book(
            new Box.Figure(1, "0\" lb\"", Look.ENTERED, Optional.of("a__x")),
            Box.words("word", Look.TEXT),
            live("a__x*2", "a__y"));
    assertTrue(ReadBack.difference(book, read(unit)).orElse("").contains("A1"));
    Book unnamed =
        book(figure(1, "a__x"), Box.words("word", Look.TEXT), live("a__x*2", "a__other"));
    assertEquals(Optional.of("name a__y"), ReadBack.difference(book, read(unnamed)));
  }

  private static PackageReader.ReadBook read(Book book) throws IOException {
    return PackageReader.read(new ByteArrayInputStream(BookWriter.write(book, sheet -> {})));
  }
}
