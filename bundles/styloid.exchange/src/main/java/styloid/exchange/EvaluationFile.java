package styloid.exchange;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import styloid.exchange.json.Fields;
import styloid.exchange.json.JsonReader;
import styloid.exchange.json.Problems;
import styloid.model.FileProblem;
import styloid.model.PatientRecord;

/**
 * Reads and writes evaluation files: one patient, their precautions and evaluations, as JSON in
 * UTF-8. {@code docs/evaluation-file.md} describes the format.
 */
public final class EvaluationFile {
  private EvaluationFile() {}

  /** What came of reading: the record, or every problem found. */
  public record Read(Optional<PatientRecord> record, List<FileProblem> problems) {}

  /**
   * Reads a file's bytes; bytes that are no UTF-8 are a problem of the file.
   *
   * @throws IOException only when reading itself fails; whatever is wrong in the text is a problem
   */
  public static Read read(InputStream utf8) throws IOException {
    return read(new InputStreamReader(utf8, StandardCharsets.UTF_8.newDecoder()));
  }

  /**
   * Reads a file's text. Closing the reader is left to the caller.
   *
   * @throws IOException only when reading itself fails; whatever is wrong in the text is a problem
   */
  public static Read read(Reader in) throws IOException {
    Problems problems = new Problems();
    Optional<PatientRecord> record =
        JsonReader.read(in, problems)
            .map(Fields.object(new EvaluationReader()::record).with(problems));
    return new Read(problems.count() == 0 ? record : Optional.empty(), problems.list());
  }

  /** Writes a record; the same record always gives the same characters. */
  public static void write(PatientRecord record, Writer out) throws IOException {
    new EvaluationWriter(new JsonWriter(out)).record(record);
    out.flush();
  }
}
