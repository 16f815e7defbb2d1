package styloid.session;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import styloid.model.Evaluation;
import styloid.model.Patient;

/**
 * Names for workbooks: record number and date, never the patient's name, with whatever a file
 * system may refuse replaced. One namer never gives a name twice, also not on systems that do not
 * tell capitals apart.
 */
public final class FileNames {
  private final Set<String> given = new HashSet<>();

  /** The next name for an evaluation, with the ending. */
  public String next(Patient patient, Evaluation evaluation) {
    String start = safe(patient.recordNumber()) + "_" + evaluation.date();
    String name = start;
    for (int number = 2; !given.add(name.toLowerCase(Locale.ROOT)); number++) {
      name = start + "_" + number;
    }
    return name + ".xlsx";
  }

  private static String safe(String recordNumber) {
    return recordNumber.strip().replaceAll("[^\\p{L}\\p{N}-]+", "_");
  }
}
