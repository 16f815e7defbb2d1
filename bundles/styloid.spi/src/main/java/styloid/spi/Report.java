package styloid.spi;

import java.util.List;
import java.util.Objects;
import styloid.model.Finding;
import styloid.model.Ledger;
import styloid.model.PatientContext;
import styloid.model.Precaution;
import styloid.model.Source;

/**
 * All that an exporter writes of one evaluation, in the words of one language.
 *
 * @param context patient, evaluation, precautions, entries and all results
 * @param definitions the tests, in order; a test whose module is missing is here as it was stored
 * @param parts the sheets each test gave
 * @param cautions texts of the cautions that applied
 * @param faults what a faulty or missing module could not give, in words
 * @param paper what it will be printed on
 */
public record Report(
    PatientContext context,
    Ledger ledger,
    List<TestDefinition> definitions,
    List<Part> parts,
    List<Finding> findings,
    List<Caution> cautions,
    List<String> faults,
    Texts texts,
    Paper paper) {

  /** A report on the usual paper of its readers. */
  public Report(
      PatientContext context,
      Ledger ledger,
      List<TestDefinition> definitions,
      List<Part> parts,
      List<Finding> findings,
      List<Caution> cautions,
      List<String> faults,
      Texts texts) {
    this(
        context,
        ledger,
        definitions,
        parts,
        findings,
        cautions,
        faults,
        texts,
        Paper.of(texts.locale()));
  }

  /** The sheets of one test. */
  public record Part(TestDefinition definition, List<Sheet> sheets) {
    public Part {
      Objects.requireNonNull(definition, "definition");
      sheets = List.copyOf(sheets);
    }
  }

  /** A caution in words: the test and step it belongs to, its source status. */
  public record Caution(String test, String step, String text, Source source) {}

  public Report {
    Objects.requireNonNull(context, "context");
    Objects.requireNonNull(ledger, "ledger");
    definitions = List.copyOf(definitions);
    parts = List.copyOf(parts);
    findings = List.copyOf(findings);
    cautions = List.copyOf(cautions);
    faults = List.copyOf(faults);
    Objects.requireNonNull(texts, "texts");
    Objects.requireNonNull(paper, "paper");
  }

  /** The same on another paper. */
  public Report on(Paper other) {
    return new Report(
        context, ledger, definitions, parts, findings, cautions, faults, texts, other);
  }

  /** The precautions in force on the day of the evaluation. */
  public List<Precaution> inForce() {
    return context.inForce();
  }
}
