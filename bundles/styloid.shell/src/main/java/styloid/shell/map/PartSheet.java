package styloid.shell.map;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import styloid.model.Entry;
import styloid.model.Finding;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Result;
import styloid.model.Value;
import styloid.spi.Group;
import styloid.spi.TestDefinition;

/**
 * Everything about one part of one limb, across tests.
 *
 * @param limits precautions that reach it
 * @param steps groups of items about it, in the order of the tests
 */
record PartSheet(
    SidedPart at,
    PartState state,
    List<Precaution> limits,
    List<Finding> findings,
    List<Step> steps) {
  /** Digit keys that pick a step. */
  static final int KEYS = 9;

  /**
   * What one group has of the part.
   *
   * @param putForward whether it is part of this evaluation, as far as the tests before it say
   * @param start where entry begins: the first open place, else the first
   * @param readings what was recorded now or before
   * @param results those with a value, out of the ordinary first
   */
  record Step(
      TestDefinition test,
      Group group,
      PartState state,
      boolean putForward,
      ItemKey start,
      List<Reading> readings,
      List<Line> results) {
    /** Whether something is left that can be done. */
    boolean toDo() {
      return state.open() > 0;
    }
  }

  /** A place with its value now and that of the newest visit before that has one. */
  record Reading(ItemKey key, Optional<Entry> now, Optional<Last> last) {
    boolean notable() {
      return now.filter(Notable::is).isPresent();
    }
  }

  /** A value of an earlier visit. */
  record Last(Value value, LocalDate date) {}

  /** A result and whether it is out of the ordinary. */
  record Line(Result result, boolean notable) {}

  static PartSheet of(LimbReading reading, SidedPart at) {
    Map<Group, List<Slot>> groups = new LinkedHashMap<>();
    for (Slot slot : reading.index().slots(at)) {
      groups.computeIfAbsent(slot.group(), g -> new ArrayList<>()).add(slot);
    }
    List<Finding> findings =
        reading.open().findings().stream()
            .filter(f -> reading.index().sidedPartsOf(f).contains(at))
            .toList();
    return new PartSheet(
        at,
        reading.state(at),
        List.copyOf(reading.limits(at)),
        findings,
        groups.values().stream().map(slots -> step(reading, at, slots)).toList());
  }

  private static Step step(LimbReading reading, SidedPart at, List<Slot> slots) {
    Slot first = slots.get(0);
    ArrayList<Reading> readings = new ArrayList<>();
    Optional<ItemKey> start = Optional.empty();
    for (Slot slot : slots) {
      for (ItemKey key : slot.keys()) {
        if (start.isEmpty() && reading.isOpen(slot, key)) {
          start = Optional.of(key);
        }
        Reading found = reading(reading.open().context(), key);
        if (found.now().isPresent() || found.last().isPresent()) {
          readings.add(found);
        }
      }
    }
    return new Step(
        first.test(),
        first.group(),
        reading.count(slots, at),
        reading.isPutForward(first, at.side()),
        start.orElse(first.keys().get(0)),
        List.copyOf(readings),
        results(reading, at, first));
  }

  private static Reading reading(PatientContext context, ItemKey key) {
    Optional<Entry> now = context.snapshot().entry(key);
    for (PatientContext.Past past : context.past()) {
      Optional<Value> value = past.snapshot().value(key);
      if (value.isPresent()) {
        return new Reading(key, now, Optional.of(new Last(value.get(), past.evaluation().date())));
      }
    }
    return new Reading(key, now, Optional.empty());
  }

  private static List<Line> results(LimbReading reading, SidedPart at, Slot slot) {
    ArrayList<Line> odd = new ArrayList<>();
    ArrayList<Line> usual = new ArrayList<>();
    LimbIndex index = reading.index();
    for (Result result : reading.open().context().results().of(slot.test().id())) {
      var definition = index.definition(result.key());
      boolean here =
          result.value().isPresent()
              && definition.flatMap(d -> d.group()).filter(slot.group().id()::equals).isPresent()
              && index.sidedPartsOf(result.key()).contains(at);
      if (here) {
        boolean notable = Notable.is(result, definition);
        (notable ? odd : usual).add(new Line(result, notable));
      }
    }
    odd.addAll(usual);
    return List.copyOf(odd);
  }

  /** The steps that digit keys pick, 1 first: those with something left, at most nine. */
  List<Step> toDo() {
    return steps.stream().filter(Step::toDo).limit(KEYS).toList();
  }

  /**
   * Where Enter goes: the first step with something left, else the first with an entry, else any.
   */
  Optional<ItemKey> start() {
    return toDo().stream()
        .findFirst()
        .or(() -> steps.stream().filter(s -> s.state().done() > 0).findFirst())
        .or(() -> steps.stream().findFirst())
        .map(Step::start);
  }

  /** Cautions of the groups about this part, each once; those of a whole test show at its step. */
  Set<TestCaution> cautions() {
    LinkedHashSet<TestCaution> all = new LinkedHashSet<>();
    for (Step step : steps) {
      step.group().cautions().forEach(id -> all.add(new TestCaution(step.test(), id)));
    }
    return all;
  }

  /** A caution of a test. */
  record TestCaution(TestDefinition test, String id) {}
}
