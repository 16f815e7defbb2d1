package styloid.custom;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
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
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Quantity;
import styloid.model.Result;
import styloid.model.ResultId;
import styloid.model.ResultKey;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.Snapshot;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.model.Value;

/** A made-up visit with entries of one declared test. */
final class Visit {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private final DeclaredModule module;
  private final ArrayList<Entry> entries = new ArrayList<>();
  private Optional<LocalDate> birth = Optional.empty();
  private Optional<Patient.Sex> sex = Optional.empty();

  Visit(DeclaredModule module) {
    this.module = module;
  }

  Visit of(Patient.Sex which, int age) {
    sex = Optional.of(which);
    birth = Optional.of(DAY.minusYears(age));
    return this;
  }

  Visit with(String item, Side side, Digit digit, int trial, Value value) {
    ItemKey key = new ItemKey(module.definition().id(), new ItemId(item), side, digit, trial);
    entries.add(
        new Entry(
            new EntryId(new UUID(1, entries.size())),
            key,
            Optional.of(value),
            Instant.EPOCH,
            new TherapistId("A. Therapist"),
            false));
    return this;
  }

  Visit number(String item, Side side, String digits, Unit unit) {
    return with(item, side, Digit.NONE, 1, Quantity.of(digits, unit));
  }

  Visit choice(String item, Side side, Digit digit, String code) {
    return with(item, side, digit, 1, new Choice(code));
  }

  Visit absent(String item, Side side, Digit digit, int trial) {
    return with(item, side, digit, trial, new Absence(Absence.Reason.PAIN));
  }

  PatientContext context() {
    Patient patient =
        new Patient(
            new PatientId(new UUID(2, 2)),
            "1",
            "Made-up Person",
            birth,
            sex,
            Optional.empty(),
            Set.of(),
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Evaluation evaluation =
        new Evaluation(
            new EvaluationId(new UUID(3, 3)),
            patient.id(),
            DAY,
            new TherapistId("A. Therapist"),
            Evaluation.State.DRAFT,
            Map.of(),
            Map.of());
    return new PatientContext(
        patient, evaluation, List.of(), Snapshot.of(entries), Results.empty(), List.of());
  }

  Result result(String id, Side side, Digit digit) {
    ResultKey key = new ResultKey(module.definition().id(), new ResultId(id), side, digit);
    return Results.of(module.results(context())).result(key).orElseThrow();
  }

  Result result(String id, Side side) {
    return result(id, side, Digit.NONE);
  }
}
