package styloid.goniometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import styloid.model.Patient;
import styloid.model.PatientContext;
import styloid.model.Result;
import styloid.spi.ResultDefinition;
import styloid.spi.TestDefinition;
import styloid.testkit.SampleEvaluations;

class RulePagesTest {
  private static List<Result> everything() {
    TestDefinition definition = Visit.module().definition();
    SampleEvaluations samples = new SampleEvaluations(31);
    Patient patient = samples.patient();
    PatientContext now = samples.context(patient, samples.full(definition));
    PatientContext before =
        new Visit().on(LocalDate.of(2026, 1, 5)).context().withSnapshot(samples.full(definition));
    PatientContext.Past past = new PatientContext.Past(before.evaluation(), before.snapshot());
    return Visit.module().results(now.withPast(List.of(past)));
  }

  @Test
  void everyRuleHasAPage() {
    TreeSet<String> rules = new TreeSet<>();
    everything().forEach(result -> rules.add(result.why().rule()));
    ArrayList<String> missing = new ArrayList<>();
    for (String rule : rules) {
      if (!Files.exists(Path.of("..", "..", "docs", "rules", rule + ".md"))) {
        missing.add(rule);
      }
    }
    assertEquals(List.of(), missing);
    assertTrue(rules.size() > 15, rules::toString);
  }

  @Test
  void aFullEvaluationGivesEveryDeclaredResultAndAnEmptyOneNone() {
    TreeSet<String> given = new TreeSet<>();
    everything().forEach(result -> given.add(result.key().result().value()));
    TreeSet<String> declared = new TreeSet<>();
    for (ResultDefinition result : Visit.module().definition().results()) {
      declared.add(result.id().value());
    }
    assertEquals(declared, given);
    assertEquals(List.of(), Visit.module().results(new Visit().context()));
  }
}
