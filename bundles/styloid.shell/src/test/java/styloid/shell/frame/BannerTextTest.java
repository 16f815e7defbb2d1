package styloid.shell.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import styloid.model.Digit;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Side;
import styloid.spi.Texts;

class BannerTextTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private final Texts texts = Shell.withOwn(new Texts(Map.of(), Locale.UK));

  private static Patient patient(Optional<LocalDate> born, Set<Side> involved) {
    return new Patient(
        new PatientId(new UUID(1, 1)),
        "007",
        "Sample Person",
        born,
        Optional.empty(),
        born.map(b -> Patient.Dominance.LEFT),
        involved,
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void saysBirthAgeRecordHandAndSideInWords() {
    assertEquals(
        List.of(
            "born 3 Mar 1970, 55 years",
            "record 007",
            "left-handed",
            "involved side: right and left"),
        BannerText.facts(
            patient(Optional.of(LocalDate.of(1970, 3, 3)), Set.of(Side.LEFT, Side.RIGHT)),
            DAY,
            texts));
  }

  @Test
  void saysWhatIsUnknown() {
    assertEquals(
        List.of(
            "birth date unknown", "record 007", "dominant hand unknown", "no involved side given"),
        BannerText.facts(patient(Optional.empty(), Set.of()), DAY, texts));
  }

  @Test
  void namesPrecautionsOfTheDayWithWhoSetThem() {
    Precaution now = limit(Optional.of(DAY));
    Precaution over = limit(Optional.of(DAY.minusDays(1)));
    assertEquals(
        List.of("no resistance: left wrist, until 2 Mar 2026, set by Dr Example, in plaster"),
        BannerText.inForce(List.of(now, over), DAY, texts));
  }

  private static Precaution limit(Optional<LocalDate> until) {
    return new Precaution(
        Precaution.Kind.NO_RESISTANCE,
        Region.WRIST,
        Side.LEFT,
        Digit.NONE,
        Optional.empty(),
        until,
        "Dr Example",
        "in plaster");
  }
}
