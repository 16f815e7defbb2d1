package styloid.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Judges evaluation files and changes nothing. */
@Command(name = "check")
final class CheckCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(arity = "1..*", paramLabel = "FILE|FOLDER", descriptionKey = "files")
  private List<Path> files;

  CheckCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() throws IOException {
    Inputs inputs = new Inputs(surroundings);
    List<CheckedFile> read = inputs.read(files);
    boolean usable = inputs.usable(read);
    long good = read.stream().filter(file -> file.record().isPresent()).count();
    surroundings.say(surroundings.out(), "check.done", (int) good, read.size());
    return usable ? ExitCode.OK : ExitCode.PROBLEMS;
  }
}
