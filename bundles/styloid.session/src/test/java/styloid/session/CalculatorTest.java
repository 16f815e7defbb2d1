package styloid.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import styloid.goniometry.Goniometry;
import styloid.grading.Grading;
import styloid.grip.GripModule;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Region;
import styloid.model.Result;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.screen.Screen;
import styloid.spi.TestDefinition;
import styloid.spi.TestModule;
import styloid.testkit.SampleEvaluations;

class CalculatorTest {
  private static final List<TestModule> SHIPPED =
      List.of(new Screen(), new Grading(), new Goniometry(), new GripModule());

  private final ModuleGuard guard = new ModuleGuard(10_000);
  private final ModuleBook book = new ModuleBook(guard);

  @AfterEach
  void end() {
    guard.close();
  }

  private static List<Result> fresh(ModuleBook book, ModuleGuard guard, PatientContext context) {
    return List.copyOf(new Calculator(book, guard).calculate(context).results().all());
  }

  /** One step of an evaluation: mostly an entry, now and then something round it. */
  private static PatientContext next(
      PatientContext now, SampleEvaluations samples, Random random, List<PatientContext> visits) {
    int kind = random.nextInt(20);
    if (kind == 0) {
      return now.withChoice("goniometry.error", Integer.toString(3 + random.nextInt(5)));
    } else if (kind == 1) {
      Precaution limit =
          new Precaution(
              Precaution.Kind.values()[random.nextInt(Precaution.Kind.values().length)],
              Region.values()[random.nextInt(Region.values().length)],
              Side.RIGHT,
              Digit.NONE,
              Optional.empty(),
              Optional.empty(),
              "",
              "");
      return new PatientContext(
          now.patient(),
          now.evaluation(),
          List.of(limit),
          now.snapshot(),
          now.results(),
          now.past());
    } else if (kind == 2) {
      return now.withPast(
          List.of(
              new PatientContext.Past(
                  now.evaluation(), visits.get(random.nextInt(visits.size())).snapshot())));
    } else if (kind == 3) {
      return new PatientContext(
          samples.patient(),
          now.evaluation(),
          now.precautions(),
          now.snapshot(),
          now.results(),
          now.past());
    }
    if (kind == 6) {
      return dated(now, LocalDate.of(2030 + random.nextInt(40), 1, 1));
    }
    TestDefinition test = SHIPPED.get(random.nextInt(SHIPPED.size())).definition();
    List<ItemKey> keys = test.keys();
    ItemKey key = keys.get(random.nextInt(keys.size()));
    Entry entry =
        kind == 4
            ? new Entry(
                new EntryId(new UUID(random.nextLong(), random.nextLong())),
                key,
                Optional.empty(),
                Instant.parse("2026-03-02T09:00:00Z"),
                new TherapistId("A. Therapist"),
                false)
            : samples.entry(
                key,
                kind == 5 ? samples.absence() : samples.value(test.item(key.item()).orElseThrow()));
    return now.withSnapshot(now.snapshot().with(entry));
  }

  /** Another day: another age. */
  private static PatientContext dated(PatientContext now, LocalDate day) {
    Evaluation head = now.evaluation();
    Evaluation other =
        new Evaluation(
            head.id(),
            head.patient(),
            day,
            head.therapist(),
            head.state(),
            head.versions(),
            head.choices());
    return new PatientContext(
        now.patient(), other, now.precautions(), now.snapshot(), now.results(), now.past());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void keptAnswersAreThoseOfACalculationFromNothing(long seed) {
    SHIPPED.forEach(book::add);
    Calculator calculator = new Calculator(book, guard);
    SampleEvaluations samples = new SampleEvaluations(seed);
    Random random = new Random(seed);
    ArrayList<Entry> begun = new ArrayList<>();
    SHIPPED.forEach(m -> begun.addAll(samples.snapshot(m.definition(), 0.3).entries()));
    ArrayList<PatientContext> visits = new ArrayList<>();
    visits.add(samples.context(samples.patient(), Snapshot.of(begun)));
    for (int step = 0; step < 60; step++) {
      // an undone entry brings back what was there before
      PatientContext from =
          visits.get(visits.size() - 1 - random.nextInt(Math.min(2, visits.size())));
      PatientContext now = next(from, samples, random, visits);
      visits.add(now);
      if (random.nextInt(15) == 0) {
        TestModule away = SHIPPED.get(random.nextInt(SHIPPED.size()));
        book.remove(away);
        calculator.calculate(now);
        book.add(away);
      }
      List<Result> results = List.copyOf(calculator.calculate(now).results().all());
      assertEquals(fresh(book, guard, now), results);
    }
  }

  /** Counts how often it is asked. */
  private static final class Counting implements TestModule {
    private final SampleModule module;
    private final AtomicInteger asked = new AtomicInteger();

    Counting(SampleModule module) {
      this.module = module;
    }

    @Override
    public TestDefinition definition() {
      return module.definition();
    }

    @Override
    public List<Result> results(PatientContext context) {
      asked.incrementAndGet();
      return module.results(context);
    }
  }

  @Test
  void onlyTheTestOfTheEntryAndThoseThatReadItAreAsked() {
    Counting one = new Counting(new SampleModule("one"));
    Counting reader = new Counting(new SampleModule("reader", "one"));
    Counting readersReader = new Counting(new SampleModule("readers-reader", "reader"));
    Counting other = new Counting(new SampleModule("other"));
    List.of(one, reader, readersReader, other).forEach(book::add);
    Calculator calculator = new Calculator(book, guard);
    SampleEvaluations samples = new SampleEvaluations(1);
    PatientContext begun = samples.context(samples.patient(), Snapshot.empty());
    calculator.calculate(begun);
    ItemKey key = one.definition().keys().get(0);
    Entry entry =
        samples.entry(key, samples.value(one.definition().item(key.item()).orElseThrow()));
    calculator.calculate(begun.withSnapshot(begun.snapshot().with(entry)));
    assertEquals(2, one.asked.get());
    assertEquals(2, reader.asked.get());
    assertEquals(2, readersReader.asked.get(), "results it reads were given anew");
    assertEquals(1, other.asked.get());
  }

  @Test
  void aModuleThatFailsIsAskedAgain() {
    TestId id = new TestId("one");
    AtomicInteger asked = new AtomicInteger();
    SampleModule module = new SampleModule("one");
    book.add(
        new TestModule() {
          @Override
          public TestDefinition definition() {
            return module.definition();
          }

          @Override
          public List<Result> results(PatientContext context) {
            if (asked.incrementAndGet() == 1) {
              throw new IllegalStateException("once");
            }
            return module.results(context);
          }
        });
    Calculator calculator = new Calculator(book, guard);
    SampleEvaluations samples = new SampleEvaluations(1);
    PatientContext context = samples.context(samples.patient(), Snapshot.empty());
    assertEquals(1, calculator.calculate(context).faults().size());
    assertTrue(calculator.calculate(context).faults().isEmpty());
    assertEquals(2, asked.get());
    assertEquals(module.results(context), calculator.calculate(context).results().of(id));
  }

  @Test
  void entriesOnlyEqualAreNotTakenForTheSame() {
    SampleEvaluations samples = new SampleEvaluations(1);
    ItemKey key = SHIPPED.get(0).definition().keys().get(0);
    Snapshot one = Snapshot.of(List.of(samples.entry(key, samples.absence())));
    Entry entry = one.entries().iterator().next();
    assertTrue(one.sameAs(Snapshot.of(List.of(entry))));
    Entry copy =
        new Entry(
            entry.id(), entry.key(), entry.value(), entry.at(), entry.by(), entry.confirmed());
    assertEquals(entry, copy);
    assertNotSame(entry, copy);
    assertFalse(one.sameAs(Snapshot.of(List.of(copy))));
    assertFalse(one.sameAs(Snapshot.empty()));
  }
}
