package styloid.custom;

import java.io.IOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceRegistration;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import styloid.spi.ModuleNotice;
import styloid.spi.OuterModules;

/**
 * Runs approved bundles of the folder {@value #FOLDER} beside the data, from a thread of its own: a
 * module that never ends its start holds up other modules from outside and nothing else.
 */
@Component(service = OuterModules.class, immediate = true)
public final class JarRegistrar implements OuterModules {
  /** The folder inside the data folder. */
  public static final String FOLDER = "modules";

  private static final long LOOK_MILLIS = 250;
  private static final long SETTLE_SECONDS = 10;

  private final BundleContext bundles;
  private final JarFolder folder;
  private final CountDownLatch looked = new CountDownLatch(1);
  private final Map<String, ServiceRegistration<ModuleNotice>> told = new HashMap<>();
  private final ScheduledExecutorService looking =
      Executors.newSingleThreadScheduledExecutor(JarRegistrar::thread);

  @Activate
  public JarRegistrar(BundleContext bundles, @Reference(target = "(styloid.role=data)") Path data) {
    this.bundles = bundles;
    folder = new JarFolder(data.resolve(FOLDER), systemContext(bundles), this::tell);
    looking.execute(
        () -> {
          guarded(folder::takeAll);
          looked.countDown();
        });
    looking.scheduleWithFixedDelay(
        () -> guarded(folder::look), LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
  }

  /** So that a module outlives this bundle's own restarts no longer than the framework does. */
  private static BundleContext systemContext(BundleContext bundles) {
    return bundles.getBundle(0).getBundleContext();
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "styloid-outer-modules");
    thread.setDaemon(true);
    return thread;
  }

  private static void guarded(Runnable look) {
    try {
      look.run();
    } catch (RuntimeException | LinkageError e) {
      System.getLogger(JarRegistrar.class.getName())
          .log(System.Logger.Level.ERROR, "Modules could not be taken in", e);
    }
  }

  @Deactivate
  void deactivate() {
    looking.shutdownNow();
  }

  private void tell(Found found, boolean there) {
    ServiceRegistration<ModuleNotice> before = told.remove(found.file());
    if (before != null) {
      before.unregister();
    }
    if (there && found.state() != State.RUNS) {
      told.put(found.file(), bundles.registerService(ModuleNotice.class, notice(found), null));
    }
  }

  private static ModuleNotice notice(Found found) {
    String reason =
        found.state() == State.WAITS
            ? found.name()
                + " "
                + found.version()
                + " waits for an administrator: styloid approve "
                + found.file()
                + ". SHA-256 "
                + found.sha256()
            : "does not run: " + found.reason() + ".";
    return new ModuleNotice(
        found.file(), found.file(), found.state() == State.WAITS ? "APPROVE" : "REFUSED", reason);
  }

  @Override
  public void settle() {
    try {
      looked.await(SETTLE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public List<Found> found() {
    return folder.found();
  }

  @Override
  public Found look(Path file) throws IOException {
    return JarFolder.of(file.getFileName().toString(), JarIdentity.of(file), State.WAITS, "");
  }

  @Override
  public void approve(Found module) throws IOException {
    folder.approvals().add(module.name(), module.version(), module.sha256());
  }
}
