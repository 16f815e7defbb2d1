package styloid.goniometry;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Optional;
import styloid.model.Region;
import styloid.model.Source;

/** Published errors of goniometry and what follows from them. */
final class MeasurementError {
  /** The customary error and a study that took the same limit. */
  static final Source CUSTOMARY =
      Source.memory("Customary error of goniometry, 5 degrees for the same examiner");

  static final Source FINGERS =
      Source.verified(
          "Macionis V. 2013. BMC Musculoskelet Disord 14:17 (5 degrees taken as not meaningful)");
  static final Source MDC90_FORMULA =
      Source.verified("MDC90 = 1.65 x sqrt(2) x SEM, as used by Kim 2014");
  static final Source MDC95_FORMULA = Source.memory("MDC95 = 1.96 x sqrt(2) x SEM");
  static final Source CLINIC = new Source("Set by the clinic", MDC95_FORMULA.status());

  private static final Source REISSNER =
      Source.verified(
          "Reissner L and others. 2019. J Orthop Surg Res 14:173 (finger and wrist, 20 adults)");
  private static final Source HAYES =
      Source.verified("Hayes K and others. 2001. Aust J Physiother 47:289-294 (patients)");
  private static final BigDecimal ROOT_TWO = BigDecimal.valueOf(2).sqrt(MathContext.DECIMAL64);
  private static final BigDecimal FOR_90 = new BigDecimal("1.65");
  private static final BigDecimal FOR_95 = new BigDecimal("1.96");

  private MeasurementError() {}

  /** A published standard error of measurement in degrees, from the best to the worst joint. */
  record Sem(BigDecimal low, BigDecimal high, Source source) {
    static Sem of(int low, int high, Source source) {
      return new Sem(BigDecimal.valueOf(low), BigDecimal.valueOf(high), source);
    }
  }

  /** The published SEM for a region; empty where none is known here. */
  static Optional<Sem> sem(Region region, boolean sameExaminer) {
    return switch (region) {
      case FINGERS, WRIST -> Optional.of(Sem.of(4, 11, REISSNER));
      case SHOULDER -> Optional.of(sameExaminer ? Sem.of(11, 23, HAYES) : Sem.of(14, 25, HAYES));
      default -> Optional.empty();
    };
  }

  /** Least change beyond error at 90 %: 1.65 x sqrt(2) x SEM. */
  static BigDecimal mdc90(BigDecimal sem) {
    return FOR_90.multiply(ROOT_TWO).multiply(sem, MathContext.DECIMAL64);
  }

  /** Least change beyond error at 95 %: 1.96 x sqrt(2) x SEM. */
  static BigDecimal mdc95(BigDecimal sem) {
    return FOR_95.multiply(ROOT_TWO).multiply(sem, MathContext.DECIMAL64);
  }
}
