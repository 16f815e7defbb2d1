package styloid.model.norm;

import java.math.BigDecimal;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Side;

/**
 * Whom to look up. Facts may be unknown; the answer then says which one a table needs.
 *
 * @param age completed years
 * @param side the hand or limb; {@link Side#UNSIDED} for the person as a whole
 * @param dominance needed only by tables that tell the dominant hand from the other
 * @param heightCm body height; rounded to whole centimetres, halves up
 * @param keys a value for each extra key column of the table
 */
public record NormQuery(
    Optional<Patient.Sex> sex,
    Optional<Integer> age,
    Side side,
    Optional<Patient.Dominance> dominance,
    Optional<BigDecimal> heightCm,
    Map<String, String> keys) {
  public NormQuery {
    Objects.requireNonNull(sex, "sex");
    Objects.requireNonNull(age, "age");
    Objects.requireNonNull(side, "side");
    Objects.requireNonNull(dominance, "dominance");
    Objects.requireNonNull(heightCm, "heightCm");
    keys = Map.copyOf(keys);
  }

  /** The patient of a context, at the age of the evaluation's day. */
  public static NormQuery of(PatientContext context, Side side, Map<String, String> keys) {
    Patient patient = context.patient();
    return new NormQuery(
        patient.sex(), context.age(), side, patient.dominance(), patient.heightCm(), keys);
  }

  /** The hand in a table's own words; empty when it cannot be told. */
  Optional<NormHand> hand(boolean byDominance) {
    if (side == Side.UNSIDED) {
      return Optional.empty();
    }
    if (!byDominance) {
      return Optional.of(side == Side.RIGHT ? NormHand.RIGHT : NormHand.LEFT);
    }
    return dominance
        .filter(d -> d != Patient.Dominance.EITHER)
        .map(d -> (d == Patient.Dominance.RIGHT) == (side == Side.RIGHT))
        .map(dominant -> dominant ? NormHand.DOMINANT : NormHand.NON_DOMINANT);
  }
}
