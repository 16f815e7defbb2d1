package styloid.exchange;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import java.util.function.Supplier;
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

/** Records of any content the model allows, the same for the same seed. */
final class RandomRecords {
  private static final String[] TEXTS = {
    "Müller-Ångström",
    "يد يمنى",
    "יד ימין mixed with Latin",
    "\u202Eoverride\u202C",
    "emoji \uD83D\uDC4B\uD83C\uDFFD and \uD83E\uDDB4",
    "tab\tnewline\nreturn\rquote\"back\\slash/",
    "\u0000\u0001\u001F\u007F\u0085",
    "\u2028\u2029\uFEFF\uFFFF",
    "half \uD83D alone",
    "\uDE00 half",
    "=HYPERLINK(\"x\")",
    "</script>{\"a\":1}",
    "e\u0301 \u1E9E ﬁ",
    "   spaces   ",
    "漢字かな"
  };

  private final Random random;

  RandomRecords(long seed) {
    random = new Random(seed);
  }

  PatientRecord record() {
    PatientId id = new PatientId(uuid());
    Patient patient =
        new Patient(
            id,
            cut(filled(), 60),
            cut(filled(), 200),
            maybe(this::date),
            maybe(() -> one(Patient.Sex.values())),
            maybe(() -> one(Patient.Dominance.values())),
            limbs(),
            text(),
            maybe(this::date),
            maybe(this::date),
            maybe(this::decimal));
    return new PatientRecord(patient, many(4, this::precaution), many(4, () -> evaluation(id)));
  }

  private EnumSet<Side> limbs() {
    EnumSet<Side> limbs = EnumSet.noneOf(Side.class);
    many(2, () -> one(Side.RIGHT, Side.LEFT)).forEach(limbs::add);
    return limbs;
  }

  private Precaution precaution() {
    LocalDate from = date();
    return new Precaution(
        one(Precaution.Kind.values()),
        one(Region.values()),
        one(Side.values()),
        one(Digit.values()),
        maybe(() -> from),
        maybe(() -> from.plusDays(random.nextInt(100))),
        text(),
        text());
  }

  private EvaluationRecord evaluation(PatientId patient) {
    Map<TestId, String> versions = new HashMap<>();
    Map<String, String> choices = new HashMap<>();
    for (int i = random.nextInt(4); i > 0; i--) {
      versions.put(new TestId("t" + random.nextInt(9)), text());
      choices.put(cut(text(), 500), text());
    }
    TherapistId therapist = new TherapistId(cut(filled(), 200));
    Map<ItemKey, String> drafts = new HashMap<>();
    many(3, this::key).forEach(key -> drafts.put(key, text()));
    return new EvaluationRecord(
        new Evaluation(
            new EvaluationId(uuid()),
            patient,
            date(),
            therapist,
            one(Evaluation.State.values()),
            versions,
            choices),
        Ledger.of(many(12, () -> entry(therapist))),
        many(3, this::definition),
        drafts);
  }

  private Entry entry(TherapistId therapist) {
    return new Entry(
        new EntryId(uuid()),
        key(),
        random.nextInt(8) == 0 ? Optional.empty() : Optional.of(value()),
        Instant.ofEpochSecond(random.nextInt(), random.nextInt(3) == 0 ? random.nextInt(999) : 0),
        random.nextBoolean() ? therapist : new TherapistId(cut(filled(), 200)),
        random.nextBoolean(),
        random.nextInt(4) == 0 ? Optional.of(inSpite()) : Optional.empty());
  }

  private InSpite inSpite() {
    return new InSpite(cut(filled(), 500), many(3, this::precaution));
  }

  ItemKey key() {
    return new ItemKey(
        new TestId("test-" + random.nextInt(3)),
        new ItemId("item-" + random.nextInt(20)),
        one(Side.values()),
        one(Digit.values()),
        1 + random.nextInt(random.nextBoolean() ? 1 : 99));
  }

  private Value value() {
    return switch (random.nextInt(4)) {
      case 0 -> new Quantity(decimal(), one(Unit.values()));
      case 1 -> new Choice(one("full", "3+", "3-", "a.b-c", "0"));
      case 2 -> new Text(text());
      default -> new Absence(one(Absence.Reason.values()), text());
    };
  }

  private DefinitionText definition() {
    return new DefinitionText(
        new TestId("t" + random.nextInt(3)), one("1", "1.0", "odd"), one("{}", text()));
  }

  private BigDecimal decimal() {
    return new BigDecimal(
        new BigInteger(1 + random.nextInt(90), random).subtract(BigInteger.TWO.pow(20)),
        random.nextInt(40) - 10);
  }

  private LocalDate date() {
    return LocalDate.of(1900, 1, 1).plusDays(random.nextInt(60_000));
  }

  private UUID uuid() {
    return new UUID(random.nextLong(), random.nextLong());
  }

  private String filled() {
    return "x" + text();
  }

  String text() {
    return switch (random.nextInt(6)) {
      case 0 -> "";
      case 1 -> one(TEXTS) + one(TEXTS);
      case 2 -> anyCharacters(random.nextInt(40));
      case 3 -> random.nextInt(40) == 0 ? one(TEXTS).repeat(20_000) : "plain";
      default -> one(TEXTS);
    };
  }

  private String anyCharacters(int count) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < count; i++) {
      text.append((char) random.nextInt(0x10000));
    }
    return text.toString();
  }

  private static String cut(String text, int longest) {
    return text.substring(0, Math.min(longest, text.length()));
  }

  @SafeVarargs
  private <T> T one(T... all) {
    return all[random.nextInt(all.length)];
  }

  private <T> Optional<T> maybe(Supplier<T> make) {
    return random.nextBoolean() ? Optional.of(make.get()) : Optional.empty();
  }

  private <T> List<T> many(int most, Supplier<T> make) {
    ArrayList<T> list = new ArrayList<>();
    for (int i = random.nextInt(most + 1); i > 0; i--) {
      list.add(make.get());
    }
    return list;
  }
}
