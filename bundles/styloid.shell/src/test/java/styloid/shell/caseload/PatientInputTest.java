package styloid.shell.caseload;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.Side;
import styloid.shell.caseload.PatientInput.Field;

class PatientInputTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
  private static final PatientId ID = new PatientId(new UUID(1, 2));

  private static PatientInput input(Map<Field, String> texts) {
    return new PatientInput(
        texts, Optional.empty(), Optional.of(Patient.Dominance.LEFT), Set.of(Side.RIGHT));
  }

  @Test
  void recordNumberAndNameAreEnough() {
    PatientInput input = input(Map.of(Field.RECORD, " 007 ", Field.NAME, "Sample Person"));
    assertEquals(Map.of(), input.problems(TODAY));
    Patient patient = input.patient(ID);
    assertEquals("007", patient.recordNumber());
    assertEquals(Optional.empty(), patient.birthDate());
    assertEquals(Set.of(Side.RIGHT), patient.involved());
  }

  @Test
  void whatIsMissingIsNamed() {
    assertEquals(
        Set.of(Field.RECORD, Field.NAME), input(Map.of(Field.NAME, " ")).problems(TODAY).keySet());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          1961-04-23, ''
          2026-03-02, ''
          2026-03-03, problem.future
          1961-02-30, problem.date
          23.4.1961,  problem.date
          '',         ''
          """)
  void datesAreYearMonthDayAndNotInTheFuture(String typed, String problem) {
    PatientInput input = input(Map.of(Field.RECORD, "1", Field.NAME, "N", Field.BIRTH, typed));
    assertEquals(problem, input.problems(TODAY).getOrDefault(Field.BIRTH, ""));
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          30, true
          29.9, false
          260, true
          260.1, false
          170.5, true
          '170,5', true
          1.70, false
          tall, false
          """)
  void heightIsThirtyToTwoHundredSixtyCentimetres(String typed, boolean accepted) {
    PatientInput input = input(Map.of(Field.RECORD, "1", Field.NAME, "N", Field.HEIGHT, typed));
    assertEquals(accepted, !input.problems(TODAY).containsKey(Field.HEIGHT));
  }

  @Test
  void aKnownPatientComesBackUnchanged() {
    PatientInput input =
        input(
            Map.of(
                Field.RECORD, "0042",
                Field.NAME, "Sample Person",
                Field.BIRTH, "1970-01-31",
                Field.DIAGNOSIS, "made up",
                Field.SURGERY, "2026-01-05",
                Field.HEIGHT, "171.5"));
    Patient patient = input.patient(ID);
    assertEquals(patient, PatientInput.of(patient).patient(ID));
    assertTrue(patient.onset().isEmpty());
  }
}
