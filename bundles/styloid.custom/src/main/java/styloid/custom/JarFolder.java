package styloid.custom;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.Version;
import org.osgi.framework.VersionRange;
import org.osgi.framework.wiring.BundleCapability;
import org.osgi.framework.wiring.BundleWiring;
import styloid.spi.OuterModules;
import styloid.spi.OuterModules.Found;
import styloid.spi.OuterModules.State;

/** The folder of bundles from outside: runs what is approved, stops what is gone or changed. */
final class JarFolder {
  private static final System.Logger LOG = System.getLogger(JarFolder.class.getName());
  private static final Pattern IMPORT =
      Pattern.compile("(styloid\\.[a-z.]+)((?:;[^,\"]*(?:\"[^\"]*\")?)*)");
  private static final Pattern RANGE = Pattern.compile("version=\"?([^\";]+)\"?");

  private final Path folder;
  private final BundleContext bundles;
  private final Approvals approvals;
  private final BiConsumer<Found, Boolean> tell;
  private final Map<String, Found> found = new TreeMap<>();
  private final Map<String, Bundle> running = new TreeMap<>();
  private FolderState seen = FolderState.EMPTY;
  private FolderState taken = FolderState.EMPTY;

  /**
   * A folder.
   *
   * @param tell what is found, and whether it is there from now on
   */
  JarFolder(Path folder, BundleContext bundles, BiConsumer<Found, Boolean> tell) {
    this.folder = folder;
    this.bundles = bundles;
    this.approvals = new Approvals(folder);
    this.tell = tell;
  }

  Approvals approvals() {
    return approvals;
  }

  synchronized List<Found> found() {
    return new ArrayList<>(found.values());
  }

  /** Takes in everything as it is now. */
  void takeAll() {
    look();
    look();
  }

  /** One look; takes in what has been the same since the last. */
  void look() {
    try {
      FolderState now = FolderState.of(folder, ".jar", "approved.txt");
      if (now.equals(seen) && !now.equals(taken)) {
        take(now);
      }
      seen = now;
    } catch (IOException e) {
      LOG.log(System.Logger.Level.WARNING, "The folder of modules cannot be looked at", e);
    }
  }

  private void take(FolderState now) {
    FolderState before = taken;
    taken = now;
    for (String file : before.files().keySet()) {
      if (!now.files().containsKey(file)) {
        drop(file);
      }
    }
    now.files()
        .forEach(
            (file, stamp) -> {
              boolean changed = !stamp.equals(before.files().get(file));
              if (file.endsWith(".jar") && (changed || !running.containsKey(file))) {
                drop(file);
                put(file, judge(file));
              }
            });
  }

  private Found judge(String file) {
    try {
      JarIdentity jar = JarIdentity.of(folder.resolve(file));
      if (!approvals.holds(jar)) {
        return of(file, jar, State.WAITS, "");
      }
      String misfit = misfit(jar.imports());
      return misfit.isEmpty() ? run(file, jar) : of(file, jar, State.REFUSED, misfit);
    } catch (IOException e) {
      return new Found(file, file, "", "", State.REFUSED, String.valueOf(e.getMessage()));
    }
  }

  static Found of(String file, JarIdentity jar, State state, String reason) {
    return new Found(file, jar.name(), jar.version(), jar.sha256(), state, reason);
  }

  private Found run(String file, JarIdentity jar) {
    Bundle bundle = null;
    try {
      bundle =
          bundles.installBundle("styloid-module:" + file, new ByteArrayInputStream(jar.bytes()));
      bundle.start();
      running.put(file, bundle);
      return of(file, jar, State.RUNS, "");
    } catch (BundleException | LinkageError e) {
      uninstall(bundle);
      return of(file, jar, State.REFUSED, deepest(e));
    }
  }

  private static String deepest(Throwable fault) {
    Throwable deepest = fault;
    while (deepest.getCause() != null) {
      deepest = deepest.getCause();
    }
    return String.valueOf(deepest.getMessage());
  }

  private void drop(String file) {
    uninstall(running.remove(file));
    Found was;
    synchronized (this) {
      was = found.remove(file);
    }
    if (was != null) {
      tell.accept(was, false);
    }
  }

  private static void uninstall(Bundle bundle) {
    try {
      if (bundle != null) {
        bundle.uninstall();
      }
    } catch (BundleException | IllegalStateException e) {
      LOG.log(System.Logger.Level.WARNING, "A module did not end well", e);
    }
  }

  private void put(String file, Found now) {
    synchronized (this) {
      found.put(file, now);
    }
    tell.accept(now, true);
  }

  /** Which package of the suite it was built for in another version; empty when all fit. */
  private static String misfit(String imports) {
    Map<String, Version> offered = offered();
    Matcher matcher = IMPORT.matcher(imports);
    while (matcher.find()) {
      Version here = offered.get(matcher.group(1));
      Matcher range = RANGE.matcher(matcher.group(2));
      if (here != null && range.find() && !includes(range.group(1), here)) {
        return "was built for "
            + matcher.group(1)
            + " "
            + range.group(1)
            + "; this suite has "
            + here
            + ". Ask its author for a version built for this suite";
      }
    }
    return "";
  }

  private static boolean includes(String range, Version version) {
    try {
      return VersionRange.valueOf(range).includes(version);
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static Map<String, Version> offered() {
    TreeMap<String, Version> offered = new TreeMap<>();
    for (Class<?> of : List.of(OuterModules.class, styloid.model.TestId.class)) {
      BundleWiring wiring = FrameworkUtil.getBundle(of).adapt(BundleWiring.class);
      for (BundleCapability capability : wiring.getCapabilities("osgi.wiring.package")) {
        offered.put(
            (String) capability.getAttributes().get("osgi.wiring.package"),
            (Version) capability.getAttributes().get("version"));
      }
    }
    return offered;
  }
}
