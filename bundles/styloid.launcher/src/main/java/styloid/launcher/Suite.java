package styloid.launcher;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.osgi.framework.BundleException;

/**
 * The suite running on a data folder. Opened without bundles; {@link #startParts} brings them up.
 */
final class Suite implements AutoCloseable {
  private static final System.Logger LOG = System.getLogger(Suite.class.getName());
  private static final Duration SAVING = Duration.ofSeconds(30);

  private final Words words;
  private final Path home;
  private final Scratch scratch;
  private final Container container;
  private boolean closed;

  private Suite(Words words, Path home, Scratch scratch, Container container) {
    this.words = words;
    this.home = home;
    this.scratch = scratch;
    this.container = container;
  }

  /**
   * Starts the framework.
   *
   * @param home folder with {@code conf} and {@code bundles}
   */
  static Suite open(Words words, Path home, Path data) throws StartException {
    Scratch scratch;
    try {
      DataFolder.create(data);
      scratch = Scratch.in(data);
    } catch (IOException e) {
      throw new StartException(
          ExitCode.DATA_FOLDER, words.text("data.unusable", data, reason(words, e)), e);
    }
    try {
      Container container = Container.start(scratch.bundles());
      container.offer(Path.class, data, "data");
      return new Suite(words, home, scratch, container);
    } catch (BundleException e) {
      throw new StartException(ExitCode.NOT_STARTED, words.text("not-started", e), e);
    }
  }

  private static String reason(Words words, IOException e) {
    if (e instanceof AccessDeniedException) {
      return words.text("data.no-permission");
    } else if (e instanceof FileAlreadyExistsException) {
      return words.text("data.file-in-the-way");
    } else if (e instanceof NoSuchFileException) {
      return words.text("data.no-place");
    }
    return String.valueOf(e.getMessage());
  }

  /** The folder this very jar was started from: its parent is {@code lib}. */
  static Path homeOfThisJar() throws URISyntaxException {
    File jar = new File(Suite.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    return jar.toPath().getParent().getParent();
  }

  /** Starts all bundles of the start list. */
  void startParts() throws StartException {
    List<String> list;
    try {
      list = StartList.read(home.resolve("conf"));
    } catch (IOException e) {
      throw new StartException(
          ExitCode.NOT_STARTED, words.text("no-start-list", home.resolve("conf")), e);
    }
    container.startAll(home.resolve("bundles"), list);
  }

  Container container() {
    return container;
  }

  /** The invented patients shipped with the suite. */
  Path demoClinic() {
    return home.resolve("demo");
  }

  /** Runs a command; empty when the part that runs commands did not start. */
  Optional<Integer> run(String... words) {
    @SuppressWarnings("rawtypes")
    Optional<ToIntFunction> command = container.find(ToIntFunction.class, "command");
    return command.map(found -> asCommand(found).applyAsInt(words));
  }

  @SuppressWarnings("unchecked")
  private static ToIntFunction<String[]> asCommand(ToIntFunction<?> service) {
    return (ToIntFunction<String[]>) service;
  }

  /** Stops all parts, waiting while they save; a second call only waits for the first. */
  @Override
  public synchronized void close() {
    if (closed) {
      return;
    }
    closed = true;
    if (!container.stop(SAVING)) {
      LOG.log(System.Logger.Level.WARNING, "The parts did not stop within {0}", SAVING);
    }
    try {
      scratch.close();
    } catch (IOException e) {
      LOG.log(System.Logger.Level.DEBUG, "Left for the next start to delete", e);
    }
  }
}
