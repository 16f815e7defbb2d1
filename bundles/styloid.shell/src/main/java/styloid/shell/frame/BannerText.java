package styloid.shell.frame;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import styloid.form.PrecautionText;
import styloid.model.Patient;
import styloid.model.Precaution;
import styloid.model.Side;
import styloid.spi.Texts;

/** The words of the patient banner. */
public final class BannerText {
  private BannerText() {}

  /**
   * Birth date and age, record number, preferred hand, involved side; what is unknown is said so.
   *
   * @param day the day the age is counted on
   */
  public static List<String> facts(Patient patient, LocalDate day, Texts texts) {
    ArrayList<String> facts = new ArrayList<>();
    facts.add(born(patient, day, texts));
    facts.add(Shell.say(texts, "banner.record", patient.recordNumber()));
    facts.add(
        patient.dominance().map(texts::word).orElse(Shell.say(texts, "banner.dominance-unknown")));
    facts.add(involved(patient, texts));
    return facts;
  }

  private static String born(Patient patient, LocalDate day, Texts texts) {
    if (patient.birthDate().isEmpty()) {
      return Shell.say(texts, "banner.birth-unknown");
    }
    String date = texts.date(patient.birthDate().get());
    return patient
        .ageOn(day)
        .map(age -> Shell.say(texts, "banner.born-age", date, age))
        .orElse(Shell.say(texts, "banner.born", date));
  }

  private static String involved(Patient patient, Texts texts) {
    String sides =
        Stream.of(Side.RIGHT, Side.LEFT)
            .filter(patient.involved()::contains)
            .map(texts::word)
            .collect(Collectors.joining(Shell.say(texts, "banner.and")));
    return sides.isEmpty()
        ? Shell.say(texts, "banner.involved-none")
        : Shell.say(texts, "banner.involved", sides);
  }

  /** Each precaution in force on the day, with who set it. */
  public static List<String> inForce(List<Precaution> precautions, LocalDate day, Texts texts) {
    return precautions.stream()
        .filter(p -> p.inForceOn(day))
        .map(p -> PrecautionText.of(p, texts))
        .toList();
  }
}
