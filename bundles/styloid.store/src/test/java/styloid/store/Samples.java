package styloid.store;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.DefinitionText;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.EvaluationRecord;
import styloid.model.InSpite;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.Patient;
import styloid.model.PatientId;
import styloid.model.PatientRecord;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Region;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.Text;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;

/** Made-up records, the same for the same seed. */
final class Samples {
  private static final List<String> ODD =
      List.of(
          "",
          "plain",
          "Ångström Müller",
          "\uD83D\uDC4B\uD83C\uDFFD",
          "يد يمنى",
          "\u0000 nul \u0001",
          "half \uD83D alone",
          "'; DROP TABLE entry; --",
          "line\nbreak\r\ttab",
          "100 %_\\");

  private final Random random;
  private int number;

  Samples(long seed) {
    random = new Random(seed);
  }

  Patient patient(String recordNumber, String name, String birthDate) {
    return new Patient(
        new PatientId(uuid()),
        recordNumber,
        name,
        Optional.ofNullable(birthDate).map(LocalDate::parse),
        Optional.of(Patient.Sex.FEMALE),
        Optional.empty(),
        Set.of(Side.LEFT),
        "",
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  Patient patient() {
    return patient("n" + ++number, "Invented Person", "1968-05-14");
  }

  Evaluation evaluation(PatientId patient, String date) {
    return new Evaluation(
        new EvaluationId(uuid()),
        patient,
        LocalDate.parse(date),
        new TherapistId("A. Example"),
        Evaluation.State.DRAFT,
        Map.of(),
        Map.of());
  }

  Entry entry(Value value) {
    return new Entry(
        new EntryId(uuid()),
        key("power"),
        Optional.of(value),
        Instant.ofEpochSecond(1_700_000_000L + number++),
        new TherapistId("A. Example"),
        false);
  }

  Entry entry(String amount) {
    return entry(Quantity.of(amount, Unit.KILOGRAM_FORCE));
  }

  static ItemKey key(String item) {
    return new ItemKey(new TestId("grip"), new ItemId(item), Side.RIGHT, Digit.NONE, 1);
  }

  /** A record with odd content in every place. */
  PatientRecord oddRecord() {
    PatientId id = new PatientId(uuid());
    Patient patient =
        new Patient(
            id,
            "n" + ++number + odd(),
            "x" + odd(),
            day(),
            one(Patient.Sex.values()),
            one(Patient.Dominance.values()),
            random.nextBoolean() ? EnumSet.of(Side.RIGHT, Side.LEFT) : Set.of(),
            odd(),
            day(),
            day(),
            random.nextBoolean() ? Optional.of(new BigDecimal("170.50")) : Optional.empty());
    ArrayList<Precaution> precautions = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      precautions.add(precaution());
    }
    ArrayList<EvaluationRecord> evaluations = new ArrayList<>();
    LocalDate date = LocalDate.of(2026, 1, 1);
    for (int i = random.nextInt(4); i > 0; i--) {
      evaluations.add(oddEvaluation(id, date));
      date = date.plusDays(random.nextInt(3));
    }
    return new PatientRecord(patient, precautions, evaluations);
  }

  private EvaluationRecord oddEvaluation(PatientId patient, LocalDate date) {
    Map<String, String> choices = new HashMap<>();
    choices.put(odd(), odd());
    Evaluation head =
        new Evaluation(
            new EvaluationId(uuid()),
            patient,
            date,
            new TherapistId("x" + odd()),
            random.nextBoolean() ? Evaluation.State.DRAFT : Evaluation.State.SIGNED,
            Map.of(new TestId("grip"), "1.0" + odd()),
            choices);
    ArrayList<Entry> entries = new ArrayList<>();
    for (int i = random.nextInt(30); i > 0; i--) {
      entries.add(oddEntry());
    }
    ArrayList<DefinitionText> definitions = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      definitions.add(new DefinitionText(new TestId("t" + i), odd(), odd()));
    }
    Map<ItemKey, String> drafts = new HashMap<>();
    drafts.put(key("i" + random.nextInt(9)), "x" + odd());
    return new EvaluationRecord(head, Ledger.of(entries), definitions, drafts);
  }

  private Entry oddEntry() {
    ItemKey key =
        new ItemKey(
            new TestId("t" + random.nextInt(3)),
            new ItemId("i" + random.nextInt(9)),
            one(Side.values()).orElse(Side.LEFT),
            one(Digit.values()).orElse(Digit.THUMB),
            1 + random.nextInt(99));
    Value value =
        switch (random.nextInt(4)) {
          case 0 ->
              new Quantity(
                  new BigDecimal(random.nextInt(1000) + "." + random.nextInt(100)),
                  one(Unit.values()).orElse(Unit.NEWTON));
          case 1 -> new Choice("3+");
          case 2 -> new Text(odd());
          default -> new Absence(one(Absence.Reason.values()).orElse(Absence.Reason.PAIN), odd());
        };
    return new Entry(
        new EntryId(uuid()),
        key,
        random.nextInt(6) == 0 ? Optional.empty() : Optional.of(value),
        Instant.ofEpochSecond(random.nextInt(), random.nextInt(1_000_000_000)),
        new TherapistId("x" + odd()),
        random.nextBoolean(),
        random.nextInt(4) == 0 ? Optional.of(inSpite()) : Optional.empty());
  }

  private InSpite inSpite() {
    ArrayList<Precaution> precautions = new ArrayList<>();
    for (int i = random.nextInt(3); i > 0; i--) {
      precautions.add(precaution());
    }
    return new InSpite("x" + odd(), precautions);
  }

  private Precaution precaution() {
    return new Precaution(
        one(Precaution.Kind.values()).orElse(Precaution.Kind.NO_RESISTANCE),
        one(Region.values()).orElse(Region.WRIST),
        Side.UNSIDED,
        Digit.RING,
        day(),
        Optional.empty(),
        odd(),
        odd());
  }

  private String odd() {
    return ODD.get(random.nextInt(ODD.size()));
  }

  private Optional<LocalDate> day() {
    return random.nextBoolean()
        ? Optional.of(LocalDate.of(1930, 1, 1).plusDays(random.nextInt(30_000)))
        : Optional.empty();
  }

  private <E> Optional<E> one(E[] all) {
    int at = random.nextInt(all.length + 1);
    return at == all.length ? Optional.empty() : Optional.of(all[at]);
  }

  private UUID uuid() {
    return new UUID(random.nextLong(), random.nextLong());
  }
}
