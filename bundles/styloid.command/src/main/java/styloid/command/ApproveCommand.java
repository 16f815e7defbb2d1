package styloid.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import styloid.spi.OuterModules;

/** Lets a bundle from outside run, once its name, version and content are confirmed. */
@Command(name = "approve")
final class ApproveCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Parameters(paramLabel = "JAR", descriptionKey = "jar")
  private Path jar;

  @Option(names = "--sha256", paramLabel = "HEX", descriptionKey = "sha256")
  private String sha256;

  ApproveCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    Optional<OuterModules> outer = surroundings.outer().get();
    if (outer.isEmpty()) {
      surroundings.say(surroundings.err(), "approve.no-part");
      return ExitCode.NOT_WORKING;
    }
    if (!Files.isRegularFile(jar)) {
      surroundings.say(surroundings.err(), "not-there", jar.toString());
      return ExitCode.PROBLEMS;
    }
    OuterModules.Found found;
    try {
      found = outer.get().look(jar);
    } catch (IOException e) {
      surroundings.say(
          surroundings.err(), "approve.no-module", jar.toString(), String.valueOf(e.getMessage()));
      return ExitCode.PROBLEMS;
    }
    return decide(outer.get(), found);
  }

  private int decide(OuterModules outer, OuterModules.Found found) {
    surroundings.say(
        surroundings.out(), "approve.is", found.name(), found.version(), found.sha256());
    if (sha256 == null) {
      surroundings.say(surroundings.out(), "approve.how", jar.toString(), found.sha256());
      return ExitCode.OK;
    }
    if (!sha256.equalsIgnoreCase(found.sha256())) {
      surroundings.say(surroundings.err(), "approve.differs");
      return ExitCode.PROBLEMS;
    }
    try {
      outer.approve(found);
    } catch (IOException e) {
      surroundings.say(surroundings.err(), "disk", String.valueOf(e));
      return ExitCode.STORAGE;
    }
    surroundings.say(surroundings.out(), "approve.done", found.name(), found.version());
    return ExitCode.OK;
  }
}
