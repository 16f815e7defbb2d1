package styloid.store;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import styloid.model.Patient;

/** How the caseload is searched: without regard to case and accents, every word anywhere. */
final class Search {
  private static final int MOST_WORDS = 8;

  private Search() {}

  /** What a patient is found by. */
  static String text(Patient patient) {
    String birthDate = patient.birthDate().map(Object::toString).orElse("");
    return folded(patient.name()) + "\n" + folded(patient.recordNumber()) + "\n" + birthDate;
  }

  /** A LIKE pattern, with {@code \} as escape, for each word typed. */
  static List<String> patterns(String typed) {
    ArrayList<String> patterns = new ArrayList<>();
    for (String word : folded(typed).strip().split("\\s+")) {
      if (!word.isEmpty() && patterns.size() < MOST_WORDS) {
        patterns.add("%" + word.replaceAll("([\\\\%_])", "\\\\$1") + "%");
      }
    }
    return patterns;
  }

  private static String folded(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKD)
        .replaceAll("\\p{M}+", "")
        .toLowerCase(Locale.ROOT)
        .replace("ß", "ss")
        .replaceAll("\\p{Cntrl}", " ");
  }
}
