package styloid.goniometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import styloid.model.Region;
import styloid.model.Source;
import styloid.model.SourceStatus;

/** Limits in the code against the given tables, row by row. */
class PrintedLimitsTest {
  private record Scale(Bands bands, Source source) {}

  private static final Map<String, Scale> SCALES =
      Map.of(
          "TAM_ASSH_percent", new Scale(HandScales.ASSH_CLASSES, HandScales.ASSH),
          "Strickland_original_1980",
              new Scale(HandScales.STRICKLAND_CLASSES, HandScales.STRICKLAND),
          "Strickland_adjusted_1985",
              new Scale(HandScales.ADJUSTED_CLASSES, HandScales.STRICKLAND_ADJUSTED),
          "Buck_Gramcko_flexion", new Scale(HandScales.CREASE_POINTS, HandScales.BUCK_GRAMCKO),
          "Buck_Gramcko_extension_deficit",
              new Scale(HandScales.DEFICIT_POINTS, HandScales.BUCK_GRAMCKO),
          "Buck_Gramcko_TAM", new Scale(HandScales.TOTAL_POINTS, HandScales.BUCK_GRAMCKO),
          "Buck_Gramcko_total",
              new Scale(HandScales.BUCK_GRAMCKO_CLASSES, HandScales.BUCK_GRAMCKO));

  @ParameterizedTest
  @CsvFileSource(resources = "given_hand_outcome_formulas.csv", numLinesToSkip = 1)
  void everyClassBeginsWhereItIsPrinted(
      String system,
      String item,
      String quantity,
      String low,
      String high,
      String unit,
      String status,
      String note) {
    Scale scale = SCALES.get(system);
    if (scale != null) {
      String code = item.replaceAll(" points?", "");
      Bands.Band band =
          scale.bands().bands().stream().filter(b -> b.code().equals(code)).findFirst().get();
      String printed = low == null ? "0" : low.replace(">", "");
      assertEquals(0, new BigDecimal(printed).compareTo(band.low()), system + " " + item);
      assertEquals(status, scale.source().status().code(), system);
    } else if (system.equals("TAM") && item.equals("normal")) {
      BigDecimal normal =
          quantity.startsWith("thumb") ? HandScales.THUMB_NORMAL : HandScales.FINGER_NORMAL;
      assertEquals(new BigDecimal(low), normal);
    } else if (system.equals("Strickland")) {
      assertTrue(quantity.endsWith("/ " + HandScales.PIP_AND_DIP_NORMAL + " x 100"), quantity);
    }
  }

  @ParameterizedTest
  @CsvFileSource(resources = "given_goniometry_reliability.csv", numLinesToSkip = 1)
  void everyStandardErrorIsTheOneGiven(
      String joint,
      String method,
      String statistic,
      String value,
      String unit,
      String status,
      String note) {
    if (joint.equals("finger and wrist")
        && method.equals("manual goniometer")
        && statistic.equals("SEM")) {
      for (Region region : new Region[] {Region.WRIST, Region.FINGERS}) {
        assertSem(value, status, MeasurementError.sem(region, true).orElseThrow());
        assertSem(value, status, MeasurementError.sem(region, false).orElseThrow());
      }
    } else if (joint.equals("shoulder") && statistic.equals("SEM")) {
      boolean same = method.endsWith("within rater");
      assertSem(value, status, MeasurementError.sem(Region.SHOULDER, same).orElseThrow());
    } else if (statistic.equals("customary error")) {
      assertEquals(value, Settings.DEFAULT_ERROR);
      assertEquals(status, MeasurementError.CUSTOMARY.status().code());
    } else if (statistic.startsWith("difference used as not clinically meaningful")) {
      assertEquals(value, Settings.DEFAULT_ERROR);
      assertEquals(status, MeasurementError.FINGERS.status().code());
    }
  }

  private static void assertSem(String printed, String status, MeasurementError.Sem sem) {
    assertEquals(printed, sem.low() + "-" + sem.high());
    assertEquals(status, sem.source().status().code());
  }

  /** The study printed 12 to 30 degrees for its own SEM of 4 to 11: 11.1 to 30.5 by the formula. */
  @Test
  void minimalDetectableChangeFollowsItsFormula() {
    for (double sem : new double[] {2.4, 4, 11, 25}) {
      BigDecimal given = BigDecimal.valueOf(sem);
      assertEquals(1.65 * Math.sqrt(2) * sem, MeasurementError.mdc90(given).doubleValue(), 1e-12);
      assertEquals(1.96 * Math.sqrt(2) * sem, MeasurementError.mdc95(given).doubleValue(), 1e-12);
    }
    assertEquals(30, Math.floor(MeasurementError.mdc95(BigDecimal.valueOf(11)).doubleValue()));
    assertEquals(SourceStatus.MEMORY, MeasurementError.MDC95_FORMULA.status());
  }
}
