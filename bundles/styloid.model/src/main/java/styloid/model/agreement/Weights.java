package styloid.model.agreement;

/**
 * How much two classes differ: 0 on the diagonal, more for more disagreement. Only ratios matter.
 */
public interface Weights {
  /** Any disagreement counts the same. */
  Weights UNWEIGHTED = (row, column) -> row == column ? 0 : 1;

  /** By the number of classes apart. */
  Weights LINEAR = (row, column) -> Math.abs(row - column);

  /** By its square. */
  Weights QUADRATIC = (row, column) -> (double) (row - column) * (row - column);

  /** Disagreement of two classes by their places, from 0. */
  double of(int row, int column);
}
