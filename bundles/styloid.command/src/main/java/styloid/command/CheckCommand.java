package styloid.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import styloid.spi.DeclaredTests;

/** Judges evaluation files and declared tests and changes nothing. */
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
    ArrayList<Path> evaluations = new ArrayList<>();
    ArrayList<Path> tests = new ArrayList<>();
    for (Path file : files) {
      (DeclaredInputs.isOne(file) ? tests : evaluations).add(file);
    }
    Inputs inputs = new Inputs(surroundings);
    List<CheckedFile> read = inputs.read(evaluations);
    boolean usable = inputs.usable(read);
    int good = (int) read.stream().filter(file -> file.record().isPresent()).count();
    Optional<DeclaredTests> declared = surroundings.declared().get();
    if (declared.isEmpty() && !tests.isEmpty()) {
      surroundings.say(surroundings.err(), "declared.no-reader");
      return ExitCode.NOT_WORKING;
    }
    for (Path test : tests) {
      boolean sound = soundTest(declared.orElseThrow(), test);
      good += sound ? 1 : 0;
      usable &= sound;
    }
    surroundings.say(surroundings.out(), "check.done", good, read.size() + tests.size());
    return usable ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  private boolean soundTest(DeclaredTests declared, Path file) throws IOException {
    DeclaredInputs inputs = new DeclaredInputs(surroundings);
    DeclaredTests.Read read = inputs.read(declared, file);
    if (!inputs.sound(file, read.problems())) {
      return false;
    }
    var id = read.module().orElseThrow().definition().id();
    if (surroundings.session().tests().stream().anyMatch(test -> test.id().equals(id))) {
      surroundings.say(surroundings.err(), "declared.present", file.toString(), id.value());
    }
    return true;
  }
}
