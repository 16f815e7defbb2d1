package styloid.model.agreement;

/**
 * Standard error of measurement and the smallest change beyond it; all in the unit of the
 * measurements.
 */
public final class MeasurementError {
  private static final double FOR_90 = 1.65;
  private static final double FOR_95 = 1.96;

  private MeasurementError() {}

  /**
   * SD x sqrt(1 - ICC), where the SD is that of the ratings the coefficient is of. A coefficient
   * below zero is taken as zero: the error is never more than the spread.
   *
   * @param sd standard deviation, from 0
   * @param icc at most 1
   */
  public static double sem(double sd, double icc) {
    if (!(sd >= 0 && icc <= 1)) {
      throw new IllegalArgumentException("no SEM from SD " + sd + " and ICC " + icc);
    }
    return sd * Math.sqrt(1 - Math.max(0, icc));
  }

  /** Least change beyond error at 90 %: 1.65 x sqrt(2) x SEM. */
  public static double mdc90(double sem) {
    return FOR_90 * Math.sqrt(2) * sem;
  }

  /** Least change beyond error at 95 %: 1.96 x sqrt(2) x SEM. */
  public static double mdc95(double sem) {
    return FOR_95 * Math.sqrt(2) * sem;
  }
}
