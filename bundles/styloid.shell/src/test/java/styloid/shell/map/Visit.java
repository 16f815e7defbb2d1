package styloid.shell.map;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import styloid.model.Choice;
import styloid.model.Codes;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Finding;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Quantity;
import styloid.model.Region;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;
import styloid.session.OpenEvaluation;
import styloid.shell.Clinic;

/** A made-up evaluation of the real tests. */
final class Visit {
  private static final OpenEvaluation SETTLED = Clinic.settled();

  private final ArrayList<Entry> entries = new ArrayList<>();
  private final ArrayList<Precaution> limits = new ArrayList<>();

  static ItemKey key(String test, String item, String side, String digit) {
    return new ItemKey(
        new TestId(test),
        new ItemId(item),
        Codes.parse(Side.class, side),
        Codes.parse(Digit.class, digit),
        1);
  }

  void record(ItemKey key, Value value) {
    add(key, Optional.of(value));
  }

  void takeBack(ItemKey key) {
    add(key, Optional.empty());
  }

  private void add(ItemKey key, Optional<Value> value) {
    entries.add(
        new Entry(
            new EntryId(new java.util.UUID(3, entries.size())),
            key,
            value,
            day().atStartOfDay(java.time.ZoneOffset.UTC).toInstant(),
            new TherapistId("A. Therapist"),
            false));
  }

  Visit screen(String motion, String side, String answer) {
    record(key("screen", motion, side, "none"), new Choice(answer));
    return this;
  }

  Visit degrees(String item, String side, String digit, int degrees) {
    record(
        key("goniometry", item, side, digit),
        new Quantity(BigDecimal.valueOf(degrees), Unit.DEGREE));
    return this;
  }

  void limit(Precaution.Kind kind, Region region, String side, String digit) {
    limits.add(precaution(kind, region, side, digit, Optional.empty()));
  }

  void endedLimit(Precaution.Kind kind, Region region, String side) {
    limits.add(precaution(kind, region, side, "none", Optional.of(day().minusDays(1))));
  }

  private static Precaution precaution(
      Precaution.Kind kind, Region region, String side, String digit, Optional<LocalDate> until) {
    return new Precaution(
        kind,
        region,
        Codes.parse(Side.class, side),
        Codes.parse(Digit.class, digit),
        Optional.empty(),
        until,
        "Dr Example",
        "");
  }

  private static LocalDate day() {
    return SETTLED.context().evaluation().date();
  }

  /** Before anything was calculated. */
  OpenEvaluation open() {
    return with(Results.empty(), List.of());
  }

  /** With the results of every test, in the order the tests read each other. */
  OpenEvaluation calculated() {
    Results results = Results.empty();
    for (String module : Clinic.MODULES) {
      results = results.and(Clinic.module(module).orElseThrow().results(context(results)));
    }
    return with(results, List.of());
  }

  /** Right after an entry: the results are still those of before. */
  OpenEvaluation entered(OpenEvaluation before) {
    return with(before.context().results(), before.findings());
  }

  OpenEvaluation found(Finding finding) {
    return with(Results.empty(), List.of(finding));
  }

  private PatientContext context(Results results) {
    PatientContext base = SETTLED.context();
    return new PatientContext(
        base.patient(), base.evaluation(), limits, Snapshot.of(entries), results, List.of());
  }

  private OpenEvaluation with(Results results, List<Finding> findings) {
    return new OpenEvaluation(
        context(results),
        SETTLED.ledger(),
        SETTLED.tests(),
        SETTLED.withoutModule(),
        List.of(),
        findings,
        java.util.Set.of(),
        java.util.Map.of(),
        false,
        false,
        false,
        Optional.empty(),
        Optional.empty());
  }
}
