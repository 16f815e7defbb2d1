package styloid.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import styloid.goniometry.Goniometry;
import styloid.grading.Grading;
import styloid.grip.GripModule;
import styloid.model.Absence;
import styloid.model.Entry;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.TherapistId;
import styloid.model.Value;
import styloid.screen.Screen;
import styloid.spi.EntryCheck;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.store.SqlStore;
import styloid.store.StoreException;
import styloid.testkit.SampleEvaluations;

/**
 * Run by hand: from a recorded value to its results, and to the disk, on the real store and the
 * shipped modules, one entry after another as a therapist types. The window adds at most one frame.
 */
public final class KeyPressBench {
  private static final int WARM_UP = 300;

  private KeyPressBench() {}

  /** Prints medians and 95th percentiles. */
  public static void main(String... args) throws Exception {
    Path folder = Files.createTempDirectory("key-press-bench");
    SessionService session = new SessionService(Clock.systemUTC());
    try (SqlStore store = new SqlStore(folder)) {
      session.setStore(store);
      List<TestModule> modules =
          List.of(new Screen(), new Grading(), new Goniometry(), new GripModule());
      modules.forEach(session::addModule);
      session.settle();
      run(session, modules);
      session.deactivate();
    }
  }

  private static void run(SessionService session, List<TestModule> modules)
      throws StoreException, InterruptedException, IOException {
    SampleEvaluations samples = new SampleEvaluations(1);
    Patient patient = samples.patient();
    session.savePatient(patient, List.of());
    session.begin(patient.id(), LocalDate.of(2026, 3, 2), new TherapistId("Bench"));
    ArrayList<Entry> entries = new ArrayList<>();
    for (TestModule module : modules) {
      entries.addAll(samples.full(module.definition()).entries());
    }
    ArrayList<Long> shown = new ArrayList<>();
    ArrayList<Long> durable = new ArrayList<>();
    for (Entry entry : entries) {
      time(session, modules, entry.key(), entry.value().orElseThrow(), shown, durable);
    }
    System.Logger log = System.getLogger("bench");
    log.log(System.Logger.Level.INFO, "entries: " + entries.size());
    log.log(System.Logger.Level.INFO, "key to results: " + summary(shown));
    log.log(System.Logger.Level.INFO, "key to durable: " + summary(durable));
  }

  private static void time(
      SessionService session,
      List<TestModule> modules,
      ItemKey key,
      Value value,
      List<Long> shown,
      List<Long> durable)
      throws InterruptedException, IOException {
    boolean possible =
        modules.stream()
            .map(TestModule::definition)
            .filter(d -> d.has(key))
            .map(d -> EntryCheck.check(item(d, key), value))
            .anyMatch(c -> c.value().isPresent());
    CountDownLatch results = new CountDownLatch(1);
    CountDownLatch saved = new CountDownLatch(1);
    long[] at = new long[2];
    long start = System.nanoTime();
    AutoCloseable listening =
        session.listen(
            change -> {
              OpenEvaluation now = session.current().orElseThrow();
              boolean there = now.context().snapshot().entry(key).isPresent();
              if (there && !now.calculating() && results.getCount() > 0) {
                at[0] = System.nanoTime() - start;
                results.countDown();
              }
              if (there && now.unsaved().isEmpty() && saved.getCount() > 0) {
                at[1] = System.nanoTime() - start;
                saved.countDown();
              }
            });
    session.record(key, possible ? value : new Absence(Absence.Reason.NOT_DONE), true);
    results.await(10, TimeUnit.SECONDS);
    saved.await(10, TimeUnit.SECONDS);
    try {
      listening.close();
    } catch (Exception e) {
      throw new IOException(e);
    }
    shown.add(at[0]);
    durable.add(at[1]);
  }

  private static Item item(TestDefinition definition, ItemKey key) {
    return definition.item(key.item()).orElseThrow();
  }

  private static String summary(List<Long> nanos) {
    long[] sorted =
        nanos.subList(WARM_UP, nanos.size()).stream().mapToLong(Long::longValue).sorted().toArray();
    return String.format(
        Locale.ROOT,
        "median %.1f ms, 95 %% within %.1f ms, longest %.1f ms, of %d",
        sorted[sorted.length / 2] / 1e6,
        sorted[sorted.length * 95 / 100] / 1e6,
        Arrays.stream(sorted).max().orElse(0) / 1e6,
        sorted.length);
  }
}
