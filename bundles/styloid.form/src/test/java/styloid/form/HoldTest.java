package styloid.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Quantity;
import styloid.model.Side;
import styloid.model.Unit;
import styloid.spi.Timer;

class HoldTest {
  private static final Instant BEGUN = Instant.parse("2026-03-02T09:00:00Z");

  private final Hold hold =
      new Hold(
          SampleTest.key("hold", Side.RIGHT),
          new Timer.LetGo("gave-way", "yielded", Optional.empty()),
          3,
          BEGUN);

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          -5,   0,     3, false, 0.0, gave-way
          0,    0,     3, false, 0.0, gave-way
          999,  0.333, 3, false, 0.9, gave-way
          1000, 0.333, 2, false, 1.0, yielded
          1001, 0.334, 2, false, 1.0, yielded
          2999, 1.0,   1, false, 2.9, yielded
          3000, 1,     0, true,  3.0, yielded
          9000, 1,     0, true,  9.0, yielded
          """)
  void eachInstantSaysHowFarAndWhatLettingGoWouldMean(
      long millis, double share, long left, boolean over, String held, String answer) {
    Instant now = BEGUN.plusMillis(millis);
    assertEquals(share, hold.share(now), 0.001);
    assertEquals(left, hold.secondsLeft(now));
    assertEquals(over, hold.over(now));
    assertEquals(Quantity.of(held, Unit.SECOND), hold.held(now));
    assertEquals(answer, hold.answer(now));
  }
}
