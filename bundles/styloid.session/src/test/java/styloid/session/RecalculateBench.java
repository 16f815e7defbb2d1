package styloid.session;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import styloid.goniometry.Goniometry;
import styloid.grading.Grading;
import styloid.grip.GripModule;
import styloid.model.Entry;
import styloid.model.PatientContext;
import styloid.model.Snapshot;
import styloid.screen.Screen;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.testkit.SampleEvaluations;

/**
 * Run by hand: every result of a bilateral evaluation drawn anew after one entry, by the shipped
 * modules behind their guard as on the result worker. The entries fill whole groups, a seeded
 * choice among those of the four tests; 1,600 are nearly every place there is. Prints time and
 * bytes allocated; words of the command line are options of the harness.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(value = 1, jvmArgsAppend = "-XX:+UseSerialGC")
public class RecalculateBench {
  /** How many entries the evaluation has. */
  @Param({"150", "300", "600", "1200", "1600"})
  public int entries;

  private ModuleGuard guard;
  private ModuleBook book;
  private SampleEvaluations samples;
  private Calculator calculator;
  private PatientContext context;
  private List<Entry> recorded;
  private int next;

  /** Prints the figures, with bytes allocated. */
  public static void main(String... args) throws CommandLineOptionException, RunnerException {
    new Runner(
            new OptionsBuilder()
                .parent(new CommandLineOptions(args))
                .include(RecalculateBench.class.getName())
                .addProfiler(GCProfiler.class)
                .build())
        .run();
  }

  @Setup(Level.Trial)
  public void begin() {
    guard = new ModuleGuard(1000);
    book = new ModuleBook(guard);
    List<TestModule> modules =
        List.of(new Screen(), new Grading(), new Goniometry(), new GripModule());
    modules.forEach(book::add);
    calculator = new Calculator(book, guard);
    samples = new SampleEvaluations(1);
    ArrayList<List<Entry>> groups = new ArrayList<>();
    modules.forEach(module -> groups.addAll(groups(module.definition(), samples)));
    Collections.shuffle(groups, new Random(1));
    recorded = groups.stream().flatMap(List::stream).limit(entries).toList();
    context = samples.context(samples.patient(), Snapshot.of(recorded));
  }

  /** The entries of each group of a test, both sides, none absent. */
  private static Collection<List<Entry>> groups(
      TestDefinition definition, SampleEvaluations samples) {
    return samples.full(definition).entries().stream()
        .collect(
            Collectors.groupingBy(
                entry -> definition.groupOf(entry.key().item()).orElseThrow().id(),
                TreeMap::new,
                Collectors.toList()))
        .values();
  }

  @TearDown(Level.Trial)
  public void close() {
    guard.close();
  }

  /** What the window waits for: the next place recorded again, and what depends on it. */
  @Benchmark
  public Object afterOneEntry() {
    record(nextEntry());
    return calculator.calculate(context);
  }

  /** The same with nothing kept: every test asked. */
  @Benchmark
  public Object everyTestAfterOneEntry() {
    record(nextEntry());
    return new Calculator(book, guard).calculate(context);
  }

  private Entry nextEntry() {
    next = (next + 1) % recorded.size();
    Entry before = recorded.get(next);
    return samples.entry(before.key(), before.value().orElseThrow());
  }

  private void record(Entry entry) {
    context = context.withSnapshot(context.snapshot().with(entry));
  }
}
