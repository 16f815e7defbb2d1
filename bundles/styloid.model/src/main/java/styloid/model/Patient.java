package styloid.model;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.Period;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * The person examined. All but id, record number and name may be unknown; every rule says what it
 * does then.
 *
 * @param recordNumber as the clinic writes it, leading zeros kept
 * @param sex as published norms group people
 * @param involved limbs under treatment; empty when none or not said
 * @param heightCm body height in centimetres, for norms by height
 */
public record Patient(
    PatientId id,
    String recordNumber,
    String name,
    Optional<LocalDate> birthDate,
    Optional<Sex> sex,
    Optional<Dominance> dominance,
    Set<Side> involved,
    String diagnosis,
    Optional<LocalDate> onset,
    Optional<LocalDate> surgery,
    Optional<BigDecimal> heightCm) {

  /** Sex as norm tables use it. */
  public enum Sex {
    FEMALE,
    MALE;

    public String code() {
      return Codes.of(this);
    }
  }

  /** The preferred hand. */
  public enum Dominance {
    RIGHT,
    LEFT,
    EITHER;

    public String code() {
      return Codes.of(this);
    }
  }

  public Patient {
    Objects.requireNonNull(id, "id");
    required(recordNumber, "record number", 60);
    required(name, "name", 200);
    Objects.requireNonNull(birthDate, "birthDate");
    Objects.requireNonNull(sex, "sex");
    Objects.requireNonNull(dominance, "dominance");
    involved = Set.copyOf(involved);
    if (involved.contains(Side.UNSIDED)) {
      throw new IllegalArgumentException("an involved side is right or left");
    }
    Objects.requireNonNull(diagnosis, "diagnosis");
    Objects.requireNonNull(onset, "onset");
    Objects.requireNonNull(surgery, "surgery");
    Objects.requireNonNull(heightCm, "heightCm");
  }

  private static void required(String text, String what, int longest) {
    if (text == null || text.isBlank() || text.length() > longest) {
      throw new IllegalArgumentException(
          "a patient needs a " + what + " of 1 to " + longest + " characters");
    }
  }

  /** Completed years on a day; empty when the birth date is unknown or after that day. */
  public Optional<Integer> ageOn(LocalDate day) {
    return birthDate.filter(b -> !b.isAfter(day)).map(b -> Period.between(b, day).getYears());
  }
}
