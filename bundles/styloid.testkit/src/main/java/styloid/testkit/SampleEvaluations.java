package styloid.testkit;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import styloid.model.Absence;
import styloid.model.Choice;
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
import styloid.model.Text;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.TestDefinition;

/** Made-up evaluations from a seed: the same seed always gives the same ones. */
public final class SampleEvaluations {
  private static final LocalDate VISIT = LocalDate.of(2026, 3, 2);
  private static final TherapistId THERAPIST = new TherapistId("A. Therapist");

  private final Random random;

  public SampleEvaluations(long seed) {
    random = new Random(seed);
  }

  /** A patient any of whose optional facts may be missing. */
  public Patient patient() {
    boolean known = random.nextInt(10) > 0;
    return new Patient(
        new PatientId(uuid()),
        "00" + random.nextInt(10_000),
        "Made-up Person",
        known ? Optional.of(VISIT.minusYears(random.nextInt(95)).minusDays(3)) : Optional.empty(),
        pick(Patient.Sex.values()),
        pick(Patient.Dominance.values()),
        random.nextBoolean() ? Set.of(random.nextBoolean() ? Side.LEFT : Side.RIGHT) : Set.of(),
        "",
        Optional.empty(),
        Optional.empty(),
        random.nextBoolean()
            ? Optional.of(BigDecimal.valueOf(140 + random.nextInt(60)))
            : Optional.empty());
  }

  private <E> Optional<E> pick(E[] all) {
    int at = random.nextInt(all.length + 1);
    return at == all.length ? Optional.empty() : Optional.of(all[at]);
  }

  /** The evaluation of a patient with these values and no results yet. */
  public PatientContext context(Patient patient, Snapshot snapshot) {
    Evaluation head =
        new Evaluation(
            new EvaluationId(uuid()),
            patient.id(),
            VISIT,
            THERAPIST,
            Evaluation.State.DRAFT,
            Map.of(),
            Map.of());
    return new PatientContext(patient, head, List.of(), snapshot, Results.empty(), List.of());
  }

  /**
   * A value for every key, each present with probability {@code fill}; one present value in eight
   * is an absence.
   */
  public Snapshot snapshot(TestDefinition definition, double fill) {
    ArrayList<Entry> entries = new ArrayList<>();
    for (Item item : definition.items()) {
      for (ItemKey key : item.keys(definition.id())) {
        if (random.nextDouble() < fill) {
          entries.add(entry(key, random.nextInt(8) == 0 ? absence() : value(item)));
        }
      }
    }
    return Snapshot.of(entries);
  }

  /** Every key with a value, none absent. */
  public Snapshot full(TestDefinition definition) {
    ArrayList<Entry> entries = new ArrayList<>();
    for (Item item : definition.items()) {
      for (ItemKey key : item.keys(definition.id())) {
        entries.add(entry(key, value(item)));
      }
    }
    return Snapshot.of(entries);
  }

  /** Every key absent. */
  public Snapshot absent(TestDefinition definition) {
    ArrayList<Entry> entries = new ArrayList<>();
    definition.keys().forEach(key -> entries.add(entry(key, absence())));
    return Snapshot.of(entries);
  }

  /** One entry. */
  public Entry entry(ItemKey key, Value value) {
    return new Entry(
        new EntryId(uuid()),
        key,
        Optional.of(value),
        Instant.parse("2026-03-02T09:00:00Z"),
        THERAPIST,
        false);
  }

  /** Some reason why there is no value. */
  public Absence absence() {
    Absence.Reason[] reasons = Absence.Reason.values();
    return new Absence(reasons[random.nextInt(reasons.length)]);
  }

  /** A value the item accepts. */
  public Value value(Item item) {
    return item.kind()
        .match(
            this::number,
            c -> new Choice(c.codes().get(random.nextInt(c.codes().size()))),
            w -> new Text("note".substring(0, Math.min(4, w.longest()))));
  }

  private Value number(ItemKind.Number kind) {
    double share = random.nextDouble();
    double low = kind.likelyMin().doubleValue();
    double high = kind.likelyMax().doubleValue();
    Unit unit = kind.units().get(random.nextInt(kind.units().size()));
    BigDecimal amount = BigDecimal.valueOf(low + share * (high - low));
    BigDecimal typed =
        kind.unit().convert(amount, unit).setScale(kind.decimals(), RoundingMode.HALF_UP);
    return new Quantity(typed, unit);
  }

  /** The same values on the other limb. */
  public static Snapshot swapped(Snapshot snapshot) {
    ArrayList<Entry> entries = new ArrayList<>();
    for (Entry entry : snapshot.entries()) {
      entries.add(
          new Entry(
              entry.id(),
              entry.key().opposite(),
              entry.value(),
              entry.at(),
              entry.by(),
              entry.confirmed()));
    }
    return Snapshot.of(entries);
  }

  /** The same person mirrored: involved side and preferred hand changed over. */
  public static Patient swapped(Patient patient) {
    EnumSet<Side> involved = EnumSet.noneOf(Side.class);
    patient.involved().forEach(side -> involved.add(side.opposite()));
    return new Patient(
        patient.id(),
        patient.recordNumber(),
        patient.name(),
        patient.birthDate(),
        patient.sex(),
        patient.dominance().map(SampleEvaluations::other),
        involved,
        patient.diagnosis(),
        patient.onset(),
        patient.surgery(),
        patient.heightCm());
  }

  private static Patient.Dominance other(Patient.Dominance hand) {
    return switch (hand) {
      case RIGHT -> Patient.Dominance.LEFT;
      case LEFT -> Patient.Dominance.RIGHT;
      case EITHER -> Patient.Dominance.EITHER;
    };
  }

  private UUID uuid() {
    return new UUID(random.nextLong(), random.nextLong());
  }
}
