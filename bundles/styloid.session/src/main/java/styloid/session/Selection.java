package styloid.session;

import java.time.LocalDate;
import java.util.Optional;
import styloid.model.Evaluation;

/**
 * Which evaluations are wanted.
 *
 * @param search words as typed to find patients; blank for all
 * @param from first day, included
 * @param until last day, included
 * @param therapist as written in the evaluations, without regard to case; blank for any
 */
public record Selection(
    String search,
    Optional<LocalDate> from,
    Optional<LocalDate> until,
    String therapist,
    boolean signedOnly) {

  /** Every evaluation. */
  public static Selection all() {
    return new Selection("", Optional.empty(), Optional.empty(), "", false);
  }

  /** Whether an evaluation of a patient who was found is wanted. */
  public boolean has(Evaluation evaluation) {
    return from.map(day -> !evaluation.date().isBefore(day)).orElse(true)
        && until.map(day -> !evaluation.date().isAfter(day)).orElse(true)
        && (therapist.isBlank()
            || therapist.strip().equalsIgnoreCase(evaluation.therapist().value().strip()))
        && (!signedOnly || evaluation.state() == Evaluation.State.SIGNED);
  }
}
