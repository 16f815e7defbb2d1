package styloid.goniometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HandScalesTest {
  private static final Map<String, Bands> SCALES =
      Map.of(
          "assh", HandScales.ASSH_CLASSES,
          "strickland", HandScales.STRICKLAND_CLASSES,
          "adjusted", HandScales.ADJUSTED_CLASSES,
          "crease", HandScales.CREASE_POINTS,
          "deficit", HandScales.DEFICIT_POINTS,
          "total", HandScales.TOTAL_POINTS,
          "buck-gramcko", HandScales.BUCK_GRAMCKO_CLASSES);

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          # scale, limit, one ulp below, at, one ulp above
          assh,         100,  good,         excellent,    excellent
          assh,         75,   fair,         good,         good
          assh,         50,   poor,         fair,         fair
          strickland,   85,   good,         excellent,    excellent
          strickland,   70,   fair,         good,         good
          strickland,   50,   poor,         fair,         fair
          adjusted,     75,   good,         excellent,    excellent
          adjusted,     50,   fair,         good,         good
          adjusted,     25,   poor,         fair,         fair
          crease,       2.5,  6,            4,            4
          crease,       4,    4,            2,            2
          crease,       6,    2,            0,            0
          deficit,      31,   3,            2,            2
          deficit,      51,   2,            1,            1
          deficit,      70,   1,            1,            0
          total,        120,  0,            2,            2
          total,        140,  2,            4,            4
          total,        160,  4,            6,            6
          buck-gramcko, 7,    poor,         satisfactory, satisfactory
          buck-gramcko, 11,   satisfactory, good,         good
          buck-gramcko, 14,   good,         excellent,    excellent
          """)
  void lowerLimitBelongsToItsClass(
      String scale, double limit, String below, String at, String above) {
    Bands bands = SCALES.get(scale);
    assertEquals(below, bands.code(new BigDecimal(Math.nextDown(limit))), "one ulp below");
    assertEquals(at, bands.code(BigDecimal.valueOf(limit)), "at the limit");
    assertEquals(above, bands.code(new BigDecimal(Math.nextUp(limit))), "one ulp above");
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          assh, -40, poor
          assh, 0, poor
          assh, 140, excellent
          strickland, 84.3, good
          strickland, 49.9, poor
          adjusted, 74.9, good
          crease, 0, 6
          crease, 12, 0
          deficit, 0, 3
          deficit, 30.5, 3
          deficit, 200, 0
          total, -10, 0
          """)
  void whatLiesBetweenOrBeyondPrintedClassesHasOne(String scale, BigDecimal value, String code) {
    assertEquals(code, SCALES.get(scale).code(value));
  }
}
