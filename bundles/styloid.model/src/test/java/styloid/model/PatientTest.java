package styloid.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PatientTest {
  private static Patient patient(String number, LocalDate birth, Set<Side> involved) {
    return new Patient(
        new PatientId(new UUID(1, 2)),
        number,
        "Made-up Person",
        Optional.ofNullable(birth),
        Optional.empty(),
        Optional.empty(),
        involved,
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          2000-03-02, 2026-03-01, 25
          2000-03-02, 2026-03-02, 26
          2004-02-29, 2026-02-28, 21
          2004-02-29, 2026-03-01, 22
          2026-03-02, 2026-03-02, 0
          """)
  void ageIsInCompletedYears(LocalDate birth, LocalDate day, int age) {
    assertEquals(Optional.of(age), patient("1", birth, Set.of()).ageOn(day));
  }

  @Test
  void ageIsUnknownWithoutABirthDateOrBeforeIt() {
    LocalDate day = LocalDate.of(2026, 3, 2);
    assertEquals(Optional.empty(), patient("1", null, Set.of()).ageOn(day));
    assertEquals(Optional.empty(), patient("1", day.plusDays(1), Set.of()).ageOn(day));
  }

  @Test
  void leadingZerosOfARecordNumberStay() {
    assertEquals("00042", patient("00042", null, Set.of()).recordNumber());
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "   "})
  void aRecordNumberIsNeeded(String number) {
    assertThrows(IllegalArgumentException.class, () -> patient(number, null, Set.of()));
  }

  @Test
  void anInvolvedSideIsRightOrLeft() {
    assertThrows(IllegalArgumentException.class, () -> patient("1", null, Set.of(Side.UNSIDED)));
  }
}
