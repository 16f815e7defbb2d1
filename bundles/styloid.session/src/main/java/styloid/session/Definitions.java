package styloid.session;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import styloid.exchange.DefinitionFile;
import styloid.model.DefinitionText;
import styloid.model.EvaluationRecord;
import styloid.model.ItemKey;
import styloid.model.PatientRecord;
import styloid.model.TestId;
import styloid.model.Value;
import styloid.spi.EntryCheck;
import styloid.spi.TestDefinition;

/** Sees to it that a record holds the definition of every test it has entries of. */
final class Definitions {
  private Definitions() {}

  /** Each record with the definitions it lacks. */
  static List<PatientRecord> complete(List<PatientRecord> records, List<TestDefinition> tests) {
    return records.stream().map(record -> complete(record, tests)).toList();
  }

  /**
   * The record with the definitions it lacks, as the tests at hand define them; a file written by
   * hand brings none. What it brings is left as it is.
   */
  static PatientRecord complete(PatientRecord record, List<TestDefinition> tests) {
    List<EvaluationRecord> evaluations =
        record.evaluations().stream().map(e -> complete(e, tests)).toList();
    return new PatientRecord(record.patient(), record.precautions(), evaluations);
  }

  private static EvaluationRecord complete(EvaluationRecord record, List<TestDefinition> tests) {
    Set<TestId> lacking = new LinkedHashSet<>();
    record.ledger().entries().forEach(entry -> lacking.add(entry.key().test()));
    record.definitions().forEach(definition -> lacking.remove(definition.test()));
    ArrayList<DefinitionText> definitions = new ArrayList<>(record.definitions());
    for (TestDefinition test : tests) {
      if (lacking.contains(test.id())) {
        definitions.add(DefinitionFile.write(test));
      }
    }
    return new EvaluationRecord(record.evaluation(), record.ledger(), definitions, record.drafts());
  }

  /**
   * The test a key belongs to, once the value is known to be possible for it.
   *
   * @throws IllegalArgumentException when no test has this key or the value is impossible for it
   */
  static TestDefinition taking(List<TestDefinition> tests, ItemKey key, Value value) {
    TestDefinition test =
        tests.stream()
            .filter(t -> t.has(key))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException("no test takes " + key));
    EntryCheck.Checked checked = EntryCheck.check(test.item(key.item()).orElseThrow(), value);
    if (checked.value().isEmpty()) {
      throw new IllegalArgumentException("impossible for " + key + ": " + value);
    }
    return test;
  }
}
