package styloid.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import styloid.model.PatientRecord;
import styloid.store.StoreException;

/** Stores the records of evaluation files: all of them, or none. */
@Command(name = "import")
final class ImportCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(arity = "1..*", paramLabel = "FILE|FOLDER", descriptionKey = "files")
  private List<Path> files;

  @Option(names = "--if-empty", descriptionKey = "if-empty")
  private boolean ifEmpty;

  ImportCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException, StoreException {
    if (ifEmpty && !surroundings.session().caseload("", 1).isEmpty()) {
      return ExitCode.OK;
    }
    Inputs inputs = new Inputs(surroundings);
    List<CheckedFile> read = inputs.read(files);
    if (!inputs.usable(read)) {
      surroundings.say(surroundings.err(), "import.refused");
      return ExitCode.PROBLEMS;
    }
    List<PatientRecord> records =
        read.stream().map(CheckedFile::record).flatMap(Optional::stream).toList();
    int added = surroundings.session().importRecords(records);
    surroundings.say(surroundings.out(), "import.done", records.size(), added);
    return ExitCode.OK;
  }
}
