package styloid.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class LedgerTest {
  private static final TestId GRIP = new TestId("grip");
  private static final ItemKey FIRST = key("power", Side.RIGHT, 1);
  private static final ItemKey SECOND = key("power", Side.RIGHT, 2);

  private long next = 1;

  private static ItemKey key(String item, Side side, int trial) {
    return new ItemKey(GRIP, new ItemId(item), side, Digit.NONE, trial);
  }

  private Entry entry(ItemKey key, Value value) {
    return new Entry(
        new EntryId(new UUID(0, next++)),
        key,
        Optional.ofNullable(value),
        Instant.EPOCH,
        new TherapistId("T"),
        false);
  }

  private static Value kg(String digits) {
    return Quantity.of(digits, Unit.KILOGRAM_FORCE);
  }

  @Test
  void aLaterEntrySupersedesAndTheEarlierStays() {
    Ledger ledger =
        Ledger.empty().append(entry(FIRST, kg("38.5"))).append(entry(FIRST, kg("35.8")));
    assertEquals(2, ledger.size());
    assertEquals(Optional.of(kg("35.8")), ledger.snapshot().value(FIRST));
  }

  @Test
  void withdrawingTakesTheValueBackToNothingRecorded() {
    Ledger ledger = Ledger.empty().append(entry(FIRST, kg("38.5"))).append(entry(FIRST, null));
    assertTrue(ledger.snapshot().isEmpty());
    assertEquals(2, ledger.size());
  }

  @Test
  void anEntryStandsOnlyOnce() {
    Entry entry = entry(FIRST, kg("38.5"));
    Ledger ledger = Ledger.empty().append(entry);
    assertThrows(IllegalArgumentException.class, () -> ledger.append(entry));
    assertThrows(IllegalArgumentException.class, () -> Ledger.of(List.of(entry, entry)));
  }

  @Test
  void orderIsThatOfAppendingNotOfTheClock() {
    Entry late =
        new Entry(
            new EntryId(UUID.randomUUID()),
            FIRST,
            Optional.of(kg("1")),
            Instant.parse("2026-01-01T00:00:00Z"),
            new TherapistId("T"),
            false);
    Ledger ledger = Ledger.empty().append(late).append(entry(FIRST, kg("2")));
    assertEquals(Optional.of(kg("2")), ledger.snapshot().value(FIRST));
  }

  @Test
  void foldingStepByStepEqualsFoldingAtOnce() {
    Random random = new Random(9);
    for (int run = 0; run < 100; run++) {
      ArrayList<Entry> entries = new ArrayList<>();
      Snapshot stepwise = Snapshot.empty();
      for (int i = 0; i < 60; i++) {
        ItemKey key = key("power", random.nextBoolean() ? Side.LEFT : Side.RIGHT, 1 + i % 5);
        Entry entry = entry(key, random.nextInt(4) == 0 ? null : kg("" + random.nextInt(90)));
        entries.add(entry);
        stepwise = stepwise.with(entry);
      }
      assertEquals(
          Set.copyOf(Ledger.of(entries).snapshot().entries()), Set.copyOf(stepwise.entries()));
    }
  }

  @Test
  void aLimitedSnapshotRefusesWhatWasNotDeclared() {
    Snapshot snapshot =
        Ledger.empty().append(entry(FIRST, kg("1"))).append(entry(SECOND, kg("2"))).snapshot();
    ItemKey foreign = new ItemKey(new TestId("screen"), new ItemId("x"), Side.LEFT, Digit.NONE, 1);
    Snapshot limited = snapshot.limitedTo(Set.of(FIRST.ref()), Set.of());
    assertEquals(Optional.of(kg("1")), limited.value(FIRST));
    assertThrows(IllegalArgumentException.class, () -> limited.entry(foreign));
    Snapshot wider = snapshot.limitedTo(Set.of(), Set.of(new TestId("screen")));
    assertEquals(Optional.empty(), wider.entry(foreign));
    assertThrows(IllegalArgumentException.class, () -> wider.entry(FIRST));
  }

  @Test
  void eachKindIsFoundOnlyAsWhatItIs() {
    Snapshot snapshot =
        Ledger.empty().append(entry(FIRST, new Absence(Absence.Reason.PAIN))).snapshot();
    assertTrue(snapshot.quantity(FIRST).isEmpty(), "an absence is never a number");
    assertTrue(snapshot.choice(FIRST).isEmpty());
    assertEquals(Absence.Reason.PAIN, snapshot.absence(FIRST).orElseThrow().reason());
  }

  @Test
  void cellNamesAreUniqueAndNoCells() {
    assertEquals("grip__power__right__1", FIRST.cellName());
    ItemKey digit = new ItemKey(GRIP, new ItemId("mp-flexion-active"), Side.LEFT, Digit.INDEX, 1);
    assertEquals("grip__mp_flexion_active__left__index__1", digit.cellName());
  }
}
