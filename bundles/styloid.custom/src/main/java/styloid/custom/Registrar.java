package styloid.custom;

import java.nio.file.Path;
import java.util.IdentityHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.osgi.framework.BundleContext;
import org.osgi.framework.ServiceRegistration;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import org.osgi.service.component.annotations.Reference;
import styloid.model.TestId;
import styloid.spi.DeclaredTests;
import styloid.spi.Formulas;
import styloid.spi.ModuleNotice;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;

/**
 * Offers the declared tests as services: those shipped, and those in the folder {@value #FOLDER}
 * beside the data, which is looked at from a thread of its own.
 */
@Component(service = DeclaredTests.class, immediate = true)
public final class Registrar implements DeclaredTests {
  /** The clinic's folder inside the data folder. */
  public static final String FOLDER = "tests";

  /** Ids of the built-in tests, which no file may claim whoever starts first. */
  static final Set<TestId> BUILT_IN =
      Stream.of("screen", "grading", "goniometry", "grip")
          .map(TestId::new)
          .collect(Collectors.toUnmodifiableSet());

  private static final long LOOK_MILLIS = 100;
  private static final long SETTLE_SECONDS = 20;

  private final BundleContext bundles;
  private final Formulas formulas;
  private final CountDownLatch loaded = new CountDownLatch(1);
  private final CountDownLatch warm = new CountDownLatch(1);
  private final Map<Object, ServiceRegistration<?>> offered = new IdentityHashMap<>();
  private final ScheduledExecutorService looking =
      Executors.newSingleThreadScheduledExecutor(Registrar::thread);

  @Activate
  public Registrar(
      BundleContext bundles,
      @Reference(target = "(styloid.role=data)") Path data,
      @Reference Formulas formulas) {
    this.bundles = bundles;
    this.formulas = formulas;
    looking.execute(() -> begin(data));
  }

  private static Thread thread(Runnable task) {
    Thread thread = new Thread(task, "styloid-declared");
    thread.setDaemon(true);
    return thread;
  }

  private void begin(Path data) {
    try {
      Shelf shipped = new Shelf(formulas, BUILT_IN, new Offers());
      for (String name : Shipped.names()) {
        shipped.put(name, Shipped.text(name + ".json"), Shipped::text);
      }
      TreeSet<TestId> reserved = new TreeSet<>(BUILT_IN);
      shipped.inForce().values().forEach(module -> reserved.add(module.definition().id()));
      TestFolder folder =
          new TestFolder(data.resolve(FOLDER), new Shelf(formulas, reserved, new Offers()));
      folder.takeAll();
      looking.scheduleWithFixedDelay(
          () -> guarded(folder::look), LOOK_MILLIS, LOOK_MILLIS, TimeUnit.MILLISECONDS);
    } finally {
      loaded.countDown();
    }
    try {
      formulas.warmUp();
    } finally {
      warm.countDown();
    }
  }

  /** One failed look must not end all later ones. */
  private static void guarded(Runnable look) {
    try {
      look.run();
    } catch (RuntimeException e) {
      System.getLogger(Registrar.class.getName())
          .log(System.Logger.Level.ERROR, "Declared tests could not be taken in", e);
    }
  }

  @Deactivate
  void deactivate() {
    looking.shutdownNow();
  }

  @Override
  public void settle() {
    await(loaded);
  }

  @Override
  public void warm() {
    await(warm);
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await(SETTLE_SECONDS, TimeUnit.SECONDS);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  @Override
  public Read read(String text, Function<String, Optional<String>> beside, Set<TestId> taken) {
    TreeSet<TestId> all = new TreeSet<>(BUILT_IN);
    all.addAll(taken);
    DeclaredFile.Read read = new DeclaredFile(formulas, all).read(text, beside);
    return new Read(read.module().map(module -> (TestModule) module), read.problems());
  }

  @Override
  public Tried answers(TestDefinition test, String text) {
    return new AnswerReader(test).read(text);
  }

  /** Registers what comes and unregisters what goes. */
  private final class Offers implements Shelf.Port {
    @Override
    public void comes(DeclaredModule module) {
      offered.put(module, bundles.registerService(TestModule.class, module, null));
    }

    @Override
    public void goes(DeclaredModule module) {
      offered.remove(module).unregister();
    }

    @Override
    public void comes(ModuleNotice notice) {
      offered.put(notice, bundles.registerService(ModuleNotice.class, notice, null));
    }

    @Override
    public void goes(ModuleNotice notice) {
      offered.remove(notice).unregister();
    }
  }
}
