package styloid.exchange;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.util.List;
import java.util.Optional;
import styloid.model.PatientRecord;

/** Reads and writes evaluation files: one patient, their precautions and evaluations. */
public final class EvaluationFile {
  private EvaluationFile() {}

  /** What came of reading: the record, or every problem found. */
  public record Read(Optional<PatientRecord> record, List<FileProblem> problems) {}

  /**
   * Reads a file.
   *
   * @throws IOException only when reading itself fails; whatever is wrong in the text is a problem
   */
  public static Read read(Reader in) throws IOException {
    throw new UnsupportedOperationException("not yet");
  }

  /** Writes a record; the same record always gives the same characters. */
  public static void write(PatientRecord record, Writer out) throws IOException {
    throw new UnsupportedOperationException("not yet");
  }
}
