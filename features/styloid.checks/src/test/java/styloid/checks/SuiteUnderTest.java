package styloid.checks;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Dictionary;
import java.util.HashMap;
import java.util.Hashtable;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.function.ToIntFunction;
import org.apache.felix.framework.Felix;
import org.osgi.framework.AllServiceListener;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.ServiceReference;

/**
 * The assembled suite in a real Felix without a window: the bundles of its start list, but those
 * that need JavaFX. Spoken to like a user does, by commands.
 */
final class SuiteUnderTest implements AutoCloseable {
  private static final long STOP_MILLIS = 20_000;
  private static final long LONGEST_WAIT_SECONDS = 20;

  private final Felix framework;
  private final StringWriter out = new StringWriter();
  private final StringWriter err = new StringWriter();

  private SuiteUnderTest(Felix framework) {
    this.framework = framework;
  }

  private <T> void offer(Class<T> type, T service, String role) {
    Dictionary<String, Object> properties = new Hashtable<>(Map.of("styloid.role", role));
    framework.getBundleContext().registerService(type, service, properties);
  }

  /** What a command came to. */
  record Ran(int code, String out, String err) {}

  /**
   * Starts the suite on a data folder.
   *
   * @param extra jars of more bundles
   */
  static SuiteUnderTest start(Path data, Path... extra) throws BundleException, IOException {
    Map<String, Object> settings = new HashMap<>();
    settings.put(Constants.FRAMEWORK_STORAGE, data.resolve("cache").toString());
    settings.put(Constants.FRAMEWORK_STORAGE_CLEAN, Constants.FRAMEWORK_STORAGE_CLEAN_ONFIRSTINIT);
    settings.put("felix.log.level", "0");
    Felix framework = new Felix(settings);
    framework.init();
    framework.start();
    SuiteUnderTest suite = new SuiteUnderTest(framework);
    suite.offer(Path.class, data, "data");
    suite.offer(PrintWriter.class, new PrintWriter(suite.out, true), "out");
    suite.offer(PrintWriter.class, new PrintWriter(suite.err, true), "err");
    ArrayList<Bundle> bundles = new ArrayList<>();
    for (Path jar : withoutWindow()) {
      bundles.add(framework.getBundleContext().installBundle(jar.toUri().toString()));
    }
    for (Path jar : extra) {
      bundles.add(framework.getBundleContext().installBundle(jar.toUri().toString()));
    }
    for (Bundle bundle : bundles) {
      suite.startOne(bundle);
    }
    return suite;
  }

  private void startOne(Bundle bundle) {
    try {
      bundle.start();
    } catch (BundleException e) {
      // what did not start is seen in its state
      System.getLogger("styloid.checks")
          .log(System.Logger.Level.DEBUG, bundle.getSymbolicName(), e);
    }
  }

  /** Jars of the start list that do not import JavaFX. */
  private static List<Path> withoutWindow() throws IOException {
    ArrayList<Path> jars = new ArrayList<>();
    Path suite = Project.suite();
    for (String line : Files.readAllLines(suite.resolve("conf/full-evaluation.list"))) {
      Path jar = suite.resolve("bundles").resolve(line.strip());
      if (!line.isBlank() && !line.startsWith("#") && !Manifests.of(jar).imports("javafx")) {
        jars.add(jar);
      }
    }
    return jars;
  }

  /** What a test does that makes a service come or go. */
  interface Act {
    void act() throws Exception;
  }

  /** Does it and waits until a service of that type came or went. */
  void until(String type, int event, Act act) throws Exception {
    CountDownLatch happened = new CountDownLatch(1);
    AllServiceListener listener =
        e -> {
          String[] types = (String[]) e.getServiceReference().getProperty("objectClass");
          if (e.getType() == event && types[0].equals(type)) {
            happened.countDown();
          }
        };
    framework.getBundleContext().addServiceListener(listener);
    try {
      act.act();
      if (!happened.await(LONGEST_WAIT_SECONDS, TimeUnit.SECONDS)) {
        throw new AssertionError(type + " did not come or go");
      }
    } finally {
      framework.getBundleContext().removeServiceListener(listener);
    }
  }

  /** Runs a command until its answer is as wanted: parts are told of a service one by one. */
  Ran eventually(Predicate<Ran> wanted, String... words) throws Exception {
    long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(LONGEST_WAIT_SECONDS);
    Ran ran = run(words);
    while (!wanted.test(ran) && System.nanoTime() < end) {
      ran = run(words);
    }
    if (!wanted.test(ran)) {
      throw new AssertionError("not as wanted: " + ran.out() + ran.err());
    }
    return ran;
  }

  Bundle[] bundles() {
    return framework.getBundleContext().getBundles();
  }

  Bundle bundle(String name) {
    for (Bundle bundle : bundles()) {
      if (name.equals(bundle.getSymbolicName())) {
        return bundle;
      }
    }
    throw new AssertionError("no bundle " + name);
  }

  /** Runs a command as the launcher does and gives what it printed. */
  Ran run(String... words) throws Exception {
    out.getBuffer().setLength(0);
    err.getBuffer().setLength(0);
    int code = command().applyAsInt(words);
    return new Ran(code, out.toString(), err.toString());
  }

  @SuppressWarnings("unchecked")
  private ToIntFunction<String[]> command() throws Exception {
    ServiceReference<?>[] found =
        framework
            .getBundleContext()
            .getServiceReferences(ToIntFunction.class.getName(), "(styloid.role=command)");
    if (found == null) {
      throw new AssertionError("the command service is missing");
    }
    return (ToIntFunction<String[]>) framework.getBundleContext().getService(found[0]);
  }

  @Override
  public void close() throws BundleException {
    framework.stop();
    try {
      framework.waitForStop(STOP_MILLIS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }
}
