package styloid.shell.caseload;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.Side;

/**
 * What was typed about a patient, and what is wrong with it.
 *
 * @param texts as typed; a field not in the map is empty
 */
record PatientInput(
    Map<Field, String> texts,
    Optional<Patient.Sex> sex,
    Optional<Patient.Dominance> dominance,
    Set<Side> involved) {
  private static final BigDecimal SHORTEST = BigDecimal.valueOf(30);
  private static final BigDecimal TALLEST = BigDecimal.valueOf(260);

  /** Fields that are typed; their words are {@code patient.field.<code>}. */
  enum Field {
    RECORD,
    NAME,
    BIRTH,
    DIAGNOSIS,
    ONSET,
    SURGERY,
    HEIGHT
  }

  PatientInput {
    texts = Map.copyOf(texts);
    involved = Set.copyOf(involved);
  }

  private String text(Field field) {
    return texts.getOrDefault(field, "").strip();
  }

  /** For each wrong field the key of the words that say what to do. */
  Map<Field, String> problems(LocalDate today) {
    EnumMap<Field, String> wrong = new EnumMap<>(Field.class);
    name(Field.RECORD, 60, "problem.record", wrong);
    name(Field.NAME, 200, "problem.name", wrong);
    day(Field.BIRTH, today, wrong);
    day(Field.ONSET, today, wrong);
    day(Field.SURGERY, today, wrong);
    if (!text(Field.HEIGHT).isEmpty() && height().isEmpty()) {
      wrong.put(Field.HEIGHT, "problem.height");
    }
    return wrong;
  }

  private void name(Field field, int longest, String key, Map<Field, String> wrong) {
    if (text(field).isEmpty() || text(field).length() > longest) {
      wrong.put(field, key);
    }
  }

  private void day(Field field, LocalDate today, Map<Field, String> wrong) {
    if (text(field).isEmpty()) {
      return;
    }
    Optional<LocalDate> day = date(text(field));
    if (day.isEmpty()) {
      wrong.put(field, "problem.date");
    } else if (day.get().isAfter(today)) {
      wrong.put(field, "problem.future");
    }
  }

  private Optional<BigDecimal> height() {
    String text = text(Field.HEIGHT).replace(',', '.');
    if (!text.matches("\\d{2,3}(\\.\\d)?")) {
      return Optional.empty();
    }
    return Optional.of(new BigDecimal(text))
        .filter(h -> h.compareTo(SHORTEST) >= 0 && h.compareTo(TALLEST) <= 0);
  }

  /**
   * The patient as typed.
   *
   * @throws IllegalArgumentException when there are problems
   */
  Patient patient(PatientId id) {
    return new Patient(
        id,
        text(Field.RECORD),
        text(Field.NAME),
        date(text(Field.BIRTH)),
        sex,
        dominance,
        involved,
        text(Field.DIAGNOSIS),
        date(text(Field.ONSET)),
        date(text(Field.SURGERY)),
        height());
  }

  /** The day written as year-month-day; empty when it is none. */
  static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text.strip()));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  static PatientInput of(Patient patient) {
    EnumMap<Field, String> texts = new EnumMap<>(Field.class);
    texts.put(Field.RECORD, patient.recordNumber());
    texts.put(Field.NAME, patient.name());
    patient.birthDate().ifPresent(d -> texts.put(Field.BIRTH, d.toString()));
    texts.put(Field.DIAGNOSIS, patient.diagnosis());
    patient.onset().ifPresent(d -> texts.put(Field.ONSET, d.toString()));
    patient.surgery().ifPresent(d -> texts.put(Field.SURGERY, d.toString()));
    patient.heightCm().ifPresent(h -> texts.put(Field.HEIGHT, h.toPlainString()));
    return new PatientInput(texts, patient.sex(), patient.dominance(), patient.involved());
  }
}
