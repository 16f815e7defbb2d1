package styloid.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class ConditionTest {
  private static final ItemKey RANGE =
      new ItemKey(new TestId("t"), new ItemId("range"), Side.LEFT, Digit.NONE, 1);
  private static final ItemKey HOLD = RANGE.sibling(new ItemId("hold"));

  private static Snapshot recorded(Value value) {
    return Snapshot.of(
        List.of(
            new Entry(
                new EntryId(new UUID(1, 1)),
                RANGE,
                Optional.of(value),
                Instant.EPOCH,
                new TherapistId("T"),
                false)));
  }

  @Test
  void isLooksAtTheSameSideOnly() {
    Condition full = Condition.is("range", "full");
    assertTrue(full.holds(recorded(new Choice("full")), HOLD));
    assertFalse(full.holds(recorded(new Choice("full")), HOLD.opposite()));
    assertFalse(full.holds(recorded(new Choice("half")), HOLD));
    assertFalse(full.holds(Snapshot.empty(), HOLD));
  }

  @Test
  void anAbsenceIsRecordedButIsNoAnswer() {
    Snapshot absent = recorded(new Absence(Absence.Reason.PAIN));
    assertTrue(Condition.recorded("range").holds(absent, HOLD));
    assertFalse(Condition.is("range", "full").holds(absent, HOLD));
  }

  @Test
  void conditionsCombine() {
    Snapshot full = recorded(new Choice("full"));
    Condition yes = Condition.is("range", "full");
    Condition no = Condition.is("range", "none");
    assertTrue(Condition.all(yes, Condition.not(no)).holds(full, HOLD));
    assertFalse(Condition.all(yes, no).holds(full, HOLD));
    assertTrue(Condition.any(no, yes).holds(full, HOLD));
    assertFalse(Condition.any(no, Condition.not(yes)).holds(full, HOLD));
    assertTrue(Condition.always().holds(Snapshot.empty(), HOLD));
  }

  @Test
  void aConditionNamesWhatItReads() {
    Condition both = Condition.any(Condition.is("a", "x"), Condition.not(Condition.recorded("b")));
    assertEquals(Set.of(new ItemId("a"), new ItemId("b")), both.reads());
  }

  @Test
  void aSettingStandsAtItsPresetUntilAnotherCodeIsChosen() {
    Condition other = new Condition.Chosen("t.scheme", "fine", "plain");
    Condition preset = new Condition.Chosen("t.scheme", "plain", "plain");
    Snapshot none = Snapshot.empty();
    assertFalse(other.holds(none, HOLD));
    assertTrue(preset.holds(none, HOLD));
    Snapshot fine = recorded(new Choice("full")).under(Map.of("t.scheme", "fine"));
    assertTrue(other.holds(fine, HOLD));
    assertFalse(preset.holds(fine, HOLD));
    Snapshot unknown = none.under(Map.of("t.scheme", "coarse", "u.scheme", "fine"));
    assertFalse(other.holds(unknown, HOLD));
    assertFalse(preset.holds(unknown, HOLD));
    assertEquals(
        Set.of(other, preset),
        Condition.any(Condition.not(other), Condition.all(preset, other)).choices());
  }

  @Test
  void settingsStayWithASnapshotThatGrowsOrIsLimited() {
    Map<String, String> chosen = Map.of("t.scheme", "fine");
    Snapshot full = recorded(new Choice("full"));
    Entry more = full.entries().iterator().next();
    assertEquals(chosen, full.under(chosen).with(more).choices());
    assertEquals(chosen, full.under(chosen).limitedTo(Set.of(), Set.of()).choices());
    assertEquals(Map.of(), full.under(chosen).under(Map.of()).choices());
  }
}
