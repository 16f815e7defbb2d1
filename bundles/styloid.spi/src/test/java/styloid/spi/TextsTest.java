package styloid.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Unit;

class TextsTest {
  private static final Labels WORDS =
      new Labels(
          Map.of(
              "en",
              Map.of(
                  "sum", "{0} and {1} make {2}",
                  "odd", "a {brace} and {9}",
                  "choice.range.full", "full range",
                  "choice.none", "no motion"),
              "de",
              Map.of("sum", "{0} und {1} sind {2}")));

  private static Texts texts(Locale locale) {
    return new Texts(Map.of("t", WORDS), locale);
  }

  @Test
  void argumentsGoWhereTheyBelongInTheReadersNumbers() {
    Message sum =
        Message.of("t", "sum", new BigDecimal("1.5"), Quantity.of("2.25", Unit.KILOGRAM_FORCE), 3);
    assertEquals("1.5 and 2.25 kg make 3", texts(Locale.ENGLISH).text(sum));
    assertEquals("1,5 und 2,25 kg sind 3", texts(Locale.GERMAN).text(sum));
  }

  @Test
  void aWordMissingInALanguageIsEnglish() {
    assertEquals("a {brace} and {9}", texts(Locale.GERMAN).text(Message.of("t", "odd")));
  }

  @Test
  void bracesInAnArgumentAreLeftAlone() {
    Message message = Message.of("t", "sum", "{1}", "b", "c");
    assertEquals("{1} and b make c", texts(Locale.ENGLISH).text(message));
  }

  @Test
  void anAnswerFallsBackToSharedWords() {
    ItemKey key = new ItemKey(new TestId("t"), new ItemId("range"), Side.LEFT, Digit.NONE, 1);
    Texts texts = texts(Locale.ENGLISH);
    assertEquals("full range", texts.value(key, new Choice("full")));
    assertEquals("no motion", texts.value(key, new Choice("none")));
    assertEquals("yes", texts.value(key, new Choice("yes")), "common words");
    assertEquals("odd-one", texts.value(key, new Choice("odd-one")), "never blank");
  }

  @Test
  void anAbsenceIsItsWordAndNote() {
    ItemKey key = new ItemKey(new TestId("t"), new ItemId("x"), Side.LEFT, Digit.NONE, 1);
    Absence absence = new Absence(Absence.Reason.NOT_DONE, "cast on");
    assertEquals("not done (cast on)", texts(Locale.ENGLISH).value(key, absence));
  }

  @ParameterizedTest
  @CsvSource({
    "RIGHT, INDEX, Right index finger",
    "LEFT, NONE, Left",
    "UNSIDED, NONE, ''",
    "UNSIDED, THUMB, Thumb"
  })
  void placesAreInWords(Side side, Digit digit, String words) {
    assertEquals(words, texts(Locale.ENGLISH).place(side, digit));
  }

  @ParameterizedTest
  @CsvSource({"2.345, 2, 2.35", "-2.345, 2, -2.35", "0.5, 0, 1", "1.25, 1, 1.3", "7, 1, 7.0"})
  void numbersAreRoundedHalfAwayFromZero(BigDecimal number, int decimals, String shown) {
    assertEquals(shown, texts(Locale.ENGLISH).number(number, decimals));
  }

  @Test
  void degreesStandCloseAndOtherUnitsApart() {
    Texts texts = texts(Locale.ENGLISH);
    assertEquals("-20°", texts.quantity(Quantity.of("-20", Unit.DEGREE)));
    assertEquals("84 lb", texts.quantity(Quantity.of("84", Unit.POUND_FORCE)));
    assertEquals("3", texts.quantity(Quantity.of("3", Unit.COUNT)));
  }
}
