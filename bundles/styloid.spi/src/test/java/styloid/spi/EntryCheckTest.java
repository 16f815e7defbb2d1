package styloid.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Demand;
import styloid.model.Item;
import styloid.model.ItemKind;
import styloid.model.Quantity;
import styloid.model.Text;
import styloid.model.Unit;

class EntryCheckTest {
  private static final Item FORCE =
      Item.bothSides(
          "power",
          new ItemKind.Number(
              List.of(Unit.KILOGRAM_FORCE, Unit.POUND_FORCE, Unit.NEWTON),
              BigDecimal.ZERO,
              new BigDecimal("120"),
              new BigDecimal("1"),
              new BigDecimal("80"),
              1),
          Demand.GRIP_OR_PINCH);
  private static final Item ANGLE =
      Item.bothSides(
          "flexion", ItemKind.Number.of(Unit.DEGREE, -30, 0, 160, 170, 0), Demand.ACTIVE_MOTION);
  private static final Item ANSWER =
      Item.bothSides("range", ItemKind.Choices.of("full", "half", "none"), Demand.ACTIVE_MOTION);
  private static final Item SCORE =
      Item.bothSides("score", ItemKind.Choices.of("0", "1", "2"), Demand.NONE);
  private static final Item NOTE = Item.bothSides("note", new ItemKind.Words(10), Demand.NONE);

  private static EntryCheck.Checked force(String typed, Locale locale) {
    return EntryCheck.parse(typed, FORCE, Unit.KILOGRAM_FORCE, locale);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          38.5    | en | 38.5 | KILOGRAM_FORCE
          38.50   | en | 38.50 | KILOGRAM_FORCE
          38,5    | de | 38.5 | KILOGRAM_FORCE
          38.5    | de | 38.5 | KILOGRAM_FORCE
          84lb    | en | 84 | POUND_FORCE
          84 LB   | en | 84 | POUND_FORCE
          377 N   | en | 377 | NEWTON
          38.     | en | 38 | KILOGRAM_FORCE
          +20     | en | 20 | KILOGRAM_FORCE
          """)
  void readsNumbersAsTypedWithTheirUnit(
      String typed, String language, BigDecimal amount, Unit unit) {
    EntryCheck.Checked checked = force(typed, Locale.forLanguageTag(language));
    assertTrue(checked.accepted(), () -> typed + " " + checked);
    assertEquals(Optional.of(new Quantity(amount, unit)), checked.value());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "abc",
        "3 8",
        "1e3",
        "0x10",
        "--5",
        "38.5.1",
        "38 stone",
        "NaN",
        "1,000.5",
        "=1+1",
        "99999999999999999999"
      })
  void refusesWhatIsNoNumberWithAReason(String typed) {
    EntryCheck.Checked checked = force(typed, Locale.ENGLISH);
    assertTrue(checked.value().isEmpty(), () -> "took " + checked);
    assertTrue(checked.problem().isPresent());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          -0.1, refused
          0,    asks
          0.9,  asks
          1,    accepted
          80,   accepted
          80.1, asks
          120,  asks
          120.1, refused
          """)
  void judgesAtTheEdgesOfTheRanges(String typed, String verdict) {
    EntryCheck.Checked checked = force(typed, Locale.ENGLISH);
    assertEquals("accepted".equals(verdict), checked.accepted(), checked::toString);
    assertEquals("asks".equals(verdict), checked.asks(), checked::toString);
  }

  @Test
  void rangesHoldInEveryUnit() {
    assertTrue(force("176 lb", Locale.ENGLISH).accepted(), "79.8 kg");
    assertTrue(force("177 lb", Locale.ENGLISH).asks(), "80.3 kg");
    assertTrue(force("265 lb", Locale.ENGLISH).value().isEmpty(), "120.2 kg");
  }

  @Test
  void moreDigitsThanTheInstrumentGivesAreRefused() {
    assertTrue(force("38.55", Locale.ENGLISH).value().isEmpty());
    assertTrue(force("38.500", Locale.ENGLISH).accepted(), "zeros claim nothing");
  }

  @Test
  void aDeficitIsANegativeAngle() {
    EntryCheck.Checked minus = EntryCheck.parse("-20", ANGLE, Unit.DEGREE, Locale.ENGLISH);
    assertTrue(minus.asks());
    EntryCheck.Checked dash = EntryCheck.parse("\u221220°", ANGLE, Unit.DEGREE, Locale.ENGLISH);
    assertEquals(minus.value(), dash.value());
  }

  @ParameterizedTest
  @CsvSource({"1, full", "3, none", "half, half"})
  void aChoiceIsItsPlaceOrItsCode(String typed, String code) {
    EntryCheck.Checked checked = EntryCheck.parse(typed, ANSWER, Unit.COUNT, Locale.ENGLISH);
    assertEquals(Optional.of(new Choice(code)), checked.value());
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "4", "99", "fully"})
  void aChoiceOutsideTheListIsRefused(String typed) {
    assertFalse(EntryCheck.parse(typed, ANSWER, Unit.COUNT, Locale.ENGLISH).accepted());
  }

  @Test
  void aNumberThatIsItselfACodeIsThatCode() {
    EntryCheck.Checked zero = EntryCheck.parse("0", SCORE, Unit.COUNT, Locale.ENGLISH);
    assertEquals(Optional.of(new Choice("0")), zero.value());
    EntryCheck.Checked one = EntryCheck.parse("1", SCORE, Unit.COUNT, Locale.ENGLISH);
    assertEquals(Optional.of(new Choice("1")), one.value());
  }

  @Test
  void textIsKeptAsTypedUpToItsLength() {
    EntryCheck.Checked text = EntryCheck.parse(" sore  ", NOTE, Unit.COUNT, Locale.ENGLISH);
    assertEquals(Optional.of(new Text(" sore  ")), text.value());
    assertFalse(EntryCheck.parse("12345678901", NOTE, Unit.COUNT, Locale.ENGLISH).accepted());
  }

  @Test
  void anAbsenceFitsEveryItem() {
    for (Item item : List.of(FORCE, ANGLE, ANSWER, NOTE)) {
      assertTrue(EntryCheck.check(item, new Absence(Absence.Reason.REFUSED)).accepted());
    }
  }

  @Test
  void aValueOfAnotherKindOrUnitIsRefused() {
    assertTrue(EntryCheck.check(FORCE, new Choice("full")).value().isEmpty());
    assertTrue(EntryCheck.check(FORCE, Quantity.of("20", Unit.DEGREE)).value().isEmpty());
    assertTrue(EntryCheck.check(ANSWER, new Text("full")).value().isEmpty());
    assertTrue(EntryCheck.check(NOTE, Quantity.of("1", Unit.COUNT)).value().isEmpty());
  }

  @Test
  void everyReasonHasItsWords() {
    Texts texts = new Texts(Map.of(), Locale.ENGLISH);
    for (String typed : List.of("", "abc", "500", "38.55", "0")) {
      String words = texts.text(force(typed, Locale.ENGLISH).problem().orElseThrow().text());
      assertFalse(words.startsWith("check."), words);
      assertFalse(words.contains("{"), words);
    }
  }
}
