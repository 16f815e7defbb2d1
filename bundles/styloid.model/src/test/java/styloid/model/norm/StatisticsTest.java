package styloid.model.norm;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;

class StatisticsTest {
  @Test
  void meanAndSpreadOfThreeTrials() {
    assertEquals(40, Statistics.mean(38, 40, 42));
    assertEquals(2, Statistics.sampleSd(38, 40, 42));
    assertEquals(5, Statistics.cv(38, 40, 42));
    assertEquals(0, Statistics.sampleSd(40, 40, 40));
  }

  @Test
  void agreesWithExactDecimals() {
    Random random = new Random(20260101);
    for (int round = 0; round < 500; round++) {
      BigDecimal[] exact = new BigDecimal[3];
      double[] numbers = new double[3];
      for (int i = 0; i < 3; i++) {
        exact[i] = BigDecimal.valueOf(random.nextInt(20_000), 2);
        numbers[i] = exact[i].doubleValue();
      }
      BigDecimal mean =
          exact[0]
              .add(exact[1])
              .add(exact[2])
              .divide(BigDecimal.valueOf(3), MathContext.DECIMAL128);
      BigDecimal squares = BigDecimal.ZERO;
      for (BigDecimal one : exact) {
        squares = squares.add(one.subtract(mean).pow(2));
      }
      double sd = squares.divide(BigDecimal.valueOf(2)).sqrt(MathContext.DECIMAL128).doubleValue();
      assertEquals(mean.doubleValue(), Statistics.mean(numbers), 1e-12);
      assertEquals(sd, Statistics.sampleSd(numbers), 1e-11);
    }
  }

  @Test
  void refusesWhatHasNoMeaning() {
    assertThrows(IllegalArgumentException.class, Statistics::mean);
    assertThrows(IllegalArgumentException.class, () -> Statistics.sampleSd(1));
    assertThrows(ArithmeticException.class, () -> Statistics.cv(0, 0, 0));
    assertThrows(ArithmeticException.class, () -> Statistics.cv(-1, -2, -3));
  }
}
