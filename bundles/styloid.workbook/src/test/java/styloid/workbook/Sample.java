package styloid.workbook;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import styloid.model.Absence;
import styloid.model.Choice;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.Finding;
import styloid.model.InSpite;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.Message;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Region;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Source;
import styloid.model.TestId;
import styloid.model.Text;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.spi.Report;
import styloid.spi.Sheet;
import styloid.spi.Sheets;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/** An invented evaluation to be written: change what a test needs, then {@link #report()}. */
final class Sample {
  static final LocalDate DAY = LocalDate.of(2026, 3, 14);

  /** A limit that stands in no list any more, only with the entry that overrode it. */
  static final Precaution OVERRIDDEN =
      new Precaution(
          Precaution.Kind.NO_RESISTANCE,
          Region.ELBOW,
          Side.LEFT,
          Digit.NONE,
          Optional.empty(),
          Optional.empty(),
          "Dr. Lifted",
          "");

  static final TherapistId BY = new TherapistId("Ada Example");
  private static final PatientId ID = new PatientId(new UUID(7, 7));

  String name = "Rosalind Sample";
  String record = "000417";
  String diagnosis = "Stiff wrist after a fracture of the distal radius (invented)";
  Evaluation.State state = Evaluation.State.DRAFT;
  Locale locale = Locale.ENGLISH;
  final List<Precaution> precautions = new ArrayList<>();
  final List<Entry> entries = new ArrayList<>();
  final List<String> faults = new ArrayList<>();
  final List<Sheet> moreSheets = new ArrayList<>();
  final List<PatientContext.Past> past = new ArrayList<>();

  /** Nothing recorded. */
  static Sample empty() {
    return new Sample();
  }

  /** A whole visit with absences, a correction, an undo and a confirmed value. */
  static Sample full() {
    Sample sample = new Sample();
    sample.precautions.add(
        new Precaution(
            Precaution.Kind.NO_RESISTANCE,
            Region.WRIST,
            Side.LEFT,
            Digit.NONE,
            Optional.of(LocalDate.of(2026, 2, 1)),
            Optional.of(LocalDate.of(2026, 4, 1)),
            "the surgeon",
            "until the fracture has healed"));
    sample.squeeze(Side.RIGHT, "31.5", "33", "32.25");
    sample.squeeze(Side.LEFT, "18.5", "17", "21");
    sample.squeeze(Side.LEFT, "18.5", "19.5", "21");
    sample.record("bend", Side.RIGHT, Digit.INDEX, 1, Quantity.of("-12", Unit.DEGREE));
    sample.record("bend", Side.LEFT, Digit.INDEX, 1, Quantity.of("145", Unit.DEGREE), true);
    sample.record("look", Side.RIGHT, Digit.NONE, 1, new Choice("full"));
    sample.record("look", Side.LEFT, Digit.NONE, 1, new Choice("limited"));
    sample.record(
        "push", Side.LEFT, Digit.NONE, 1, new Absence(Absence.Reason.PRECAUTION, "fracture"));
    sample.record("push", Side.RIGHT, Digit.NONE, 1, new Absence(Absence.Reason.PAIN));
    sample.record("remark", Side.UNSIDED, Digit.NONE, 1, new Text("=1+1 is no formula here"));
    sample.record("bend", Side.RIGHT, Digit.RING, 1, Quantity.of("80", Unit.DEGREE));
    sample.takeBack("bend", Side.RIGHT, Digit.RING);
    sample.faults.add(
        "The test \"Coin sorting\" is missing: its entries are shown, its results not.");
    return sample;
  }

  /** Adds earlier visits with what another sample recorded, newest first. */
  Sample after(LocalDate day, Sample earlier) {
    Evaluation visit = evaluation(past.size() + 1, day, Evaluation.State.SIGNED);
    past.add(new PatientContext.Past(visit, Ledger.of(earlier.entries).snapshot()));
    return this;
  }

  static ItemKey key(String item, Side side, Digit digit, int trial) {
    return new ItemKey(SampleModule.ID, new ItemId(item), side, digit, trial);
  }

  void squeeze(Side side, String... amounts) {
    for (int i = 0; i < amounts.length; i++) {
      Quantity amount = Quantity.of(amounts[i], Unit.KILOGRAM_FORCE);
      record("squeeze", side, Digit.NONE, i + 1, amount);
    }
  }

  Sample record(String item, Side side, Digit digit, int trial, Value value) {
    return record(item, side, digit, trial, value, false);
  }

  Sample record(String item, Side side, Digit digit, int trial, Value value, boolean confirmed) {
    add(key(item, side, digit, trial), Optional.of(value), confirmed);
    return this;
  }

  /** Records what a precaution withholds, with the reason. */
  Sample recordInSpite(String item, Side side, Value value, String reason) {
    record(item, side, Digit.NONE, 1, value);
    Entry plain = entries.remove(entries.size() - 1);
    entries.add(
        new Entry(
            plain.id(),
            plain.key(),
            plain.value(),
            plain.at(),
            plain.by(),
            plain.confirmed(),
            Optional.of(new InSpite(reason, List.of(OVERRIDDEN)))));
    return this;
  }

  void takeBack(String item, Side side, Digit digit) {
    add(key(item, side, digit, 1), Optional.empty(), false);
  }

  private void add(ItemKey key, Optional<Value> value, boolean confirmed) {
    Instant at = Instant.parse("2026-03-14T09:00:00Z").plusSeconds(20L * entries.size());
    EntryId id = new EntryId(new UUID(1, entries.size()));
    entries.add(new Entry(id, key, value, at, BY, confirmed));
  }

  static Evaluation evaluation(long number, LocalDate day, Evaluation.State state) {
    Map<TestId, String> versions = Map.of(SampleModule.ID, "1");
    return new Evaluation(
        new EvaluationId(new UUID(3, number)), ID, day, BY, state, versions, Map.of());
  }

  Patient patient() {
    return new Patient(
        ID,
        record,
        name,
        Optional.of(LocalDate.of(1960, 5, 2)),
        Optional.of(Patient.Sex.FEMALE),
        Optional.of(Patient.Dominance.RIGHT),
        Set.of(Side.LEFT),
        diagnosis,
        Optional.of(LocalDate.of(2026, 1, 5)),
        Optional.empty(),
        Optional.of(new BigDecimal("168")));
  }

  Report report() {
    Ledger ledger = Ledger.of(entries);
    TestDefinition definition = SampleModule.definition();
    PatientContext raw =
        new PatientContext(
            patient(),
            evaluation(0, DAY, state),
            precautions,
            ledger.snapshot(),
            Results.empty(),
            past);
    Results results = Results.of(SampleModule.results(raw));
    PatientContext context = raw.withResults(results);
    List<Sheet> sheets =
        new ArrayList<>(Sheets.fromItems(definition, context, results.of(SampleModule.ID)));
    sheets.addAll(moreSheets);
    Texts texts = new Texts(Map.of(SampleModule.ID.value(), definition.labels()), locale);
    return new Report(
        context,
        ledger,
        List.of(definition),
        List.of(new Report.Part(definition, sheets)),
        findings(ledger),
        cautions(),
        faults,
        texts);
  }

  private static List<Finding> findings(Ledger ledger) {
    ItemKey left = key("squeeze", Side.LEFT, Digit.NONE, 1);
    if (ledger.snapshot().value(left).isEmpty()) {
      return List.of();
    }
    Message text =
        Message.of(SampleModule.ID, "finding.weak", Quantity.of("19.7", Unit.KILOGRAM_FORCE));
    return List.of(new Finding("weak-squeeze", text, Side.LEFT, List.of(left), List.of()));
  }

  private List<Report.Caution> cautions() {
    return precautions.isEmpty()
        ? List.of()
        : List.of(
            new Report.Caution(
                "Sample test", "Squeeze", "Stop when it hurts.", Source.commonPractice()),
            new Report.Caution(
                "Sample test",
                "",
                "No loading before the bone has healed.",
                Source.commonPractice()));
  }
}
