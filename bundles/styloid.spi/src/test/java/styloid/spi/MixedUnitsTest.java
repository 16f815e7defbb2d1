package styloid.spi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Absence;
import styloid.model.Demand;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Message;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;

class MixedUnitsTest {
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
              Demand.GRIP_OR_PINCH)
          .withTrials(3);

  private final List<Entry> entries = new ArrayList<>();

  private static ItemKey place(String place) {
    Side side = place.startsWith("R") ? Side.RIGHT : Side.LEFT;
    return new ItemKey(
        new TestId("grip"), FORCE.id(), side, Digit.NONE, Integer.parseInt(place.substring(1)));
  }

  private void record(ItemKey key, Value value, boolean confirmed) {
    entries.removeIf(entry -> entry.key().equals(key));
    entries.add(
        new Entry(
            new EntryId(new UUID(1, entries.size())),
            key,
            Optional.of(value),
            Instant.EPOCH,
            new TherapistId("T. Example"),
            confirmed));
  }

  private static Quantity quantity(String typed) {
    String[] parts = typed.split(" ");
    Unit unit =
        switch (parts[1]) {
          case "kg" -> Unit.KILOGRAM_FORCE;
          case "lb" -> Unit.POUND_FORCE;
          default -> Unit.NEWTON;
        };
    return Quantity.of(parts[0], unit);
  }

  /** What is recorded as "R1 38.5 kg" in turn, those asked about being kept; then whether asked. */
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          R1 38.5 kg,                          no
          R1 38.5 kg; R2 39 kg; R3 38 kg,      no no no
          R1 38.5 kg; R2 80 lb,                no yes
          R1 38.5 kg; L1 80 lb,                no yes
          R1 38.5 kg; L1 80 lb; R2 82 lb; L2 37 kg; R3 38 kg, no yes no no no
          R1 38.5 kg; L1 80 lb; R2 370 N; L2 375 N,           no yes yes no
          R1 38.5 kg; R1 80 lb,                no no
          R1 38.5 kg; R2 80 lb; R2 81 lb,      no yes no
          R1 38.5 kg; R2 80 lb; R2 36 kg; R2 80 lb, no yes no yes
          """)
  void aUnitNewToTheSetIsAskedAboutAndOnlyThen(String readings, String asked) {
    ArrayList<String> answers = new ArrayList<>();
    for (String reading : readings.split("; ")) {
      ItemKey key = place(reading.substring(0, 2));
      Quantity typed = quantity(reading.substring(3));
      boolean asks = MixedUnits.question(FORCE, key, typed, entries).isPresent();
      answers.add(asks ? "yes" : "no");
      record(key, typed, asks);
    }
    assertEquals(asked, String.join(" ", answers));
  }

  @Test
  void theQuestionNamesTheReadingAndBothUnits() {
    record(place("R1"), quantity("38.5 kg"), false);
    Quantity typed = quantity("80.0 lb");
    assertEquals(
        Optional.of(Message.of(Texts.COMMON, "check.mixed-units", typed, "kg", "lb")),
        MixedUnits.question(FORCE, place("R2"), typed, entries));
  }

  @Test
  void absencesOtherItemsAndItemsOfOneUnitAskNothing() {
    record(place("R1"), new Absence(Absence.Reason.PAIN), false);
    record(
        new ItemKey(new TestId("grip"), new styloid.model.ItemId("key"), Side.RIGHT, Digit.NONE, 1),
        quantity("8 kg"),
        false);
    assertTrue(MixedUnits.question(FORCE, place("R2"), quantity("80 lb"), entries).isEmpty());
    Item angle =
        Item.bothSides(
            "power", ItemKind.Number.of(Unit.DEGREE, 0, 0, 90, 90, 0), Demand.ACTIVE_MOTION);
    record(place("R1"), quantity("8 kg"), false);
    Quantity degrees = Quantity.of("8", Unit.DEGREE);
    assertTrue(MixedUnits.question(angle, place("R2"), degrees, entries).isEmpty());
  }
}
