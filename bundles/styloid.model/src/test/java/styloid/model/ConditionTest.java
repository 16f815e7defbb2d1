package styloid.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
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
}
