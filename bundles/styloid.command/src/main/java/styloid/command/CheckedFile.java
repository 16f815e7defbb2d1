package styloid.command;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import styloid.model.PatientRecord;

/**
 * A file and what was found in it.
 *
 * @param record empty when there are problems
 * @param problems what must be put right before the file can be used
 * @param notes what is unusual, yet can be used
 */
record CheckedFile(
    Path file, Optional<PatientRecord> record, List<String> problems, List<String> notes) {
  CheckedFile {
    problems = List.copyOf(problems);
    notes = List.copyOf(notes);
  }
}
