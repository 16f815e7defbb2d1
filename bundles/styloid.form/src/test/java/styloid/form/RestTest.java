package styloid.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Absence;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;

class RestTest {
  private static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");
  private final List<Entry> entries = new ArrayList<>();

  private static ItemKey trial(Side side, int number) {
    return new ItemKey(SampleTest.ID, new ItemId("power"), side, Digit.NONE, number);
  }

  private void record(Side side, int number, long second, Value value) {
    entries.add(
        new Entry(
            new EntryId(new UUID(4, entries.size())),
            trial(side, number),
            Optional.of(value),
            NOON.plusSeconds(second),
            new TherapistId("T. Example"),
            false));
  }

  private Optional<Integer> left(Side side, int number, long millis) {
    return Rest.left(Snapshot.of(entries), trial(side, number), 60, NOON.plusMillis(millis));
  }

  private static Quantity kilograms(String amount) {
    return Quantity.of(amount, Unit.KILOGRAM_FORCE);
  }

  @ParameterizedTest
  @CsvSource(textBlock = "0, 60\n1, 60\n1000, 59\n59000, 1\n59999, 1\n60000,\n61000,\n-1,")
  void theRestCountsDownFromTheTrialBefore(long millis, Integer expected) {
    record(Side.RIGHT, 1, 0, kilograms("30"));
    assertEquals(Optional.ofNullable(expected), left(Side.RIGHT, 2, millis));
  }

  @Test
  void eachHandRestsForItself() {
    record(Side.RIGHT, 1, 0, kilograms("30"));
    assertEquals(Optional.empty(), left(Side.LEFT, 1, 1000));
    record(Side.LEFT, 1, 20, kilograms("30"));
    assertEquals(Optional.of(30), left(Side.RIGHT, 2, 30_000));
    assertEquals(Optional.of(50), left(Side.LEFT, 2, 30_000));
  }

  @Test
  void theLatestTrialCountsAndOneRecordedAlreadyNeedsNoRest() {
    record(Side.RIGHT, 1, 0, kilograms("30"));
    record(Side.RIGHT, 2, 40, kilograms("31"));
    assertEquals(Optional.of(60), left(Side.RIGHT, 3, 40_000));
    assertEquals(Optional.empty(), left(Side.RIGHT, 2, 40_000));
  }

  @Test
  void aTrialThatWasNotDoneTiresNobody() {
    record(Side.RIGHT, 1, 0, new Absence(Absence.Reason.REFUSED));
    assertEquals(Optional.empty(), left(Side.RIGHT, 2, 1000));
  }
}
