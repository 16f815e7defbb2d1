package styloid.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;

class EntryTest {
  private static Entry overriding(String reason) {
    return new Entry(
        new EntryId(new UUID(1, 2)),
        new ItemKey(new TestId("t"), new ItemId("i"), Side.LEFT, Digit.NONE, 1),
        Optional.of(new Choice("strong")),
        Instant.EPOCH,
        new TherapistId("A. Example"),
        false,
        Optional.of(new InSpite(reason, List.of())));
  }

  @Test
  void aReasonToOverrideIsKeptAsWritten() {
    assertEquals(" released ", overriding(" released ").override().orElseThrow().reason());
    assertEquals(500, overriding("x".repeat(500)).override().orElseThrow().reason().length());
  }

  @Test
  void aReasonToOverrideSaysSomethingAndNotTooMuch() {
    assertThrows(IllegalArgumentException.class, () -> overriding(" "));
    assertThrows(IllegalArgumentException.class, () -> overriding("x".repeat(501)));
  }
}
