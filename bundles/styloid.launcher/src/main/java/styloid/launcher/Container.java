package styloid.launcher;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Dictionary;
import java.util.HashMap;
import java.util.Hashtable;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.apache.felix.framework.Felix;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.FrameworkEvent;
import org.osgi.framework.InvalidSyntaxException;

/** The running framework with the bundles of the start list. */
final class Container {
  /** Property that tells what a service of a plain Java type is for. */
  static final String ROLE = "styloid.role";

  private final Felix framework;
  private final ArrayList<Fault> faults = new ArrayList<>();

  private Container(Felix framework) {
    this.framework = framework;
  }

  /** Starts the framework itself, without bundles, keeping its files in {@code storage}. */
  static Container start(Path storage) throws BundleException {
    Map<String, Object> settings = new HashMap<>();
    settings.put(Constants.FRAMEWORK_STORAGE, storage.toString());
    settings.put(Constants.FRAMEWORK_STORAGE_CLEAN, Constants.FRAMEWORK_STORAGE_CLEAN_ONFIRSTINIT);
    // The launcher stops the framework itself, so that saving is waited for.
    settings.put("felix.shutdown.hook", "false");
    // What goes wrong is gathered as faults, not printed among the output of a command.
    settings.put("felix.log.level", "0");
    Felix framework = new Felix(settings);
    framework.init();
    framework.start();
    return new Container(framework);
  }

  BundleContext context() {
    return framework.getBundleContext();
  }

  /** Installs all, then starts each; one that does not start leaves the others alone. */
  void startAll(Path folder, List<String> files) {
    ArrayList<Bundle> installed = new ArrayList<>();
    for (String file : files) {
      Path jar = folder.resolve(file);
      try {
        if (Files.isRegularFile(jar)) {
          installed.add(context().installBundle("reference:" + jar.toFile().toURI()));
        } else {
          faults.add(Fault.fileMissing(file));
        }
      } catch (BundleException e) {
        faults.add(Fault.ofBundle(file, e));
      }
    }
    for (Bundle bundle : installed) {
      boolean fragment = bundle.getHeaders("").get(Constants.FRAGMENT_HOST) != null;
      try {
        if (!fragment) {
          bundle.start();
        }
      } catch (BundleException e) {
        faults.add(Fault.ofBundle(bundle.getSymbolicName(), e));
      }
    }
  }

  /** Offers a service of a plain Java type under a role. */
  <T> void offer(Class<T> type, T service, String role) {
    Dictionary<String, Object> properties = new Hashtable<>(Map.of(ROLE, role));
    context().registerService(type, service, properties);
  }

  /** The service of a role; empty when there is none or it cannot be made. */
  <T> Optional<T> find(Class<T> type, String role) {
    try {
      return context().getServiceReferences(type, filter(role)).stream()
          .map(context()::getService)
          .filter(Objects::nonNull)
          .findFirst();
    } catch (InvalidSyntaxException e) {
      throw new IllegalArgumentException(role, e);
    }
  }

  /** What picks the services of a role. */
  static String filter(String role) {
    return "(" + ROLE + "=" + role + ")";
  }

  /** Bundles that did not start. */
  List<Fault> bundleFaults() {
    return List.copyOf(faults);
  }

  /** Bundles that did not start and components that do not work. */
  List<Fault> allFaults() {
    ArrayList<Fault> all = new ArrayList<>(faults);
    all.addAll(Components.faults(context()));
    return all;
  }

  /**
   * Stops all parts, last started first, so that they can save.
   *
   * @return whether they stopped in time
   */
  boolean stop(Duration longest) {
    try {
      framework.stop();
      return framework.waitForStop(longest.toMillis()).getType() != FrameworkEvent.WAIT_TIMEDOUT;
    } catch (BundleException e) {
      return false;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return false;
    }
  }
}
