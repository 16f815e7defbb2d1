package styloid.shell.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.prefs.Preferences;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.model.ItemId;
import styloid.model.Source;
import styloid.spi.Timer;

class TimerLengthsTest {
  private static final Timer REST =
      Timer.rest(60, Set.of(new ItemId("power")), Source.commonPractice());

  private final Map<String, String> kept = new TreeMap<>();

  private Preferences node() {
    return new MemoryNode(kept);
  }

  @Test
  void aLengthIsTheUsualOneUntilAnotherIsSetAndThenIsRemembered() {
    assertEquals(60, TimerLengths.of(node()).seconds(REST));
    TimerLengths.of(node()).set(Timer.Kind.REST, 15);
    assertEquals(15, TimerLengths.of(node()).seconds(REST));
    assertEquals(Map.of("rest", "15"), kept);
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "601", "soon", "-5"})
  void whatIsNoLengthCountsAsUnset(String stored) {
    kept.put("rest", stored);
    assertEquals(60, TimerLengths.of(node()).seconds(REST));
  }

  @ParameterizedTest
  @EnumSource
  void everyLengthOfferedIsOne(Timer.Kind kind) {
    for (int seconds : TimerLengths.offered(kind)) {
      assertTrue(seconds >= Timer.SHORTEST && seconds <= Timer.LONGEST);
    }
  }
}
