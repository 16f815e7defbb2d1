package styloid.goniometry;

import java.util.Optional;
import styloid.model.Message;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.norm.Band;
import styloid.model.norm.NormRow;

/**
 * Whom a row of a table describes; an empty part does not restrict.
 *
 * @param age completed years, both ends included
 * @param mode active or passive motion only
 */
record Population(Optional<Patient.Sex> sex, Band age, Optional<Mode> mode) {

  static Population of(NormRow row, Optional<Mode> mode) {
    return new Population(row.sex(), row.age(), mode);
  }

  /** Why the patient and mode do not belong to it; empty when they do. */
  Optional<Message> refuses(PatientContext context, Mode asked) {
    if (mode.isPresent() && mode.get() != asked) {
      return Optional.of(Calculation.words("unavailable.mode-" + mode.get().code()));
    }
    Optional<Patient.Sex> patient = context.patient().sex();
    if (sex.isPresent() && patient.isEmpty()) {
      return Optional.of(Calculation.words("unavailable.sex-unknown"));
    }
    if (sex.isPresent() && !patient.equals(sex)) {
      return Optional.of(Calculation.words("unavailable.sex", sex.get()));
    }
    return age.equals(Band.ALL) ? Optional.empty() : refusesAge(context.age());
  }

  private Optional<Message> refusesAge(Optional<Integer> years) {
    if (years.isEmpty()) {
      return Optional.of(Calculation.words("unavailable.age-unknown"));
    }
    return age.holds(years.get())
        ? Optional.empty()
        : Optional.of(Calculation.words("unavailable.age", years.get(), age.toString()));
  }
}
