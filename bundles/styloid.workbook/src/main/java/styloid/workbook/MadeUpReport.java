package styloid.workbook;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import styloid.model.Digit;
import styloid.model.Entry;
import styloid.model.EntryId;
import styloid.model.Evaluation;
import styloid.model.EvaluationId;
import styloid.model.ItemId;
import styloid.model.ItemKey;
import styloid.model.Ledger;
import styloid.model.Message;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.PatientId;
import styloid.model.Quantity;
import styloid.model.Results;
import styloid.model.Side;
import styloid.model.TestId;
import styloid.model.TherapistId;
import styloid.model.Unit;
import styloid.spi.Labels;
import styloid.spi.Report;
import styloid.spi.Sheet;
import styloid.spi.TestDefinition;
import styloid.spi.Texts;

/** A tiny report of nobody, used to get the writer ready before it is needed. */
final class MadeUpReport {
  private static final TestId TEST = new TestId("made-up");
  private static final TherapistId BY = new TherapistId("nobody");
  private static final LocalDate DAY = LocalDate.of(2000, 1, 1);

  private MadeUpReport() {}

  static Report create() {
    Labels labels = new Labels(Map.of("en", Map.of()));
    TestDefinition test =
        new TestDefinition(
            TEST, "1", 1, List.of(), List.of(), List.of(), List.of(), Set.of(), labels);
    ItemKey key = new ItemKey(TEST, new ItemId("thing"), Side.RIGHT, Digit.NONE, 1);
    Quantity value = Quantity.of("1.5", Unit.KILOGRAM_FORCE);
    Entry entry =
        new Entry(new EntryId(new UUID(0, 1)), key, Optional.of(value), Instant.EPOCH, BY, false);
    Ledger ledger = Ledger.of(List.of(entry));
    return new Report(
        context(ledger),
        ledger,
        List.of(test),
        List.of(new Report.Part(test, List.of(sheet(key, value)))),
        List.of(),
        List.of(),
        List.of(),
        new Texts(Map.of(TEST.value(), labels), Locale.ENGLISH));
  }

  private static PatientContext context(Ledger ledger) {
    PatientId id = new PatientId(new UUID(0, 2));
    Patient patient =
        new Patient(
            id,
            "0",
            "Nobody",
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Set.of(),
            "",
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Evaluation evaluation =
        new Evaluation(
            new EvaluationId(new UUID(0, 3)),
            id,
            DAY,
            BY,
            Evaluation.State.DRAFT,
            Map.of(),
            Map.of());
    return new PatientContext(
        patient, evaluation, List.of(), ledger.snapshot(), Results.empty(), List.of());
  }

  private static Sheet sheet(ItemKey key, Quantity value) {
    Message word = Message.verbatim("made up");
    Sheet.Cell entered =
        new Sheet.Figure(value.amount(), value.unit(), Optional.of(key.cellName()));
    Sheet.Cell derived =
        new Sheet.Derived(
            new BigDecimal("3.0"),
            value.unit(),
            1,
            Optional.of(key.cellName() + "*2"),
            Optional.empty());
    List<Sheet.Column> columns = List.of(new Sheet.Column(word, 9), new Sheet.Column(word, 9));
    return new Sheet(
        "made-up",
        word,
        List.of(new Sheet.Table(word, columns, List.of(List.of(entered, derived)))));
  }
}
