package styloid.model.norm;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import styloid.model.Patient;
import styloid.model.SourceStatus;

/**
 * One row of a norm table. Numbers are in the table's unit, digits as printed.
 *
 * @param line line of the file, from 1
 * @param sex empty when the row holds for both
 * @param age completed years
 * @param height whole centimetres; {@link Band#ALL} when the row does not ask
 * @param keys value of each extra key column, such as {@code measure}
 * @param mean empty where the source prints none
 * @param sd above zero; empty where the source prints none
 * @param centiles printed centiles by their number (10 for the 10th)
 * @param others every further column that is filled in, such as {@code note}
 */
public record NormRow(
    int line,
    Optional<Patient.Sex> sex,
    Band age,
    Band height,
    NormHand hand,
    Map<String, String> keys,
    Optional<BigDecimal> mean,
    Optional<BigDecimal> sd,
    SortedMap<Integer, BigDecimal> centiles,
    SourceStatus status,
    Map<String, String> others) {
  public NormRow {
    Objects.requireNonNull(sex, "sex");
    Objects.requireNonNull(age, "age");
    Objects.requireNonNull(height, "height");
    Objects.requireNonNull(hand, "hand");
    keys = Map.copyOf(keys);
    Objects.requireNonNull(mean, "mean");
    Objects.requireNonNull(sd, "sd");
    centiles = Collections.unmodifiableSortedMap(new TreeMap<>(centiles));
    Objects.requireNonNull(status, "status");
    others = Map.copyOf(others);
  }

  /** What two rows must share to be bands of one series. */
  String series() {
    return sex.map(Patient.Sex::code).orElse("any")
        + "/"
        + hand
        + "/"
        + new TreeMap<String, String>(keys);
  }
}
