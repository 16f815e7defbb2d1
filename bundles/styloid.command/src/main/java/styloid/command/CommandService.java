package styloid.command;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Properties;
import java.util.PropertyResourceBundle;
import java.util.function.ToIntFunction;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferenceCardinality;
import org.osgi.service.component.annotations.ReferencePolicy;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import picocli.CommandLine;
import styloid.session.Session;
import styloid.spi.DeclaredTests;
import styloid.spi.OuterModules;
import styloid.store.StoreException;

/** Runs a command given as words and answers with its exit code; found by the launcher. */
@Component(service = ToIntFunction.class, property = "styloid.role=command")
public final class CommandService implements ToIntFunction<String[]> {
  private static final System.Logger LOG = System.getLogger(CommandService.class.getName());
  private static final int WIDTH = 100;

  private final Surroundings surroundings;

  @Reference(
      cardinality = ReferenceCardinality.OPTIONAL,
      policy = ReferencePolicy.DYNAMIC,
      policyOption = ReferencePolicyOption.GREEDY)
  private volatile DeclaredTests declared;

  @Reference(
      cardinality = ReferenceCardinality.OPTIONAL,
      policy = ReferencePolicy.DYNAMIC,
      policyOption = ReferencePolicyOption.GREEDY)
  private volatile OuterModules outer;

  @Activate
  public CommandService(
      @Reference Session session,
      @Reference(target = "(styloid.role=out)") PrintWriter out,
      @Reference(target = "(styloid.role=err)") PrintWriter err) {
    surroundings =
        new Surroundings(
            session,
            () -> Optional.ofNullable(declared),
            () -> Optional.ofNullable(outer),
            out,
            err);
  }

  @Override
  public int applyAsInt(String[] words) {
    // Modules report to the session on a worker; all of them are there once it has settled.
    surroundings.declared().get().ifPresent(DeclaredTests::settle);
    surroundings.outer().get().ifPresent(OuterModules::settle);
    surroundings.session().settle();
    int code = commands().execute(words);
    surroundings.out().flush();
    surroundings.err().flush();
    return code;
  }

  private CommandLine commands() {
    CommandLine all = new CommandLine(new RootCommand(surroundings));
    all.addSubcommand(new CheckCommand(surroundings));
    all.addSubcommand(new ResultsCommand(surroundings));
    all.addSubcommand(new WorkbookCommand(surroundings));
    all.addSubcommand(new CaseloadCommand(surroundings));
    all.addSubcommand(new ModulesCommand(surroundings));
    all.addSubcommand(new ImportCommand(surroundings));
    all.addSubcommand(new TryCommand(surroundings));
    all.addSubcommand(new ApproveCommand(surroundings));
    all.addSubcommand(new DumpCommand(surroundings));
    all.addSubcommand(new CommandLine.HelpCommand());
    all.setResourceBundle(words());
    all.setOut(surroundings.out());
    all.setErr(surroundings.err());
    all.setColorScheme(CommandLine.Help.defaultColorScheme(CommandLine.Help.Ansi.OFF));
    all.setUsageHelpWidth(WIDTH);
    all.setExecutionExceptionHandler((fault, at, parsed) -> failed(fault));
    all.getCommandSpec().version("Styloid " + version());
    return all;
  }

  private int failed(Exception fault) {
    if (fault instanceof StoreException e) {
      surroundings.err().println(e.getMessage());
      return ExitCode.of(e);
    } else if (fault instanceof IOException e) {
      surroundings.say(surroundings.err(), "disk", String.valueOf(e));
      return ExitCode.STORAGE;
    }
    LOG.log(System.Logger.Level.ERROR, "A command failed", fault);
    surroundings.say(surroundings.err(), "failed", String.valueOf(fault));
    return ExitCode.NOT_WORKING;
  }

  /** The library's own way to its texts looks beside itself, in another bundle. */
  private static PropertyResourceBundle words() {
    try (InputStreamReader in = open("messages.properties")) {
      return new PropertyResourceBundle(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String version() {
    Properties read = new Properties();
    try (InputStreamReader in = open("version.properties")) {
      read.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return read.getProperty("version");
  }

  private static InputStreamReader open(String file) {
    return new InputStreamReader(
        CommandService.class.getResourceAsStream(file), StandardCharsets.UTF_8);
  }
}
