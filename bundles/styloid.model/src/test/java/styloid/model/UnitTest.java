package styloid.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Factors against the exact definitions: international yard and pound agreement 1959 (1 lb =
 * 0.45359237 kg), 3rd CGPM 1901 (standard gravity 9.80665 m/s2). From memory; both are exact.
 */
class UnitTest {
  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          1, KILOGRAM_FORCE, NEWTON, 9.80665
          1, POUND_FORCE, KILOGRAM_FORCE, 0.45359237
          1, POUND_FORCE, NEWTON, 4.4482216152605
          1000, GRAM_FORCE, KILOGRAM_FORCE, 1
          0, POUND_FORCE, KILOGRAM_FORCE, 0
          1, CENTIMETRE, MILLIMETRE, 10
          -12.5, DEGREE, DEGREE, -12.5
          """)
  void convertsExactly(BigDecimal amount, Unit from, Unit to, BigDecimal expected) {
    assertEquals(0, expected.compareTo(from.convert(amount, to)));
  }

  @Test
  void thePoundIsThatOfTheDefinitionTimesStandardGravity() {
    BigDecimal product = new BigDecimal("0.45359237").multiply(new BigDecimal("9.80665"));
    assertEquals(0, product.compareTo(Unit.POUND_FORCE.factor()));
  }

  @Test
  void thereAndBackGivesTheTypedNumber() {
    Random random = new Random(42);
    for (int i = 0; i < 2000; i++) {
      BigDecimal typed = BigDecimal.valueOf(random.nextInt(20_000), 2);
      BigDecimal there = Unit.POUND_FORCE.convert(typed, Unit.KILOGRAM_FORCE);
      BigDecimal back = Unit.KILOGRAM_FORCE.convert(there, Unit.POUND_FORCE);
      BigDecimal error = back.subtract(typed).abs();
      assertEquals(-1, error.compareTo(new BigDecimal("1e-28")), () -> typed + " became " + back);
    }
  }

  @Test
  void unlikeThingsDoNotConvert() {
    assertThrows(
        IllegalArgumentException.class, () -> Unit.DEGREE.convert(BigDecimal.ONE, Unit.NEWTON));
  }

  @ParameterizedTest
  @EnumSource(Unit.class)
  void everyUnitIsFoundByItsCode(Unit unit) {
    assertEquals(unit, Unit.ofUcum(unit.ucum()));
  }

  @Test
  void anUnknownCodeIsRefused() {
    assertThrows(IllegalArgumentException.class, () -> Unit.ofUcum("stone"));
  }
}
