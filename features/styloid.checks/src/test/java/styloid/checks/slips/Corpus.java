package styloid.checks.slips;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.Item;
import styloid.model.ItemKey;
import styloid.model.ItemKind;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Quantity;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TherapistId;
import styloid.model.Value;
import styloid.spi.Group;
import styloid.spi.TestDefinition;

/** Made-up evaluations from a seed: who is examined, what was there before, what is typed now. */
final class Corpus {
  private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
  private static final TherapistId BY = new TherapistId("A. Therapist");

  /** Chance in percent that a group of this many places is done at all. */
  private static final int DONE = 40;

  private final PublishedNorms norms = new PublishedNorms();
  private final List<TestDefinition> tests;

  /** One number typed, of which item, with what it is judged by. */
  record Step(Group group, Item item, ItemKey key, Quantity typed, PublishedNorms.Norm norm) {}

  /**
   * One evaluation.
   *
   * @param before the context at its start: patient and earlier visits
   */
  record Case(
      PatientContext before, List<Step> steps, Limb limb, int visits, Typing typing, long seed) {}

  Corpus(List<TestDefinition> tests) {
    this.tests = List.copyOf(tests);
  }

  Case make(long seed) {
    Random random = new Random(seed);
    int age = 20 + random.nextInt(60);
    Patient patient = patient(age, random);
    Limb limb = new Limb(norms, patient, age, random);
    int visits = 1 + random.nextInt(4);
    Typing usual = Typing.of(random);
    List<Group> done = groups(random);
    Set<Item> items = items(done, random);
    ArrayList<PatientContext.Past> past = new ArrayList<>();
    for (int visit = 0; visit < visits - 1; visit++) {
      LocalDate day = DAY.minusDays(21L * (visits - 1 - visit));
      ArrayList<Entry> entries = new ArrayList<>();
      for (Step step : visit(done, items, patient, limb, visit, visits, usual, random)) {
        entries.add(entry(step.key(), step.typed(), false));
      }
      past.add(0, new PatientContext.Past(head(patient, day), Snapshot.of(entries)));
    }
    Typing typing = random.nextInt(8) == 0 ? Typing.of(random) : usual;
    List<Step> steps = visit(done, items, patient, limb, visits - 1, visits, typing, random);
    PatientContext before =
        new PatientContext(
            patient, head(patient, DAY), List.of(), Snapshot.empty(), Results.empty(), past);
    return new Case(before, steps, limb, visits, typing, seed);
  }

  private static Patient patient(int age, Random random) {
    int which = random.nextInt(10);
    Side one = random.nextBoolean() ? Side.RIGHT : Side.LEFT;
    Set<Side> involved = which == 0 ? Set.of() : which == 1 ? Item.BOTH : Set.of(one);
    return new Patient(
        new PatientId(new UUID(1, random.nextLong())),
        "CORPUS",
        "Made-up Person",
        Optional.of(DAY.minusYears(age).minusDays(40)),
        Optional.of(random.nextBoolean() ? Patient.Sex.MALE : Patient.Sex.FEMALE),
        Optional.of(random.nextInt(10) == 0 ? Patient.Dominance.LEFT : Patient.Dominance.RIGHT),
        involved,
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  private List<Group> groups(Random random) {
    ArrayList<Group> done = new ArrayList<>();
    for (TestDefinition test : tests) {
      for (Group group : test.groups()) {
        boolean always = group.id().equals("power");
        boolean seldom = group.id().equals("positions") || group.id().equals("rapid");
        int chance = always ? 100 : seldom ? 15 : DONE;
        boolean numbers = group.items().stream().anyMatch(Corpus::counts);
        if (numbers && random.nextInt(100) < chance) {
          done.add(group);
        }
      }
    }
    return done;
  }

  private static boolean counts(Item item) {
    return item.kind() instanceof ItemKind.Number && item.sides().equals(Item.BOTH);
  }

  private static Set<Item> items(List<Group> groups, Random random) {
    java.util.LinkedHashSet<Item> items = new java.util.LinkedHashSet<>();
    for (Group group : groups) {
      boolean passive = random.nextInt(100) < 60;
      group.items().stream()
          .filter(Corpus::counts)
          .filter(item -> passive || !item.id().value().endsWith("-passive"))
          .forEach(items::add);
    }
    return items;
  }

  private List<Step> visit(
      List<Group> groups,
      Set<Item> items,
      Patient patient,
      Limb limb,
      int visit,
      int visits,
      Typing typing,
      Random random) {
    ArrayList<Step> steps = new ArrayList<>();
    for (Group group : groups) {
      List<Item> of = group.items().stream().filter(items::contains).toList();
      for (ItemKey key : order(group, of, patient)) {
        Item item = of.stream().filter(i -> i.has(key)).findFirst().orElseThrow();
        double there = limb.at(item, key, visit, visits);
        // One level a visit for all trials of a place, so it is drawn from the place itself.
        Random level =
            new Random(
                key.toString().replaceAll("/\\d+$", "").hashCode() * 31L
                    + visit
                    + patient.id().value().getLeastSignificantBits());
        double shown = Typing.shown(Typing.today(there, item, level), item, random);
        Quantity typed = typing.typed(shown, item);
        if (possible(item, typed)) {
          steps.add(new Step(group, item, key, typed, limb.norm(item, key)));
        }
      }
    }
    return steps;
  }

  private static boolean possible(Item item, Quantity typed) {
    ItemKind.Number kind = (ItemKind.Number) item.kind();
    double amount = typed.doubleIn(kind.unit());
    return amount >= kind.min().doubleValue() && amount <= kind.max().doubleValue();
  }

  /** The order entry takes through a group. */
  private List<ItemKey> order(Group group, List<Item> items, Patient patient) {
    boolean leftFirst =
        patient.involved().contains(Side.RIGHT) && !patient.involved().contains(Side.LEFT);
    List<Side> sides = leftFirst ? List.of(Side.LEFT, Side.RIGHT) : List.of(Side.RIGHT, Side.LEFT);
    var test = tests.stream().filter(t -> t.groups().contains(group)).findFirst().orElseThrow();
    ArrayList<ItemKey> keys = new ArrayList<>();
    if (group.walk() == Group.Walk.SIDE_BY_SIDE) {
      for (Side side : sides) {
        items.forEach(item -> keys.addAll(item.keys(test.id(), side)));
      }
      return keys;
    }
    for (Item item : items) {
      for (Digit digit : java.util.EnumSet.copyOf(item.digits())) {
        for (int trial = 1; trial <= item.trials(); trial++) {
          for (Side side : sides) {
            keys.add(new ItemKey(test.id(), item.id(), side, digit, trial));
          }
        }
      }
    }
    return keys;
  }

  private static Evaluation head(Patient patient, LocalDate day) {
    return new Evaluation(
        new EvaluationId(new UUID(2, day.toEpochDay())),
        patient.id(),
        day,
        BY,
        Evaluation.State.DRAFT,
        Map.of(),
        Map.of());
  }

  static Entry entry(ItemKey key, Value value, boolean confirmed) {
    return new Entry(
        new EntryId(new UUID(3, key.hashCode())),
        key,
        Optional.of(value),
        Instant.EPOCH,
        BY,
        confirmed);
  }
}
