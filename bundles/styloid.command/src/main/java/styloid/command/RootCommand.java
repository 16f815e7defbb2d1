package styloid.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The word before all commands. The launcher takes its own options out before. */
@Command(name = "styloid")
final class RootCommand implements Callable<Integer> {
  private final Surroundings surroundings;

  @Spec private CommandSpec spec;

  @Option(names = "--version", versionHelp = true, descriptionKey = "version")
  private boolean version;

  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      descriptionKey = "help")
  private boolean help;

  RootCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public Integer call() {
    spec.commandLine().usage(surroundings.err());
    return ExitCode.USAGE;
  }
}
