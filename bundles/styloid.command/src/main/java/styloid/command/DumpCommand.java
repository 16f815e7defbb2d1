package styloid.command;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryNotEmptyException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import styloid.exchange.EvaluationFile;
import styloid.model.PatientRecord;
import styloid.store.CaseloadRow;
import styloid.store.StoreException;

/**
 * Writes all records as evaluation files, whatever engine keeps them: one a patient, each read back
 * and compared before it gets its name.
 */
@Command(name = "dump")
final class DumpCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Option(names = "--to", required = true, paramLabel = "DIR", descriptionKey = "dump-to")
  private Path to;

  DumpCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException, StoreException {
    Files.createDirectories(to);
    requireEmpty();
    List<CaseloadRow> rows = surroundings.session().caseload("", Integer.MAX_VALUE);
    int evaluations = 0;
    for (CaseloadRow row : rows) {
      Optional<PatientRecord> record = surroundings.session().patientRecord(row.patient().id());
      if (record.isEmpty()) {
        surroundings.say(surroundings.err(), "dump.gone", row.patient().recordNumber());
        return ExitCode.STORAGE;
      }
      write(record.get());
      evaluations += record.get().evaluations().size();
    }
    surroundings.say(surroundings.out(), "dump.done", rows.size(), evaluations);
    return ExitCode.OK;
  }

  /** So that no file of an earlier dump is taken for one of this. */
  private void requireEmpty() throws IOException {
    try (DirectoryStream<Path> there = Files.newDirectoryStream(to)) {
      if (there.iterator().hasNext()) {
        throw new DirectoryNotEmptyException(to.toString());
      }
    }
  }

  /** The name is the patient's own id, which no two patients share and which tells nothing. */
  private void write(PatientRecord record) throws IOException {
    Path target = to.resolve(record.patient().id() + ".json");
    Path unfinished = to.resolve(record.patient().id() + ".part");
    try (BufferedWriter out = Files.newBufferedWriter(unfinished)) {
      EvaluationFile.write(record, out);
    }
    try (InputStream in = Files.newInputStream(unfinished)) {
      if (!EvaluationFile.read(in).record().equals(Optional.of(record))) {
        throw new IOException(unfinished + " does not read back equal");
      }
    }
    Files.move(unfinished, target, StandardCopyOption.ATOMIC_MOVE);
  }
}
