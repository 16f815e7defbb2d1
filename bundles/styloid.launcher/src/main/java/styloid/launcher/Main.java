package styloid.launcher;

import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.net.URISyntaxException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Where the process begins: reads the command line, then opens the window or runs a command. */
public final class Main {
  private static final System.Logger LOG = System.getLogger(Main.class.getName());

  private final Words words = new Words();
  private final PrintWriter out = writer(FileDescriptor.out);
  private final PrintWriter err = writer(FileDescriptor.err);

  private Main() {}

  public static void main(String[] args) {
    // Standard output belongs to the command alone: whatever a library prints goes elsewhere.
    System.setOut(System.err);
    Main main = new Main();
    int code = main.run(args);
    main.out.flush();
    main.err.flush();
    System.exit(code);
  }

  /** A terminal gets its own character set, a file or pipe UTF-8. */
  private static PrintWriter writer(FileDescriptor descriptor) {
    Console console = System.console();
    Charset charset = console == null ? StandardCharsets.UTF_8 : console.charset();
    return new PrintWriter(new OutputStreamWriter(new FileOutputStream(descriptor), charset), true);
  }

  private int run(String... args) {
    try {
      Arguments asked = Arguments.parse(words, args);
      Path home = Suite.homeOfThisJar();
      String os = System.getProperty("os.name");
      if (asked.window() && !Display.expected(System.getenv(), os)) {
        throw new StartException(
            ExitCode.NO_DISPLAY, Display.none(words, home, Path.of("").toAbsolutePath()), null);
      }
      Path data = DataFolder.choose(asked, System.getenv(), os, System.getProperty("user.home"));
      return asked.window() ? window(asked, home, data) : command(asked, home, data);
    } catch (StartException e) {
      err.println(e.getMessage());
      return e.exitCode();
    } catch (URISyntaxException | RuntimeException | LinkageError e) {
      LOG.log(System.Logger.Level.DEBUG, "Not started", e);
      err.println(words.text("not-started", e));
      return ExitCode.NOT_STARTED;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return ExitCode.NOT_STARTED;
    }
  }

  private int command(Arguments asked, Path home, Path data) throws StartException {
    try (Suite suite = open(home, data)) {
      return new Headless(words, err).run(suite, asked.words());
    }
  }

  private int window(Arguments asked, Path home, Path data)
      throws StartException, InterruptedException {
    WindowRun window = new WindowRun(words, out, err);
    window.show();
    try (Suite suite = open(home, data)) {
      return window.run(suite, data, asked.demo());
    } catch (StartException e) {
      window.reportAlone(e.getMessage());
      throw e;
    }
  }

  private Suite open(Path home, Path data) throws StartException {
    Suite suite = Suite.open(words, home, data);
    suite.container().offer(PrintWriter.class, out, "out");
    suite.container().offer(PrintWriter.class, err, "err");
    // Also when the process is told to end: parts save before it does.
    Runtime.getRuntime().addShutdownHook(new Thread(suite::close, "styloid-stop"));
    return suite;
  }
}
